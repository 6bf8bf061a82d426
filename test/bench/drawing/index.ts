import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import path from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { readStation } from '../../../core/station/file/read-station.ts';
import { writeStation } from '../../../core/station/file/write-station.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { serve } from '../../../electron/start/serve.mjs';
import { chromiumArgs, findChromium } from '../../run/chromium.mjs';
import { bareCanvasOf } from './bare-canvas-of.ts';
import { firstPicture } from './first-picture.ts';
import { framesOfDrag, heapOf } from './frames.ts';
import { serveBare } from './serve-bare.ts';
import { busiestUnit, trimmedStation } from './trimmed-station.ts';

/** The machine is noisy: app and bare canvas take turns so often. */
const rounds = 4;
const size = { width: 1280, height: 800 };

// npm runs scripts in the project's folder.
const app = await serve(path.resolve('dist/renderer'), 0);
const bare = await serveBare(path.resolve('test/bench/drawing/bare'));
const folder = mkdtempSync(path.join(tmpdir(), 'drawn-'));
const browser = await chromium.launch({ executablePath: findChromium(), args: chromiumArgs });
try {
  console.log(`\nDrawing in Chromium ${browser.version()}, headless, painted by the processor`);
  console.log(
    `${cpus().length} processors, load ${(loadavg()[0] ?? 0).toFixed(1)}: above their number, others slow the frames`,
  );
  for (const station of [clubHall(), trimmedStation(200, 400)]) await benchStation(browser, station);
} finally {
  await browser.close();
  await Promise.all([app.close(), bare.close()]);
  rmSync(folder, { recursive: true });
}

/** The sample that the goals are set on, or where there is none a generated station of its size. */
function clubHall(): Station {
  const file = path.resolve('core/samples/club-hall.station.json');
  if (!existsSync(file)) {
    console.log('There is no sample “club-hall”: a generated station of 60 units and 80 cables takes its place.');
    return trimmedStation(60, 80);
  }
  const read = readStation(readFileSync(file, 'utf8'));
  if ('problems' in read) throw new Error('the sample “club-hall” can not be read');
  return read.station;
}

async function benchStation(browser: Browser, station: Station) {
  const { units, cables, title } = station;
  console.log(`\n${title}: ${units.length} units, ${cables.length} cables`);
  const file = path.join(folder, `${units.length}.station.json`);
  writeFileSync(file, writeStation(station));
  const unit = busiestUnit(station);
  const pictures: number[] = [];
  const frames = { app: [] as number[], bare: [] as number[] };
  const heap = { app: 0, bare: 0 };
  for (let round = 0; round < rounds; round++) {
    const page = await browser.newPage({ viewport: size });
    pictures.push(await firstPicture(page, app.url, file, { units: units.length, cables: cables.length }));
    // The first survey runs beside the drawing, once, and the fonts come in.
    await page.getByRole('navigation', { name: 'Stages' }).getByText(/\d/).first().waitFor();
    await page.waitForTimeout(1500);
    const canvas = await bareCanvasOf(page, station);
    frames.app.push(...(await framesOfDrag(page, unit)));
    heap.app = await heapOf(page);
    await page.close();

    const other = await browser.newPage({ viewport: size });
    await other.addInitScript((wanted) => {
      window.bareCanvas = wanted;
    }, canvas);
    await other.goto(bare.url);
    await other.waitForTimeout(1500);
    frames.bare.push(...(await framesOfDrag(other, unit)));
    heap.bare = await heapOf(other);
    await other.close();
  }
  print(pictures, frames, heap);
}

function print(
  pictures: readonly number[],
  frames: { app: number[]; bare: number[] },
  heap: { app: number; bare: number },
) {
  const ms = (value: number) => `${value.toFixed(1)} ms`;
  const line = (what: string, ...cells: string[]) =>
    console.log(what.padEnd(34) + cells.map((c) => c.padStart(12)).join(''));
  line('', 'app', 'bare canvas', 'ratio');
  for (const [name, share] of [
    ['frame while dragging, median', 0.5],
    ['frame while dragging, 95th', 0.95],
  ] as const) {
    const [own, other] = [quantile(frames.app, share), quantile(frames.bare, share)];
    line(name, ms(own), ms(other), (own / other).toFixed(2));
  }
  line('frames', String(frames.app.length), String(frames.bare.length));
  line('heap after', `${(heap.app / 1e6).toFixed(1)} MB`, `${(heap.bare / 1e6).toFixed(1)} MB`);
  line('first picture, median', ms(quantile(pictures, 0.5)));
  line('first picture, worst', ms(Math.max(...pictures)));
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}
