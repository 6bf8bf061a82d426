import type { Trial } from '../../keydown/key-down.ts';
import type { TriedHookup } from '../../rules/rule.ts';
import type { Plan } from '../../station/schema/schema.ts';
import { instantsOfPart } from '../../trial/instants.ts';
import { averageOf, busiest } from '../../trial/power/battery-life.ts';
import type { InHookup } from '../in-hookup.ts';
import type { DrawnAmps } from './rows.ts';

export const inHookup = ({ hookup }: TriedHookup): InHookup => ({ hookup: hookup.id, hookupName: hookup.name });

/**
 * Amperes of one part of a circuit: in receive, sending, on average by the plan, and the most at any moment. `read` makes
 * of the part's own count what is told: its size, for parts whose direction says nothing.
 */
export function drawOf(plan: Plan, trial: Trial, part: number, read = (amps: number) => amps): DrawnAmps {
  const receiveAmps = read(trial.receive.dc.ampsIn(part));
  const sendingAmps = read(busiest(trial).dc.ampsIn(part));
  const all = instantsOfPart(trial, part).map(({ reach }) => read(reach.dc.ampsIn(part)));
  return {
    receiveAmps,
    sendingAmps,
    averageAmps: averageOf(plan, receiveAmps, sendingAmps),
    peakAmps: Math.max(receiveAmps, sendingAmps, ...all),
  };
}
