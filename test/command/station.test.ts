import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { acceptFinding, edit, surveyReport, writeStation } from '../../core/index.ts';
import { sample } from '../stations/samples.ts';
import { runLine } from './run-line.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'station-'));

const station = (...args: string[]) => runLine(args);

function file(name: string, text: string): string {
  const full = path.join(folder, name);
  writeFileSync(full, text);
  return full;
}

afterAll(() => rmSync(folder, { recursive: true }));

describe('exit status', () => {
  it.each([
    [['check', 'hut'], 0],
    [['check', 'hut-first-draft'], 1],
    [['cables', 'hut-first-draft'], 0],
    [['--help'], 0],
    [['rules'], 0],
    [['shelf'], 0],
  ] as [string[], number][])('%j gives %d', async (args, status) =>
    expect((await station(...args)).status).toBe(status),
  );
});

describe('what there is', () => {
  it('shelf --json is an object of kinds with ids, names and ports', async () => {
    const { kinds } = JSON.parse((await station('shelf', '--json')).out);
    expect(kinds.length).toBeGreaterThanOrEqual(80);
    for (const kind of kinds)
      expect(Object.keys(kind)).toEqual(expect.arrayContaining(['id', 'name', 'ports', 'source']));
  });
  it('rules --json tells of each rule what it says and where its limits come from', async () => {
    const { rules } = JSON.parse((await station('rules', '--json')).out);
    for (const rule of rules) {
      expect(rule.source).not.toBe('');
      expect(Object.keys(rule.messages).length).toBeGreaterThan(0);
    }
  });
});

describe('check', () => {
  it('--json is an object of findings with the documented fields; folded ones name their cause', async () => {
    const { findings } = JSON.parse((await station('check', 'hut-first-draft', '--json')).out);
    for (const finding of findings) {
      expect(Object.keys(finding)).toEqual(
        expect.arrayContaining(['rule', 'severity', 'message', 'at', 'values', 'hookups', 'moments']),
      );
      expect(finding.rule).toMatch(/^(power|rf|keying|audio|drawing)\/[a-z-]+$/);
      if (finding.causedBy) expect(findings.map((f: { id: string }) => f.id)).toContain(finding.causedBy);
    }
    expect(findings.some((f: { causedBy?: string }) => f.causedBy)).toBe(true);
  });
  it('reads well', async () => {
    const { out } = await station('check', 'hut-first-draft');
    expect(out).toMatch(/^DANGER {2}Plus and minus are swapped$/m);
    expect(out).toMatch(/From this follows:/);
    expect(out).toMatch(/3 danger, 2 fault, 1 doubt, 4 note/);
  });
  it('an accepted danger no longer counts', async () => {
    const draft = sample('hut-first-draft');
    const { findings } = surveyReport(draft);
    const accepted = findings.reduce((s, finding) => edit(s, acceptFinding(finding, 'known')), draft);
    const read = file('accepted.json', writeStation(accepted));
    expect((await station('check', read)).status).toBe(0);
  });
});

