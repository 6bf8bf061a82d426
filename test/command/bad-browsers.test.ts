import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Readable } from 'node:stream';
import { pathToFileURL } from 'node:url';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { bundle } from '../../electron/start/build.mjs';
import { isWhole } from '../../electron/station/book/is-whole.ts';
import { readPage } from '../../electron/station/book/print-page.ts';
import type { run as Run } from '../../electron/station/run.ts';
import { needsLinux, needsUnix } from '../needs.ts';
import { sampleText } from '../stations/samples.ts';

const root = path.join(import.meta.dirname, '../..');
const built = path.join(root, 'dist/bad-browsers-test');
const folder = mkdtempSync(path.join(tmpdir(), 'bad-browsers-'));
const inFolder = (name: string) => path.join(folder, name);
const [station, out, temporary] = [inFolder('a.station.json'), inFolder('out'), inFolder('tmp')];
const program = pathToFileURL(path.join(built, 'station/run.mjs')).href;
let run: typeof Run;

beforeAll(async () => {
  const outDir = 'dist/bad-browsers-test/station';
  await bundle({ entry: 'electron/station/run.ts', outDir, file: 'run.mjs', format: 'es' });
  mkdirSync(path.join(built, 'renderer'), { recursive: true });
  writeFileSync(path.join(built, 'renderer/index.html'), '<body>the screen</body>');
  writeFileSync(station, sampleText('hut'));
  ({ run } = await import(program));
});
beforeEach(() => {
  for (const name of [out, temporary]) mkdirSync(name);
  vi.stubEnv('TMPDIR', temporary);
});
afterEach(() => {
  vi.unstubAllEnvs();
  for (const name of [out, temporary]) rmSync(name, { recursive: true });
});
afterAll(() => {
  rmSync(folder, { recursive: true });
  rmSync(built, { recursive: true });
});

/** What stand-ins have in common: `open` loads the page, `done` says that it is there, `pdf` is where it should go. */
const common = `
  const url = process.argv.at(-1);
  const pdf = process.argv.find((a) => a.startsWith('--print-to-pdf='))?.slice(15);
  const get = (address) => new Promise((done, fail) => {
    require('node:http').get(address, (answer) => answer.resume().on('end', done)).on('error', fail);
  });
  const open = () => get(url);
  const done = (query = '') => get(url + 'book-is-there' + query);
  const write = (text) => require('node:fs').writeFileSync(pdf, text);
  const picture = (text) => console.log('<html><script id="book-answer">' + Buffer.from(text).toString('base64') + '</script></html>');
`;

function browser(act: string, mode = 0o755): string {
  const file = inFolder(`browser-${Math.random().toString(36).slice(2)}`);
  writeFileSync(file, `#!${process.execPath}\n${common}\n(async () => {${act}})();\n`, { mode });
  return file;
}

const outside = { input: () => Readable.from([]), say: () => {}, progress: () => {} };
function make(program: string, name = 'b.pdf', command = 'book') {
  vi.stubEnv('STATIONWRIGHT_BROWSER', program);
  return run([command, station, '--out', path.join(out, name)], outside);
}

