import type { Reach } from '../../../keydown/key-down.ts';
import type { Chain } from '../../../rf/chain.ts';
import { chainOf } from '../../../rf/solve-chain.ts';
import type { TriedHookup } from '../../../rules/rule.ts';
import { type Context, wholeSetup } from '../context.ts';
import { type Setup, seenIn, trialOf } from '../setup.ts';
import { controlsOf } from './lines.ts';

/** One transmitter sending in one hook-up. */
export interface Sending {
  readonly setup: Setup;
  readonly unit: string;
  readonly element: string;
  readonly control: string;
  readonly chain: Chain;
  readonly reach: Reach;
}

/** The same with the station in another state; null where it does not send then. */
export function sendingIn({ reach: _, chain: __, ...sending }: Sending, setup: Setup): Sending | null {
  const { reach, circuit } = seenIn(setup);
  const field = reach?.rf.fields.find((f) => circuit.rf.sources[f.source]?.unit === sending.unit);
  return reach && field ? { ...sending, setup, reach, chain: chainOf(circuit, reach.on, field) } : null;
}

/** Each transmitter, with the first control that makes it send. */
export function sendingsIn(context: Context, { hookup }: TriedHookup): Sending[] {
  const whole = wholeSetup(context, hookup);
  const found = new Map<string, Sending>();
  for (const { key, name } of controlsOf(context, trialOf(whole))) {
    const setup = { ...whole, control: key };
    const { reach, circuit } = seenIn(setup);
    for (const field of reach?.rf.fields ?? []) {
      const source = circuit.rf.sources[field.source];
      if (!source || !reach || found.has(source.unit)) continue;
      const chain = chainOf(circuit, reach.on, field);
      found.set(source.unit, { setup, unit: source.unit, element: source.spec.id, control: name, chain, reach });
    }
  }
  return [...found.values()];
}
