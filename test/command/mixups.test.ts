import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { applyMeasures, edit, readStation, schemeFor, studyMixUps, survey, writeStation } from '../../core/index.ts';
import { fileNames } from '../../electron/station/keep-mix-ups.ts';
import { parseCsv } from '../reports/parse-csv.ts';
import { sample } from '../stations/samples.ts';
import { runLine } from './run-line.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'mixups-'));
afterAll(() => rmSync(folder, { recursive: true }));

const hut = sample('hut');
const study = studyMixUps(hut);
const scheme = schemeFor(study, hut);

describe('mixups', () => {
  it('says each, how many were tried, and the scheme in words', async () => {
    const { out, status } = await runLine(['mixups', 'hut']);
    expect(status).toBe(0);
    for (const { act } of study.mixUps) expect(out).toContain(act.words);
    for (const { words } of scheme.measures) expect(out).toContain(`\n  ${words}\n`);
    expect(out).toContain(`${study.tried} things that a hand could do wrong`);
    expect(out).toMatch(/2 colours at \d+ jacks; fewer would not do\./);
    expect(out).toMatch(/What rings do not prevent:\n {2}The two cores of D1 crossed .*A connector with a key/);
  });
  it('--json has the study and the scheme', async () => {
    const { out } = await runLine(['mixups', 'hut', '--json']);
    const { tried, harmless, prevented, mixups, scheme: told } = JSON.parse(out);
    expect([tried, harmless, prevented]).toEqual([study.tried, study.harmless, 0]);
    expect(mixups.map((one: { id: string }) => one.id)).toEqual(study.mixUps.map(({ act }) => act.id));
    expect(told.exact).toBe(true);
    expect(told.measures).toHaveLength(scheme.measures.length);
    const known = new Set(mixups.map((one: { id: string }) => one.id));
    for (const { prevents } of told.measures) for (const id of prevents) expect(known).toContain(id);
    expect(told.left.map((one: { id: string }) => one.id)).toEqual(scheme.left.map(({ act }) => act.id));
  });
  it('--csv has a row for each', async () => {
    const { out } = await runLine(['mixups', 'hut', '--csv']);
    expect(parseCsv(out)).toHaveLength(1 + study.mixUps.length);
  });
  it('of a ringed station says what the rings prevent, and asks for no more', async () => {
    const ringed = writeStation(edit(hut, applyMeasures(hut, scheme.measures)));
    const { out } = await runLine(['mixups', '-'], ringed);
    expect(out).toMatch(/\d+ more are told in time by the rings that are there/);
    expect(out).not.toContain('Ring ');
    expect(out).toContain('What injures or destroys, and no ring prevents:');
  });
});

describe('--write', () => {
  it('keeps each mix-up as a station that brings what the list says', async () => {
    const out = path.join(folder, 'new', 'deep');
    const { mixups } = JSON.parse((await runLine(['mixups', 'hut', '--json', '--write', out])).out);
    expect(readdirSync(out).sort()).toEqual(mixups.map((one: { file: string }) => one.file).sort());
    for (const { file, harms } of mixups.slice(0, 5)) {
      const read = readStation(readFileSync(path.join(out, file), 'utf8'));
      if (!('station' in read)) throw new Error(`${file} can't be read`);
      const found = survey(read.station).findings.map(({ id }) => id);
      for (const { id } of harms) expect(found, file).toContain(id);
    }
  });
  it('with --hookup keeps those of the hook-up, and says where they are', async () => {
    const out = path.join(folder, 'air');
    const { out: text } = await runLine(['mixups', 'hut', '--hookup', 'air', '--write', out]);
    const count = readdirSync(out).length;
    expect(count).toBeGreaterThan(0);
    expect(count).toBeLessThanOrEqual(study.mixUps.length);
    expect(text).toContain(`${count} station files, each drawn wrong in one way: ${out}`);
  });
  it('refuses a folder that is a file, or that can’t be', async () => {
    const file = path.join(folder, 'file');
    writeFileSync(file, 'mine');
    const { err, status } = await runLine(['mixups', 'hut', '--write', file]);
    expect([status, err]).toEqual([2, expect.stringMatching(/^There can be no folder .*file of that name\.\n$/)]);
    expect(readFileSync(file, 'utf8')).toBe('mine');
    expect((await runLine(['mixups', 'hut', '--write', path.join(file, 'in')])).status).toBe(2);
    expect((await runLine(['mixups', 'hut', '--write'])).err).toMatch(/--write needs a value: --write FOLDER/);
    expect((await runLine(['check', 'hut', '--write', folder])).err).toMatch(/no use for --write/);
  });
  it.runIf(process.platform === 'linux')(
    'refuses a folder where there can be none, and does not ask for ever',
    async () => {
      const { status, err } = await runLine(['mixups', 'hut', '--write', '/proc/no/such']);
      expect([status, err]).toEqual([2, 'There can be no folder “/proc/no”: the one around it takes none.\n']);
    },
  );
});

describe('file names', () => {
  it.each([
    [['moved d4.b receiver.antenna'], ['moved-d4.b-receiver.antenna']],
    [['moved a/../../b c'], ['moved-a-..-..-b-c']],
    [
      ['moved A.a x', 'moved a.a x', 'moved a.a/x'],
      ['moved-A.a-x', 'moved-a.a-x-2', 'moved-a.a-x-3'],
    ],
    [[`moved ${'x'.repeat(500)}`], [`moved-${'x'.repeat(114)}`]],
  ])('%j', (ids, names) => expect(fileNames(ids)).toEqual(names.map((name) => `${name}.station.json`)));
});
