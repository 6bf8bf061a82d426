import type { Circuit, LoadPart } from '../../circuit/circuit.ts';
import type { Reach } from '../../keydown/key-down.ts';
import { cablesAt, portName, portOfRef } from '../../station/parts.ts';
import { instantsOfPart, momentWords } from '../../trial/instants.ts';
import { conductorsOf, joinedTo } from '../../trial/metal/conductors.ts';
import { nameOfOrigin } from '../../trial/names.ts';
import { type JointPart, jointsAt } from '../../trial/own-parts.ts';
import { isFeed, loadVolts, type Numbered, suppliesOf, unitOfPart, works } from '../../trial/parts.ts';
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
    load({ index, part }, { station, hookup, trial }, report) {
      const [unit, port] = [unitOfPart(part), portOfRef(part.spec.plus)];
      const cable = cablesAt(station, hookup, unit, port)[0];
      if (!cable || part.plus === part.minus || !isFeed(part)) return;
      const joints = jointsAt(trial.circuit, cablesAt(station, hookup, unit), unit);
      for (const { name, reach } of instantsOfPart(trial, index)) {
        const amps = reach.dc.ampsIn(index);
        const values = { port: portName(station, { unit, port }), amps, moment: momentWords[name] };
        const base = { at: [{ unit, port }, { cable: cable.id }] as const, moment: name };
        if (!works(part, loadVolts(reach, part))) {
          if (name === 'receive' && isFedOneSided(trial.circuit, reach, part))
            report({ ...base, message: 'dead', severity: 'fault', values });
          continue;
        }
        if (amps < 1e-3) continue;
        const own = joints.filter((joint) => joint.part.origin.port === port);
        const [plus, minus] = [ampsAt(own, reach, part.plus), ampsAt(own, reach, part.minus)];
        if (plus < amps / 2 || minus > amps * missingShare) continue;
        const other = mostThroughChassis(joints, reach, port);
        if (!other) continue;
        const { origin } = other.part;
        report({
          ...base,
          message: 'elsewhere',
          severity: 'danger',
          values: { ...values, way: nameOfOrigin(station, origin), carried: other.amps },
          weight: amps,
          touches: [`cable:${origin.cable}`],
        });
      }
    },
  },
});

type Joints = readonly Numbered<JointPart>[];

/** Amperes through the joints of a plug at one of the jack's nodes. */
const ampsAt = (joints: Joints, reach: Reach, node: number): number =>
  Math.abs(joints.reduce((sum, { index, part }) => (part.b === node ? sum + reach.dc.ampsIn(index) : sum), 0));

/** Metal leads from a supply's plus to the load's plus, and from its minus nowhere back to that supply. */
function isFedOneSided(circuit: Circuit, reach: Reach, load: LoadPart): boolean {
  const conductors = conductorsOf(circuit, reach.on);
  const [plus, minus] = [joinedTo(conductors, load.plus), joinedTo(conductors, load.minus)];
  const feeding = suppliesOf(circuit).filter(({ part }) => plus.has(part.plus) && !plus.has(part.minus));
  return feeding.length > 0 && !feeding.some(({ part }) => minus.has(part.minus));
}

/** The joint at another port of the unit through which most current leaves. */
function mostThroughChassis(joints: Joints, reach: Reach, port: string): { part: JointPart; amps: number } | null {
  const others = joints
    .filter(({ part }) => part.origin.port !== port)
    .map(({ index, part }) => ({ part, amps: Math.abs(reach.dc.ampsIn(index)) }));
  return others.reduce<(typeof others)[number] | null>((most, o) => (most && most.amps >= o.amps ? most : o), null);
}
