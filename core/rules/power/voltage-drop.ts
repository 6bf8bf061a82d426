import { usualDrop } from '../../catalog/wire/wire.ts';
import type { DiodePart, Resistor } from '../../circuit/circuit.ts';
import { voltsBetween } from '../../keydown/feel.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import { placeOfContact, portName } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { instantsOfPart, momentWords } from '../../trial/instants.ts';
import { passersOf } from '../../trial/metal/conductors.ts';
import { leastWay } from '../../trial/metal/least-way.ts';
import { nameOfOrigin } from '../../trial/names.ts';
import { loadVolts, suppliesOf, unitOfPart, works } from '../../trial/parts.ts';
import { mainFeederOf } from '../../trial/power/feeders.ts';
import { defineRule } from '../rule.ts';

export const voltageDrop = defineRule({
  id: 'power/voltage-drop',
  severity: 'doubt',
  title: 'Much is lost on the way',
  compares: 'the drop from the supply to each load, both conductors, against the station’s limit',
  why: 'What is lost in leads and fuses is missing at the transmitter just when it sends, and it warms the joint that is worst.',
  advice:
    'Begin with the part that drops most: a thicker or shorter lead, a better connector, a larger fuse where the wire allows it.',
  source:
    'the station’s own limit; 5 % where none is set (NEC 215.2(A) informational note: feeder and branch together)',
  follows: [
    'power/under-voltage',
    'power/short-circuit',
    'power/reversed-polarity',
    'power/supply-overloaded',
    'power/return-missing',
  ],
  messages: {
    drop: '{drop V} of {volts V} ({share %}) is lost on the way to {port} {moment}, most of it ({most V}) in {where}.',
  },
  looksAt: {
    load({ index, part }, { station, trial }, report) {
      const limit = station.settings.maxDrop ?? usualDrop;
      const highest = Math.max(0, ...suppliesOf(trial.circuit).map((s) => s.part.spec.volts));
      for (const { name, reach } of instantsOfPart(trial, index)) {
        const got = loadVolts(reach, part);
        // Which supply it is has to be traced, which few loads are worth.
        const isFar = works(part, got) && highest - got > limit * highest;
        const supply = isFar ? mainFeederOf(trial.circuit, reach, part.plus) : undefined;
        if (!supply) continue;
        const volts = voltsBetween(reach.dc, supply.part.plus, supply.part.minus) ?? 0;
        const drop = volts - got;
        if (drop <= limit * volts) continue;
        const out = [supply.part.plus, part.plus] as const;
        const back = [part.minus, supply.part.minus] as const;
        const { where, volts: most } = worstOnWay(station, trial, reach, out, back);
        const ref = placeOfContact(unitOfPart(part), part.spec.plus);
        const [port, moment] = [portName(station, ref), momentWords[name]];
        report({
          message: 'drop',
          severity: 'doubt',
          at: [ref],
          values: { port, drop, volts, share: drop / volts, moment, most, where },
          moment: name,
          weight: drop,
        });
      }
    },
  },
});

/** The cable or unit that drops most on the way out and back, with all that it drops: cores, joints, fuse. */
function worstOnWay(
  station: Station,
  trial: Trial,
  reach: Reach,
  ...ways: (readonly [number, number])[]
): { where: string; volts: number } {
  const conductors = passersOf(trial.circuit, reach.on);
  const dropped = new Map<string, number>();
  for (const [start, end] of ways) {
    for (const i of leastWay(trial.circuit, conductors, start, end)?.parts ?? []) {
      const part = trial.circuit.parts[i] as Resistor | DiodePart;
      const where = nameOfOrigin(station, part.origin);
      const [from, to] = part.kind === 'diode' ? [part.anode, part.cathode] : [part.a, part.b];
      dropped.set(where, (dropped.get(where) ?? 0) + Math.abs(reach.dc.between(from, to) ?? 0));
    }
  }
  return [...dropped].reduce((worst, [where, volts]) => (volts > worst.volts ? { where, volts } : worst), {
    where: 'the leads',
    volts: 0,
  });
}
