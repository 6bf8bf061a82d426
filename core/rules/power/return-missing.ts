import type { Circuit, LoadPart, Origin, Resistor } from '../../circuit/circuit.ts';
import type { Reach } from '../../keydown/key-down.ts';
import { cablesAt, portName, portOfRef } from '../../station/parts.ts';
import { remember } from '../../station/remember.ts';
import { conductorsOf, joinedTo } from '../../trial/conductors.ts';
import { instantsOfPart, momentWords } from '../../trial/instants.ts';
import { nameOfOrigin } from '../../trial/names.ts';
import { isFeed, loadsOf, loadVolts, type Numbered, suppliesOf, unitOfPart, works } from '../../trial/parts.ts';
import { defineRule } from '../rule.ts';

/** Less than this share of a load's current in its own minus lead means that the lead is not there. */
const missingShare = 0.02;

export const returnMissing = defineRule({
  id: 'power/return-missing',
  severity: 'danger',
  title: 'The minus lead is missing',
  compares: 'the current in a load’s own minus lead against what it draws',
  why: 'The current goes back through whatever else joins the two boxes: coax braid, a key lead, an audio screen. They are not made for it and can burn.',
  advice: 'Connect minus at that plug, whatever seems to work without it.',
  source: 'Kirchhoff’s current law; a fiftieth of the current is taken as none',
  follows: ['power/reversed-polarity', 'drawing/does-not-mate', 'drawing/fits-but-should-not'],
  messages: {
    elsewhere: '{port} draws {amps A} {moment}, but nothing flows in its own minus: {carried A} returns through {way}.',
    dead: '{port} has plus but no way back for the current, so it stays off.',
  },
  looksAt: {
    station({ station, hookups }, report) {
      for (const { hookup, trial } of hookups) {
        const joints = jointsByUnit(trial.circuit);
        for (const { index, part } of loadsOf(trial.circuit)) {
          const [unit, port] = [unitOfPart(part), portOfRef(part.spec.plus)];
          const cable = cablesAt(station, hookup, unit, port)[0];
          if (!cable || part.plus === part.minus || !isFeed(part)) continue;
          for (const { name, reach } of instantsOfPart(trial, index)) {
            const own = jointAmps(joints.get(unit) ?? [], reach, port);
            const plus = own.get(part.plus) ?? 0;
            const amps = reach.dc.ampsIn(index);
            const values = { port: portName(station, { unit, port }), amps, moment: momentWords[name] };
            const base = { at: [{ unit, port }, { cable: cable.id }] as const, hookup: hookup.id, moment: name };
            if (!works(part, loadVolts(reach, part))) {
              if (name === 'receive' && isFedOneSided(trial.circuit, reach, part))
                report({ ...base, message: 'dead', severity: 'fault', values });
              continue;
            }
            if (amps < 1e-3 || Math.abs(plus) < amps / 2 || Math.abs(own.get(part.minus) ?? 0) > amps * missingShare)
              continue;
            const other = mostThroughChassis(joints.get(unit) ?? [], reach, port);
            if (!other) continue;
            const way = nameOfOrigin(station, other.part.origin);
            report({
              ...base,
              message: 'elsewhere',
              severity: 'danger',
              values: { ...values, way, carried: other.amps },
              weight: amps,
              touches: [`cable:${other.part.origin.cable}`],
            });
          }
        }
      }
    },
  },
});

/** Where a plug meets a port. */
type Joint = Numbered<Resistor & { readonly origin: Extract<Origin, { type: 'mate' }> }>;

const jointsByUnit = remember((circuit: Circuit): ReadonlyMap<string, readonly Joint[]> => {
  const joints = new Map<string, Joint[]>();
  circuit.parts.forEach((part, index) => {
    if (part.kind !== 'resistor' || part.origin.type !== 'mate') return;
    const { origin } = part;
    const list = joints.get(origin.unit) ?? [];
    list.push({ index, part: { ...part, origin } });
    joints.set(origin.unit, list);
  });
  return joints;
});

/** Amperes through each joint of a port's plug, by the jack's node. */
function jointAmps(joints: readonly Joint[], reach: Reach, port: string): Map<number, number> {
  const amps = new Map<number, number>();
  for (const { index, part } of joints) {
    if (part.origin.port === port) amps.set(part.b, (amps.get(part.b) ?? 0) + reach.dc.ampsIn(index));
  }
  return amps;
}

/** Metal leads from a supply's plus to the load's plus, and from its minus nowhere back to that supply. */
function isFedOneSided(circuit: Circuit, reach: Reach, load: LoadPart): boolean {
  const conductors = conductorsOf(circuit, reach.on);
  const [plus, minus] = [joinedTo(conductors, load.plus), joinedTo(conductors, load.minus)];
  const feeding = suppliesOf(circuit).filter(({ part }) => plus.has(part.plus) && !plus.has(part.minus));
  return feeding.length > 0 && !feeding.some(({ part }) => minus.has(part.minus));
}

/** The joint at another port of the unit through which most current leaves. */
function mostThroughChassis(
  joints: readonly Joint[],
  reach: Reach,
  port: string,
): { part: Joint['part']; amps: number } | null {
  const others = joints
    .filter(({ part }) => part.origin.port !== port)
    .map(({ index, part }) => ({ part, amps: Math.abs(reach.dc.ampsIn(index)) }));
  return others.reduce<(typeof others)[number] | null>((most, o) => (most && most.amps >= o.amps ? most : o), null);
}
