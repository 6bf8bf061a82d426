import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { edit, writeStation } from '../../core/index.ts';
import { parseCsv } from '../reports/parse-csv.ts';
import { sample } from '../stations/samples.ts';
import { runLine } from './run-line.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'lists-'));

const station = async (...args: string[]): Promise<string> => {
  const { out, err, status } = await runLine(args);
  if (status !== 0) throw new Error(err);
  return out;
};

afterAll(() => rmSync(folder, { recursive: true }));

describe('cables', () => {
  it('--csv has all the columns', async () => {
    const [head, ...rows] = parseCsv(await station('cables', 'hut', '--csv'));
    const d4 = Object.fromEntries(rows.find(([number]) => number === 'D4')!.map((cell, i) => [head![i], cell]));
    expect(d4).toMatchObject({
      From: 'Fused strip · 3',
      To: 'Receiver · power',
      'Plug from': 'two-pole, 15 A',
      'Plug to': 'barrel plug 5.5/2.1',
      Conductors: '2 × AWG 20',
      'Length m': '1',
      Rings: 'RD YE',
      Wiring: 'plus–shell, minus–centre',
      Status: 'to make',
    });
  });
});

describe('make', () => {
  it('has a row for each cable that is not bought ready-made', async () => {
    expect(parseCsv(await station('make', 'hut', '--csv'))).toHaveLength(1 + 16);
    expect(await station('make', 'hut')).toMatch(/^D4 +two-core lead, AWG 20 +2 × AWG 20 +1\.03 /m);
  });
  it('--json gives numbers and names', async () => {
    const { make } = JSON.parse(await station('make', 'hut', '--json'));
    expect(make.find((row: { number: string }) => row.number === 'D1')).toMatchObject({ cutM: 0.82, flags: 2 });
    expect(make.map((row: { number: string }) => row.number)).not.toContain('A1');
  });
});

describe('buy', () => {
  it('reads well, and --todo leaves out what is made', async () => {
    expect(await station('buy', 'hut')).toMatch(/^plug +BNC plug +5 +5 +pieces +R1, R2, R3, R4$/m);
    const made = edit(sample('hut'), { type: 'updateCable', id: 'r1', set: { status: 'made' } });
    const file = path.join(folder, 'made.json');
    writeFileSync(file, writeStation(made));
    expect(await station('buy', file)).toMatch(/^plug +BNC plug +5 /m);
    expect(await station('buy', file, '--todo')).toMatch(/^plug +BNC plug +3 /m);
  });
  it('for one hook-up is what its cables need', async () =>
    // R4, to the dummy load, has one of the five.
    expect(await station('buy', 'hut', '--hookup', 'air')).toMatch(/^plug +BNC plug +4 /m));
});

describe('flags', () => {
  it('are two for each cable, near end first', async () => {
    const [, ...rows] = parseCsv(await station('flags', 'hut', '--csv'));
    expect(rows).toHaveLength(34);
    expect(rows.filter(([number]) => number === 'D4')).toEqual([
      ['D4', 'from', 'Fused strip · 3', 'Receiver · power', '', 'RD YE'],
      ['D4', 'to', 'Receiver · power', 'Fused strip · 3', '', 'RD YE'],
    ]);
  });
});
