import { type Circuit, isOpenGate, type RfSource } from '../../circuit/circuit.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import { type RfField, wayTo } from '../../rf/rf-solution.ts';
import { remember } from '../../station/remember.ts';
import { rfPortRef } from '../contact-at.ts';
import type { RfRegion } from './regions.ts';

/** A receiver that states no overload level is taken to be blocked above this. */
export const assumedOverloadDbm = -10;

/** A receiver that states no damage level is taken to stand what laboratories test with. */
export const assumedDamageDbm = 10;

/** Below its overload by more than this a receiver only hears the transmitter loudly. */
export const audibleDb = 30;

/** The field of a source at an instant, or null while it makes none. */
export const fieldOf = (trial: Trial, reach: Reach, source: RfSource): RfField | null =>
  reach.rf.fieldsAt(source.port).find((f) => trial.circuit.rf.sources[f.source] === source) ?? null;

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
  return (mutesOf(trial.circuit).get(unit) ?? []).some((i) => reach.on[i] === 1 || reach.felt[i] === 1);
}

/** By unit, the actors that silence it. */
const mutesOf = remember((circuit: Circuit): ReadonlyMap<string, readonly number[]> => {
  const mutes = new Map<string, number[]>();
  circuit.actors.forEach(({ unit, does }, i) => {
    if (does === 'mutes') mutes.set(unit, [...(mutes.get(unit) ?? []), i]);
  });
  return mutes;
});

/** Groups of a region's ports that end in an antenna or a termination at an instant. */
export function endGroups({ loads }: RfRegion, reach: Reach): Set<number | undefined> {
  const ends = loads.filter((l) => l.spec.role !== 'receiver' && isOpenGate(l.gate, reach.on));
  return new Set(ends.map((l) => reach.rf.groupOf(l.port)));
}
