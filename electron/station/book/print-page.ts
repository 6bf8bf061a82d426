import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

/** Nobody waits longer for a book. */
const limitMs = 120_000;

/** Quiet, and without a window, a graphics card or anybody's settings. */
const quiet = [
  '--headless',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A program that can print a page: a browser, or Electron with a script of ours. */
export interface Printer {
  readonly program: string;
  readonly script?: string;
}

/** What came of a run: what it printed, or a sentence. */
type Ran = { readonly out: string } | { readonly problem: string };

/** Prints an address to a PDF file. */
export const printPage = ({ program, script }: Printer, url: string, file: string): Promise<Ran> =>
  script
    ? run(program, [script, url, file])
    : browse(program, ['--no-pdf-header-footer', `--print-to-pdf=${file}`, url]);

/** The page at an address as it is once everything on it has come, as HTML. */
export const readPage = (browser: string, url: string): Promise<Ran> => browse(browser, ['--dump-dom', url]);

async function browse(browser: string, args: readonly string[]): Promise<Ran> {
  const profile = mkdtempSync(path.join(tmpdir(), 'stationwright-'));
  try {
    return await run(browser, [...quiet, `--user-data-dir=${profile}`, ...args]);
  } finally {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

function run(program: string, args: readonly string[]): Promise<Ran> {
  // Chromium's sandbox refuses to run for root on Linux.
  const sandbox = process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const child = spawn(program, [...sandbox, ...args], { stdio: ['ignore', 'pipe', 'ignore'], timeout: limitMs });
  const chunks: Buffer[] = [];
  child.stdout.on('data', (chunk: Buffer) => chunks.push(chunk));
  return new Promise((resolve) => {
    child.on('error', (error) => resolve({ problem: `${program} could not be started: ${error.message}` }));
    child.on('close', (code, signal) => {
      if (code === 0) resolve({ out: Buffer.concat(chunks).toString('utf8') });
      else if (signal) resolve({ problem: `${program} took longer than ${limitMs / 1000} s and was stopped` });
      else resolve({ problem: `${program} ended with ${code}` });
    });
  });
}
