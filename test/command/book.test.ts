import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bundle } from '../../electron/start/build.mjs';
import { findBrowser } from '../../electron/station/book/find-browser.ts';
import { needs } from '../needs.ts';
import { findChromium } from '../run/chromium.mjs';
import { sample } from '../stations/samples.ts';

const root = path.join(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'book-'));
const program = path.join(root, 'dist/book-test/station.mjs');
const browser = findChromium();
const needsPrinting = {
  ...needs('Chromium', existsSync(browser)),
  ...needs('the built screen: npm run build', existsSync(path.join(root, 'dist/renderer/index.html'))),
};
const canRead = spawnSync('pdftotext', ['-v']).error === undefined;

function station(args: readonly string[], env: NodeJS.ProcessEnv = { STATIONWRIGHT_BROWSER: browser }) {
  const options = { encoding: 'utf8', cwd: folder, env: { ...process.env, ...env } } as const;
  const { stdout, stderr, status } = spawnSync(process.execPath, [program, ...args], options);
  return { out: stdout, err: stderr, status };
}

beforeAll(() =>
  bundle({ entry: 'electron/station/main.ts', outDir: 'dist/book-test', file: 'station.mjs', format: 'es' }),
);
afterAll(() => rmSync(folder, { recursive: true }));

// A browser starts in each of them, which takes its time on a machine with other work.
describe('station book', { timeout: 180_000 }, () => {
  it.each([
    [['book', 'hut'], '--out FILE.pdf'],
    [['book', 'nowhere.json', '--out', 'b.pdf'], 'nowhere.json'],
  ])('%j is refused with a sentence', (args, words) => {
    const { err, status } = station(args);
    expect(status).toBe(2);
    expect(err).toContain(words);
    expect(err).not.toMatch(/\bat .*:\d+:\d+/);
    expect(existsSync(path.join(folder, 'b.pdf'))).toBe(false);
  });

  it('says what to install where nothing can print', () => {
    const { err, status } = station(['book', 'hut', '--out', 'b.pdf'], { STATIONWRIGHT_BROWSER: '/nowhere/chromium' });
    expect([status, err]).toEqual([2, expect.stringContaining('STATIONWRIGHT_BROWSER')]);
  });

  // A4 is 210 by 297 mm, Letter 8.5 by 11 inches: 595 by 842 and 612 by 792 points.
  describe.each([
    ['hut', 'a4', 595, 842],
    ['hut-first-draft', 'letter', 612, 792],
  ] as const)('%s on %s', needsPrinting, (name, paper, width, height) => {
    const out = path.join(folder, `${name}.pdf`);
    let made: ReturnType<typeof station>;
    beforeAll(() => {
      made = station(['book', name, '--out', out, '--paper', paper]);
    }, 180_000);

    it('has pages of that size', () => {
      expect([made.err, made.status]).toEqual(['', 0]);
      const pdf = readFileSync(out, 'latin1');
      expect(pdf.startsWith('%PDF-')).toBe(true);
      const boxes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map((m) => [Number(m[1]), Number(m[2])]);
      const isPaper = ([w = 0, h = 0]: number[]) => Math.abs(w - width) < 1 && Math.abs(h - height) < 1;
      const onSide = ([w = 0, h = 0]: number[]) => Math.abs(h - width) < 1 && Math.abs(w - height) < 1;
      expect(boxes.length).toBeGreaterThan(3);
      expect(boxes.every((box) => isPaper(box) || onSide(box))).toBe(true);
      // The drawing lies on its side.
      expect(boxes.some(onSide)).toBe(true);
    });
    it('has every unit and cable in words', needs('pdftotext', canRead), () => {
      const { stdout } = spawnSync('pdftotext', ['-layout', out, '-'], { encoding: 'utf8' });
      const { units, cables } = sample(name);
      for (const { number } of cables) expect(stdout).toMatch(new RegExp(`\\b${number}\\b`));
      for (const unit of units) expect(stdout).toContain(unit.name);
    });
  });

  it('drawing as SVG has every flag and name as text, as PNG it is as large twice', needsPrinting, () => {
    const [svg, png] = ['d.svg', 'd.png'].map((name) => path.join(folder, name));
    expect(station(['drawing', 'hut', '--out', svg!]).status).toBe(0);
    const text = readFileSync(svg!, 'utf8');
    const { units, cables } = sample('hut');
    for (const { number } of cables) expect(text).toContain(`>${number}</text>`);
    for (const { name } of units) expect(text).toContain(`>${name}</text>`);
    expect(station(['drawing', 'hut', '--out', png!]).status).toBe(0);
    const size = /viewBox="[-\d.]+ [-\d.]+ ([\d.]+) ([\d.]+)"/
      .exec(text)
      ?.slice(1)
      .map((v) => 2 * Number(v));
    const bytes = readFileSync(png!);
    // Width and height stand in the header of a PNG (ISO/IEC 15948, 11.2.2).
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual(size);
  });
});

it('a browser is found where programs are, and where it is named', () => {
  const chromium = path.join(folder, 'chromium');
  expect(findBrowser({ PATH: folder }, 'linux')).toBeNull();
  writeFileSync(chromium, '');
  expect(findBrowser({ PATH: ['/nowhere', folder].join(path.delimiter) }, 'linux')).toBe(chromium);
  expect(findBrowser({ PATH: folder, STATIONWRIGHT_BROWSER: '/nowhere/chromium' }, 'linux')).toBeNull();
  expect(findBrowser({ PATH: '', STATIONWRIGHT_BROWSER: chromium }, 'linux')).toBe(chromium);
});
