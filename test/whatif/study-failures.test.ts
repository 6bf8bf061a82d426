import { describe, expect, it } from 'vitest';
import { buildCircuit } from '../../core/circuit/build-circuit.ts';
import { DcSolver } from '../../core/dc/dc-solver.ts';
import { tryCircuit } from '../../core/keydown/try-hookup.ts';
import { ditMs } from '../../core/quantity/dit-ms.ts';
import { RfSolver } from '../../core/rf/rf-solver.ts';
import { rules } from '../../core/rules/index.ts';
import { hookupsOf } from '../../core/station/parts.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { applyFailure } from '../../core/whatif/apply-failure.ts';
import { listFailures } from '../../core/whatif/list-failures.ts';
import { studyFailures } from '../../core/whatif/study-failures.ts';
import { collectFindings } from '../rules/collect-findings.ts';
import { generateStation } from '../stations/generate.ts';
import { sample, sampleFailures } from '../stations/samples.ts';

const studies = sampleFailures('hut');
const study = (text: string) => studies.find((s) => s.failure.text === text);
/** What the failure does, as `rule message-figure`. */
const found = (text: string) =>
  study(text)
    ?.findings.filter((f) => f.causedBy === undefined && f.severity !== 'note')
    .map((f) => `${f.severity} ${f.rule}`);

describe('one thing fails in the hut', () => {
  it.each([
    // A plus lead opens: its units are dead. Its minus opens: they go on, over the braid of a coax or a key lead.
    ['Plus of D4 opens', ['fault power/not-powered']],
    ['Minus of D4 opens', ['danger power/return-missing']],
    ['Minus of D2 opens', ['danger power/return-missing']],
    // The mute line opens: the receiver hears the transmitter over the changeover's isolation.
    ['Core of K4 opens', ['fault keying/no-mute']],
    // The antenna line opens: the transmitter has nothing to send into.
    ['Centre of R2 opens', ['danger rf/transmit-into-nothing']],
    ['Receiver is off', []],
    ['Changeover (Relay) stays off', ['danger rf/transmit-into-nothing', 'fault keying/no-mute']],
    ['Return of K1 opens', ['fault keying/nothing-keys-it']],
    // 14.1 V is within what every unit stands.
    ['Bench supply goes to its highest voltage, 14.1 V', []],
  ])('%s: %j', (text, expected) => expect(found(text)).toEqual(expected));

  it('with the minus of D4 open, the receiver’s 85 mA are named, and a braid that carries them', () => {
    const [finding] = study('Minus of D4 opens')?.findings ?? [];
    expect(finding?.values.amps).toBeCloseTo(0.085, 6);
    expect(finding?.values.way).toMatch(/^[RKA]\d$/);
  });
  it('every core of every cable is tried, each once, in the hook-ups in which it is plugged in', () => {
    const station = sample('hut');
    const cores = studies.filter((s) => s.failure.kind === 'opens' && 'cable' in s.failure.at);
    expect(new Set(cores.map((s) => s.failure.id)).size).toBe(cores.length);
    for (const cable of station.cables) {
      const own = cores.filter((s) => 'cable' in s.failure.at && s.failure.at.cable === cable.id);
      expect(own.length).toBeGreaterThan(0);
      for (const s of own) expect(s.hookups).toEqual(cable.hookups ?? hookupsOf(station).map((h) => h.id));
    }
  });
  it('what the sound station shows anyway is not told', () => {
    const sound = collectFindings({ station: sample('hut'), hookups: [] }, rules).map((f) => f.id);
    for (const { findings } of studies) for (const { id } of findings) expect(sound).not.toContain(id);
  });
});

/** Each part of a row failed by itself, the whole circuit solved anew: no memory, no short cuts. */
function bruteForce(station: Station) {
  const harm = rules.filter((r) => !r.judgesDrawing);
  return hookupsOf(station).flatMap((hookup) => {
    const circuit = buildCircuit(station, hookup);
    const findings = (c: typeof circuit) => {
      const solvers = { dc: new DcSolver(c), rf: new RfSolver(c) };
      return collectFindings(
        { station, hookups: [{ hookup, trial: tryCircuit(c, solvers, ditMs(station.plan.speedWpm)) }] },
        harm,
      );
    };
    const sound = new Set(findings(circuit).map((f) => f.id));
    return listFailures(station, circuit).flatMap((failure) =>
      (failure.alike.length > 0 ? failure.alike.map((part) => [part]) : [failure.parts]).map((parts) => ({
        id: failure.id,
        found: findings(applyFailure(circuit, { ...failure, parts }))
          .filter((f) => !sound.has(f.id))
          .map(({ id, severity }) => `${severity} ${id}`),
      })),
    );
  });
}

describe('the fast way', () => {
  it.each([
    ['hut', () => sample('hut')],
    ['hut-first-draft', () => sample('hut-first-draft')],
    ['two positions', () => generateStation(25)],
  ])('%s: finds what brute force finds, whichever part of a row it is that fails', (_, make) => {
    const station = make();
    const fast = new Map(studyFailures(station).map((s) => [s.failure.id, s.findings]));
    const brute = bruteForce(station);
    expect(brute.length).toBeGreaterThan(fast.size);
    for (const { id, found } of brute) {
      const quick = (fast.get(id) ?? []).map((f) => `${f.severity} ${f.id}`);
      for (const one of found) expect(quick, id).toContain(one);
    }
    const everything = new Map<string, Set<string>>();
    for (const { id, found } of brute) everything.set(id, new Set([...(everything.get(id) ?? []), ...found]));
    for (const [id, findings] of fast) {
      const slow = everything.get(id) ?? new Set();
      expect(
        findings.map((f) => `${f.severity} ${f.id}`).filter((one) => !slow.has(one)),
        id,
      ).toEqual([]);
    }
  });
});