describe('tables', () => {
  it('budget --json has receive and sending amperes for each supply and volts for each load', async () => {
    const { supplies, loads } = JSON.parse((await station('budget', 'hut', '--json', '--hookup', 'On the air')).out);
    expect(supplies).toHaveLength(1);
    expect(supplies[0].receiveAmps).toBeCloseTo(0.12, 6);
    expect(supplies[0].sendingAmps).toBeGreaterThan(0.75);
    expect(loads.map((l: { unit: string }) => l.unit)).toEqual(['transmitter', 'changeover', 'receiver']);
    for (const load of loads) expect(load.sendingVolts).toBeGreaterThan(13);
  });
  it('budget --json has branches, the parts of every way, and the peak of every current', async () => {
    const { supplies, branches, ways } = JSON.parse((await station('budget', 'hut', '--json', '--hookup', 'air')).out);
    expect(branches.map((b: { number: string }) => b.number)).toEqual(['D1', 'D2', 'D3', 'D4']);
    expect(ways).toHaveLength(3);
    for (const way of ways) expect(way.parts.length).toBeGreaterThan(10);
    for (const row of [...supplies, ...branches]) expect(row.peakAmps).toBeGreaterThanOrEqual(row.sendingAmps);
  });
  it('budget reads as tables: branches stand under the one that they hang behind, a way ends at its load', async () => {
    const { out } = await station('budget', 'hut', '--hookup', 'air');
    expect(out).toMatch(/^Bench supply · output +D1 .*Transmitter, Changeover, Receiver$/m);
    expect(out).toMatch(/^ {2}Fused strip · 1 +D2 +On the air +3 A /m);
    expect(out).toMatch(/^ {2}Fuse of Fused strip · 1 +out +621 mA +20\.\d mV$/m);
    expect(out).toMatch(/^Supply .* Peak /m);
  });
  it('budget --csv has a row for each thing, as many fields in each as its head has', async () => {
    const [head, ...rows] = (await station('budget', 'hut', '--csv', '--hookup', 'air')).out.trim().split('\r\n');
    expect(new Set(rows.map((row) => row.split(',')[0]))).toEqual(
      new Set(['supply', 'load', 'branch', 'way', 'fuse', 'wire']),
    );
    // Names of parts have a comma of their own and stand in quotes.
    for (const row of rows) expect(row.replace(/"[^"]*"/g, '').split(',')).toHaveLength(head?.split(',').length ?? 0);
  });
  it('rf tells the level after each cable and unit', async () =>
    expect((await station('rf', 'hut', '--hookup', 'dummy')).out).toMatch(
      /^Changeover +0\.20 dB +\+34\.6 dBm +2\.86 W$/m,
    ));
  it('cables --csv has a line for each cable and its head', async () => {
    expect((await station('cables', 'hut', '--csv')).out.trim().split('\r\n')).toHaveLength(18);
    expect((await station('cables', 'hut', '--csv', '--hookup', 'air')).out.trim().split('\r\n')).toHaveLength(17);
  });
  it('keydown tells each event with its time', async () => {
    const { out } = await station('keydown', 'hut', '--hookup', 'dummy');
    for (const row of [
      /^ *7 ms +Changeover relay on$/m,
      /^ *14 ms +Transmitter RF on$/m,
      /^ *85 ms +T\+5 +Changeover relay off$/m,
    ])
      expect(out).toMatch(row);
  });
  it('powerup has every part with its numbered steps, and what to expect', async () => {
    const { out } = await station('powerup', 'hut');
    for (const row of [
      /^UNPOWERED$/m,
      /^SENDING INTO THE DUMMY LOAD$/m,
      / Bench supply · output +13\.80 V \(13\.\d\d to 14\.\d\d V\)$/m,
      / Bench supply +120 mA \(1[01]\d to 1[23]\d mA\)$/m,
    ])
      expect(out).toMatch(row);
    expect((await station('powerup', 'hut-first-draft')).out).toMatch(
      /^Put right first:\n {2}D4 is the wrong way round/m,
    );
  });
  it('powerup --hookup keeps to that hook-up on the antenna', async () => {
    expect((await station('powerup', 'hut', '--hookup', 'air')).out).toMatch(/^ON THE ANTENNA$/m);
    expect((await station('powerup', 'hut', '--hookup', 'dummy')).out).not.toMatch(/^ON THE ANTENNA$/m);
  });
  it('powerup --json and --csv tell a reading that is off, and its cause', async () => {
    const reading = { step: 'unit/receiver/plug', value: -13.8, unit: 'V', when: '2026-03-01T10:00:00.000Z' };
    const read = file('read.json', writeStation(edit(sample('hut'), { type: 'addReading', reading })));
    const { parts } = JSON.parse((await station('powerup', read, '--json')).out);
    const steps = parts.flatMap((p: { steps: object[] }) => p.steps);
    const step = steps.find((s: { id: string }) => s.id === reading.step);
    expect(step.read).toMatchObject({ value: -13.8, verdict: 'too low' });
    expect(step.read.causes[0].text).toBe('Plus and minus of D4 are swapped');
    const csv = (await station('powerup', read, '--csv')).out;
    expect(csv.trim().split('\r\n')).toHaveLength(steps.length + 1);
    expect(csv).toMatch(
      /unit\/receiver\/plug.*,-13\.8,2026-03-01T10:00:00\.000Z,too low,"?Plus and minus of D4 are swapped/,
    );
    expect((await station('powerup', read)).out).toMatch(
      /−13\.80 V, too low, 2026-03-01: Plus and minus of D4 are swapped/,
    );
  });
  it('circuit --spice writes a deck', async () =>
    expect((await station('circuit', 'hut', '--spice')).out).toMatch(/^\* Hut[\s\S]*\.op|op[\s\S]*\.end\n$/));
});
