import type { CompiledFeel } from '../../circuit/circuit.ts';
import { voltsBetween } from '../../keydown/feel.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { portName } from '../../station/parts.ts';
import { portAt } from '../../trial/contact-at.ts';
import { instantsBetween } from '../../trial/instants.ts';
import { defineRule } from '../rule.ts';

/** A coil or input that gets more than this share of what it needs is fed, if not enough. */
const fedShare = 0.4;

/** A line that falls by less than this share of itself is not being pulled at all. */
const pulledShare = 0.2;

type LineFeel = Extract<CompiledFeel, { volts: number }>;

export const lineNeverLowEnough = defineRule({
  id: 'keying/line-never-low-enough',
  severity: 'fault',
  title: 'The line is switched, but not far enough',
  compares: 'the voltage of each keyed line at its lowest, of each fed coil at its highest, against what it needs',
  why: 'A diode, a transistor or a long thin wire in the line leaves a volt or two on it, and the input waits for less. A coil for 28 V never pulls in on 12 V.',
  advice:
    'Take the diode out of the line, key it by a relay contact, or give each of two units on one line a contact of its own.',
  source: 'the input’s own threshold',
  follows: ['power/not-powered', 'power/reversed-polarity', 'drawing/does-not-mate', 'drawing/fits-but-should-not'],
  messages: {
    weak: '{port} rises to {high V} when it is fed; it has to rise above {limit V}.',
    high: '{port} falls from {rest V} to {low V} when its line is pulled; it has to fall below {limit V}.',
  },
  looksAt: {
    actor(actor, { station, trial }, report) {
      for (const feel of actor.feels) {
        if (feel.type !== 'voltageBelow' && feel.type !== 'voltageAbove') continue;
        const ref = portAt(trial.circuit, feel.node);
        const range = ref && rangeOf(trial, feel);
        if (!range) continue;
        const { rest, low, high } = range;
        const limit = feel.volts;
        const isFed = feel.type === 'voltageAbove';
        const isMissed = isFed
          ? high <= limit && high >= fedShare * limit
          : low >= limit && low <= (1 - pulledShare) * rest;
        if (!isMissed) continue;
        const port = portName(station, ref);
        const base = { severity: 'fault', at: [ref] } as const;
        if (isFed) report({ ...base, message: 'weak', values: { port, high, limit }, weight: -high });
        else report({ ...base, message: 'high', values: { port, rest, low, limit }, weight: low });
      }
    },
  },
});

/** The line's voltage in receive, at its lowest and at its highest; null where it floats. */
function rangeOf(trial: Trial, { node, reference }: LineFeel): { rest: number; low: number; high: number } | null {
  const rest = voltsBetween(trial.receive.dc, node, reference);
  if (rest === null) return null;
  const all = instantsBetween(trial, node, reference).flatMap(
    ({ reach }) => voltsBetween(reach.dc, node, reference) ?? [],
  );
  return { rest, low: Math.min(rest, ...all), high: Math.max(rest, ...all) };
}
