import type { SupplyPart } from '../../circuit/circuit.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { unitName } from '../../station/parts.ts';
import { conductorsOf, joinedTo } from '../../trial/metal/conductors.ts';
import { type Numbered, suppliesOf, unitOfPart } from '../../trial/parts.ts';
import { suppliesAmong } from '../../trial/power/feeders.ts';
import { defineRule } from '../rule.ts';

/** Two batteries are alike when their capacities differ by no more than this. */
const alikeShare = 0.05;

export const suppliesInParallel = defineRule({
  id: 'power/supplies-in-parallel',
  severity: 'danger',
  title: 'Two supplies on one pair of wires',
  compares: 'the supplies whose plus and minus are both joined by metal, with no diode between them',
  why: 'The one that stands a little higher carries everything and pushes current back into the other; two batteries that are not alike discharge into each other.',
  advice:
    'Use one supply, or join the two through diodes or a selector switch; batteries in parallel have to be of one kind, size and age, with a fuse at each.',
  source: 'common practice; a charger across its own battery is as it should be',
  follows: ['power/short-circuit'],
  messages: {
    supplies:
      '{one} ({volts V}) and {other} ({otherVolts V}) are joined plus to plus and minus to minus, with no diode between.',
    batteries: '{one} and {other} are joined in parallel and are not alike: {what}.',
    overcharged: '{one} holds {volts V} on {other}, which takes no more than {limit V} while it is charged.',
  },
  looksAt: {
    supply(one, { station, trial }, report) {
      for (const [from, into] of pairsOf(trial, one)) {
        const judged = judge(from.part, into.part);
        if (!judged) continue;
        const [a, b] = [unitOfPart(from.part), unitOfPart(into.part)];
        report({
          message: judged.message,
          severity: judged.severity,
          at: [{ unit: a }, { unit: b }],
          values: { one: unitName(station, a), other: unitName(station, b), ...judged.values },
        });
      }
    },
  },
});

/** A supply with each later one that metal joins to it at both ends at rest: the one that pushes current into the other first. */
function pairsOf(
  { circuit, receive }: Trial,
  one: Numbered<SupplyPart>,
): [Numbered<SupplyPart>, Numbered<SupplyPart>][] {
  const isInForce = ({ index }: Numbered<SupplyPart>) => receive.dc.modeOf(index) !== undefined;
  const isLater = (other: Numbered<SupplyPart>) => other.index > one.index && isInForce(other);
  // Following the metal costs, and most stations have one supply.
  if (!isInForce(one) || !suppliesOf(circuit).some(isLater)) return [];
  const conductors = conductorsOf(circuit, receive.on);
  const others = suppliesAmong(circuit, joinedTo(conductors, one.part.plus)).filter(isLater);
  if (others.length === 0) return [];
  const minus = joinedTo(conductors, one.part.minus);
  return others
    .filter((other) => minus.has(other.part.minus))
    .map((other) => (pushes(one.part, other.part) ? [one, other] : [other, one]));
}

/** A battery takes what is pushed; else the higher voltage pushes, and of two alike the first by name. */
function pushes(one: SupplyPart, other: SupplyPart): boolean {
  if (one.sinks !== other.sinks) return other.sinks;
  if (one.spec.volts !== other.spec.volts) return one.spec.volts > other.spec.volts;
  return unitOfPart(one) <= unitOfPart(other);
}

function judge(one: SupplyPart, other: SupplyPart) {
  const values = { volts: one.spec.volts, otherVolts: other.spec.volts };
  if (one.battery && other.battery) {
    const what = difference(one.battery, other.battery);
    return what === null ? null : ({ message: 'batteries', severity: 'doubt', values: { what } } as const);
  }
  if (other.battery) {
    const limit = other.spec.maxVolts ?? other.spec.volts;
    if (one.spec.volts <= limit * 1.001) return null;
    return { message: 'overcharged', severity: 'danger', values: { ...values, limit } } as const;
  }
  const apart = Math.abs(one.spec.volts - other.spec.volts);
  return { message: 'supplies', severity: apart > 0.05 ? 'danger' : 'doubt', values } as const;
}

type Battery = NonNullable<SupplyPart['battery']>;

const chemistryNames: Record<Battery['chemistry'], string> = {
  leadAcid: 'flooded lead-acid',
  agm: 'sealed lead-acid',
  lifepo4: 'lithium iron phosphate',
};

function difference(a: Battery, b: Battery): string | null {
  if (a.chemistry !== b.chemistry) return `${chemistryNames[a.chemistry]} and ${chemistryNames[b.chemistry]}`;
  const apart = Math.abs(a.ampHours - b.ampHours) / Math.max(a.ampHours, b.ampHours);
  return apart > alikeShare ? `${a.ampHours} Ah and ${b.ampHours} Ah` : null;
}
