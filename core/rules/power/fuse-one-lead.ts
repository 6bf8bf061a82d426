import type { Resistor } from '../../circuit/circuit.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { placeOfContact, unitName } from '../../station/parts.ts';
import { conductorsOf } from '../../trial/metal/conductors.ts';
import { leastWay } from '../../trial/metal/least-way.ts';
import { ownedBy } from '../../trial/owned-by.ts';
import { isFeed, suppliesOf, unitOfPart } from '../../trial/parts.ts';
import { defineRule } from '../rule.ts';

export const fuseOneLead = defineRule({
  id: 'power/fuse-one-lead',
  severity: 'note',
  title: 'Fused in the plus lead only',
  compares: 'whether a unit fed straight from a battery has a fuse in its minus lead as well as in its plus',
  why: 'Where the battery’s minus is bonded to a vehicle or a mast, and that bond opens, everything else on the battery returns through the radio’s minus and its coax.',
  advice:
    'Where the minus lead lands on the battery’s own post, and that post is bonded to a vehicle or a mast, fuse it at the battery too; where it lands on the body, or at a desk on a floating battery, a fuse in plus is enough. The vehicle’s and the radio’s manual go before this.',
  source:
    'common practice; makers of radios fuse both leads where both go to the battery, FCS 1362:2010 and ship rules fuse the live lead alone',
  follows: [],
  messages: { one: '{unit} is fed straight from {battery} with a fuse in its plus lead and none in its minus.' },
  looksAt: {
    load({ part }, { station, trial }, report) {
      const unit = unitOfPart(part);
      if (!isFeed(part) || ownedBy(trial.circuit, unit).rfSources.length === 0) return;
      for (const { part: battery } of suppliesOf(trial.circuit)) {
        if (!battery.sinks) continue;
        const plus = fusesBetween(trial, battery.plus, part.plus);
        if (plus === null || plus === 0) continue;
        const minus = fusesBetween(trial, part.minus, battery.minus);
        if (minus === null || minus > 0) continue;
        report({
          message: 'one',
          severity: 'note',
          at: [placeOfContact(unit, part.spec.plus)],
          values: { unit: unitName(station, unit), battery: unitName(station, unitOfPart(battery)) },
        });
      }
    },
  },
});

/** Fuses on the way of least resistance between two nodes, or null where metal does not join them. */
function fusesBetween({ circuit, receive }: Trial, from: number, to: number): number | null {
  const way = leastWay(circuit, conductorsOf(circuit, receive.on), from, to);
  return way ? way.parts.filter((i) => (circuit.parts[i] as Resistor).fuse !== undefined).length : null;
}
