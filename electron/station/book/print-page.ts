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
  '--no-pdf-header-footer',
];

/** A program that can print a page: a browser, or Electron with a script of ours. */
export interface Printer {
  readonly program: string;
  readonly script?: string;
}

/** Prints an address to a PDF file; null when it is there, else a sentence. */
export async function printPage({ program, script }: Printer, url: string, out: string): Promise<string | null> {
  const profile = mkdtempSync(path.join(tmpdir(), 'stationwright-'));
  // Chromium's sandbox refuses to run for root on Linux.
  const sandbox = process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const args = script
    ? [...sandbox, script, url, out]
    : [...quiet, ...sandbox, `--user-data-dir=${profile}`, `--print-to-pdf=${out}`, url];
  try {
    return await run(program, args);
  } finally {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

function run(program: string, args: readonly string[]): Promise<string | null> {
  const child = spawn(program, args, { stdio: 'ignore', timeout: limitMs });
  return new Promise((resolve) => {
    child.on('error', (error) => resolve(`${program} could not be started: ${error.message}`));
    child.on('exit', (code, signal) => {
      if (code === 0) resolve(null);
      else if (signal) resolve(`${program} took longer than ${limitMs / 1000} s and was stopped`);
      else resolve(`${program} ended with ${code}`);
    });
  });
}