// Stand-ins for a browser are scripts that the system starts by their first line.
describe('a book', needsUnix, () => {
  const whole = '%PDF-1.4\n%%EOF\n';
  it('is there when the browser made all of it', async () => {
    writeFileSync(path.join(out, 'b.pdf'), 'old');
    const {
      out: said,
      err,
      status,
    } = await make(browser(`await open(); await done(); write(${JSON.stringify(whole)});`));
    expect([err, status]).toEqual(['', 0]);
    expect(said).toMatch(/b\.pdf: 1 kB\n$/);
    expect(readFileSync(path.join(out, 'b.pdf'), 'utf8')).toBe(whole);
  });

  it.each([
    ['writes nothing', 'await open(); await done();', /ended as if all were well, and wrote nothing/],
    ['writes an empty file', "await open(); await done(); write('');", /ended with half of it/],
    ['writes half', "await open(); await done(); write('%PDF-1.4 half');", /ended with half of it/],
    ['is killed', "await open(); process.kill(process.pid, 'SIGKILL');", /ended from outside \(SIGKILL\)/],
    ['crashes', 'await open(); process.exit(7);', /ended with 7 before it was done/],
    ['crashes at once', 'process.exit(1);', /ended with 1 before it was done/],
    ['never opens the page', `write(${JSON.stringify(whole)});`, /before the page was drawn/],
    ['prints before the page is there', `await open(); write(${JSON.stringify(whole)});`, /before the page was drawn/],
    [
      'dies and leaves something that holds its output',
      "await open(); require('node:child_process').spawn(process.execPath, ['-e', 'setTimeout(() => {}, 4000)'], { stdio: 'inherit', detached: true }).unref(); process.exit(9);",
      /ended with 9/,
    ],
  ])('is not there when the browser %s; the one of before stays', async (_name, act, words) => {
    writeFileSync(path.join(out, 'b.pdf'), 'old');
    const { out: said, err, status } = await make(browser(act));
    expect([said, status]).toEqual(['', 2]);
    expect(err).toMatch(words);
    expect(err).toMatch(/^[^\n]+\.\n$/);
    expect(err).not.toMatch(/took longer/);
    expect(readdirSync(out)).toEqual(['b.pdf']);
    expect(readFileSync(path.join(out, 'b.pdf'), 'utf8')).toBe('old');
    expect(readdirSync(temporary)).toEqual([]);
  });

  it('that the page can’t make is a fault of the program, and its words are cut and can’t drive a terminal', async () => {
    const words = `no\u001b[2J fonts ${'x'.repeat(5000)}`;
    const act = `await open(); await done('?problem=' + encodeURIComponent(${JSON.stringify(words)}));`;
    const { out: said, err, status } = await make(browser(act));
    expect([said, status]).toEqual(['', 3]);
    expect(err).toMatch(/^Stationwright itself failed while running “book” \(no\[2J fonts x+/);
    expect(err.length).toBeLessThan(700);
    expect(readdirSync(out)).toEqual([]);
  });

  it.each([
    [
      'is not there',
      () => inFolder('nowhere'),
      /STATIONWRIGHT_BROWSER names “.*nowhere”, and there is no such program/,
    ],
    ['may not be run', () => browser('', 0o644), /could not be started: you may not use it/],
    ['is a folder', () => temporary, /could not be started/],
  ])('needs a browser that can be started: one that %s is named', async (_name, program, words) => {
    const { err, status } = await make(program());
    expect(status).toBe(2);
    expect(err).toMatch(words);
  });

  it('that takes too long is told as that, and the browser is stopped', async () => {
    const ran = await readPage(browser('setTimeout(() => {}, 60_000);'), 'http://127.0.0.1:1/', 300);
    expect(ran).toEqual({ problem: expect.stringMatching(/took longer than 0\.3 s and was stopped/) });
  });

  it('that is stopped takes its browser with it, and leaves nothing behind', async () => {
    // The browser holds on to a connection as long as it lives.
    const server = createServer().listen(0, '127.0.0.1');
    await once(server, 'listening');
    const slow = browser(`require('node:net').connect(${(server.address() as AddressInfo).port}, '127.0.0.1');`);
    const env = { ...process.env, TMPDIR: temporary, STATIONWRIGHT_BROWSER: slow };
    const script = `import { run } from ${JSON.stringify(program)}; await run(process.argv.slice(1), {progress() {}});`;
    const line = ['book', station, '--out', path.join(out, 'b.pdf')];
    const child = spawn(process.execPath, ['--input-type=module', '-e', script, ...line], { env });
    const ended = once(child, 'exit');
    const [connection] = (await once(server, 'connection')) as [Socket];
    const gone = once(connection.resume(), 'close');
    child.kill('SIGTERM');
    expect(await ended).toEqual([null, 'SIGTERM']);
    await gone;
    server.close();
    expect([readdirSync(out), readdirSync(temporary)]).toEqual([[], []]);
  });
});

describe('a drawing', needsUnix, () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg"><text>Ω</text></svg>';
  it('is there when all of it came', async () => {
    const { status } = await make(
      browser(`await open(); await done(); picture(${JSON.stringify(svg)});`),
      'd.svg',
      'drawing',
    );
    expect(status).toBe(0);
    expect(readFileSync(path.join(out, 'd.svg'), 'utf8')).toBe(svg);
  });
  it.each([
    ['nothing', ''],
    ['another page', "console.log('<html>not here</html>');"],
    ['half a page', `console.log('<script id="book-answer">PHN2');`],
    ['half a picture', "picture('<svg><text>');"],
    ['another picture', "picture('GIF89a');"],
  ])('is not there when the browser gives %s', async (_name, act) => {
    writeFileSync(path.join(out, 'd.svg'), 'old');
    const { err, status } = await make(browser(`await open(); await done(); ${act}`), 'd.svg', 'drawing');
    expect(status).toBe(2);
    expect(err).toMatch(/^It could not be made: [^\n]+\.\n$/);
    expect(readFileSync(path.join(out, 'd.svg'), 'utf8')).toBe('old');
  });
});

describe('a place where it can’t go is told before anything is made', needsUnix, () => {
  it.each([
    ['book', () => path.join(out, 'sub'), /has to end in \.pdf: --out FILE\.pdf/],
    ['book', () => station, /has to end in \.pdf/],
    ['book', () => path.join(out, 'none/b.pdf'), /There is no folder “.*none”/],
    ['book', () => path.join(station, 'b.pdf'), /There is no folder/],
    ['book', () => path.join(out, 'folder.pdf'), /is a folder/],
    ['drawing', () => path.join(out, 'd.jpg'), /end in \.svg or \.png/],
  ] as [string, () => string, RegExp][])('%s', async (command, place, words) => {
    mkdirSync(path.join(out, 'folder.pdf'));
    vi.stubEnv('STATIONWRIGHT_BROWSER', browser("require('node:fs').writeFileSync('/nowhere/started', '');"));
    const { err, status } = await run([command, station, '--out', place()], outside);
    expect(status).toBe(2);
    expect(err).toMatch(words);
  });
  it('one that takes no file is told when it is made', needsLinux, async () => {
    vi.stubEnv('STATIONWRIGHT_BROWSER', browser(`await open(); await done(); write('%PDF-1.4\\n%%EOF');`));
    const { err, status } = await run(['book', station, '--out', '/proc/b.pdf'], outside);
    expect(status).toBe(2);
    expect(err).toMatch(/^“\/proc\/b\.pdf” could not be written: [^\n]+\.\n$/);
  });
});

it.each([
  ['pdf', '%PDF-1.4\n...\n%%EOF', true],
  ['pdf', '%PDF-1.4\n...\n%%EOF\r\n', true],
  ['pdf', '%PDF-1.4\n%%EOF\n and more', false],
  ['pdf', ' %PDF-1.4\n%%EOF', false],
  ['svg', '<?xml version="1.0"?>\n<svg width="1"><g/></svg>\n', true],
  ['svg', '<svg width="1"><g/>', false],
  ['svg', '<html><svg></svg>', false],
  ['png', '\x89PNG\r\n\x1a\n....\0\0\0\0IEND\xae\x42\x60\x82', true],
  ['png', '\x89PNG\r\n\x1a\n....\0\0\0\0IEND', false],
  ['png', '\x89PNG\r\n\x1a\n', false],
  ['png', '', false],
] as const)('%s %j is whole: %s', (format, text, whole) =>
  expect(isWhole[format](Buffer.from(text, 'latin1'))).toBe(whole),
);
