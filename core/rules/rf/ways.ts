import { type Circuit, isOpenGate, type RfSource } from '../../circuit/circuit.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import { type RfField, wayTo } from '../../rf/solve-rf.ts';
import { rfPortRef } from '../look.ts';

/** A receiver that states no overload level is taken to be blocked above this. */
export const assumedOverloadDbm = -10;

/** The field of a source at an instant, or null while it makes none. */
export const fieldOf = (trial: Trial, reach: Reach, source: RfSource): RfField | null =>
  reach.rf.fields.find((f) => trial.circuit.rf.sources[f.source] === source) ?? null;

/** Units and cables by which RF came to a port, as a finding names what takes part. */
export function touchesOnWay(circuit: Circuit, field: RfField, port: number): string[] {
  const { ports, edges } = wayTo(field.best, port);
  const cables = edges.flatMap((i) => {
    const origin = circuit.rf.edges[i]?.origin;
    return origin?.type === 'cable' ? [`cable:${origin.cable}`] : [];
  });
  return [...ports.map((p) => `unit:${rfPortRef(circuit, p).unit}`), ...cables];
}

/** Whether a receiver is silenced at an instant: its mute is on, or is felt and only its power is missing. */
export function isMuted(trial: Trial, reach: Reach, unit: string): boolean {
  return trial.circuit.actors.some(
    (a, i) => a.unit === unit && a.does === 'mutes' && (reach.on[i] === 1 || reach.felt[i] === 1),
  );
}

/** Groups of ports that end in an antenna or a termination at an instant. */
export function endGroups(trial: Trial, reach: Reach): Set<number> {
  const ends = trial.circuit.rf.loads.filter((l) => l.spec.role !== 'receiver' && isOpenGate(l.gate, reach.on));
  return new Set(ends.map((l) => reach.rf.group[l.port] as number));
}
