import { buildCircuit } from '../circuit/build-circuit.ts';
import type { Circuit } from '../circuit/circuit.ts';
import { DcSolver } from '../dc/dc-solver.ts';
import type { Solvers, Trial } from '../keydown/key-down.ts';
import { tryCircuit } from '../keydown/try-hookup.ts';
import { ditMs } from '../quantity/dit-ms.ts';
import { RfSolver } from '../rf/rf-solver.ts';
import type { Finding } from '../rules/finding.ts';
import { findingsFrom } from '../rules/findings-from.ts';
import { rules } from '../rules/index.ts';
import { type Memory, runRules } from '../rules/run-rules.ts';
import { hookupsOf } from '../station/parts.ts';
import type { Hookup, Station } from '../station/schema/schema.ts';
import { applyFailure } from './apply-failure.ts';
import type { Failure } from './failure.ts';
import { listFailures } from './list-failures.ts';
import { type Weakness, weaknessOf } from './weakness-of.ts';

/** What one failure does in the hook-ups in which it can happen. */
export interface FailureStudy {
  readonly failure: Failure;
  readonly hookups: readonly string[];
  /** What is found then and not in the sound station, worst first, causes before consequences; empty where it does no harm. */
  readonly findings: readonly Finding[];
  /** The kind of weakness that it lays open; null where it does no harm. */
  readonly weakness: Weakness | null;
}

/**
 * Lets one thing after the other fail in each hook-up, puts the station through its paces each time, and gives for
 * each failure what is found that the sound station does not show. Faults that it has anyway are left out. `tell` hears
 * after each try how many of how many are done.
 */
export function studyFailures(station: Station, tell: (done: number, of: number) => void = () => {}): FailureStudy[] {
  const studies = new Map<string, Found>();
  const tries = hookupsOf(station).map((hookup) => {
    const circuit = buildCircuit(station, hookup);
    return { hookup, circuit, failures: listFailures(station, circuit) };
  });
  const dit = ditMs(station.plan.speedWpm);
  const all = tries.reduce((sum, { failures }) => sum + failures.length, 0);
  let done = 0;
  for (const { hookup, circuit, failures } of tries) {
    const sound = tryCircuit(circuit, { dc: new DcSolver(circuit), rf: new RfSolver(circuit) }, dit);
    const look = (trial: Trial, before: Memory = []) => {
      const facts = { station, hookups: [{ hookup, trial }] };
      const { said, memory } = runRules(facts, harmRules, before);
      return { findings: findingsFrom(facts, said), memory };
    };
    const { findings, memory } = look(sound);
    const known = new Set(findings.map((f) => f.id));
    for (const failure of failures) {
      const failed = applyFailure(circuit, failure);
      // What the failure does not touch is as in the sound station.
      const trial = tryCircuit(failed, solversOf(failed, sound), dit, { before: sound });
      const fresh = look(trial, memory).findings.filter((f) => !known.has(f.id));
      studies.set(failure.id, withHookup(studies.get(failure.id), failure, hookup, fresh));
      done += 1;
      tell(done, all);
    }
  }
  return [...studies.values()].map((study) => ({ ...study, weakness: weaknessOf(study.failure, study.findings) }));
}

const solversOf = (failed: Circuit, { circuit, solvers: { dc, rf } }: Trial): Solvers => ({
  dc: dc.solverOf(failed),
  rf: failed.rf === circuit.rf ? rf : new RfSolver(failed, rf),
});

const harmRules = rules.filter((rule) => !rule.judgesDrawing);

type Found = Omit<FailureStudy, 'weakness'>;

/** The same failure in another hook-up adds what only shows there. */
function withHookup(known: Found | undefined, failure: Failure, hookup: Hookup, fresh: readonly Finding[]): Found {
  if (!known) return { failure, hookups: [hookup.id], findings: fresh };
  const told = new Set(known.findings.map((f) => f.id));
  const findings = [...known.findings, ...fresh.filter((f) => !told.has(f.id))];
  return { failure: known.failure, hookups: [...known.hookups, hookup.id], findings };
}
