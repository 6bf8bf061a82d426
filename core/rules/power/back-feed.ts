import type { LoadPart } from '../../circuit/circuit.ts';
import { DcSolver } from '../../dc/dc-solver.ts';
import { voltsBetween } from '../../keydown/feel.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { cablesAt, kindOf, portName, portOf, portOfRef, unitName, unitOf } from '../../station/parts.ts';
import type { Hookup, Station } from '../../station/schema/schema.ts';
import { portAt } from '../../trial/contact-at.ts';
import { jointsAt, partsOfUnit } from '../../trial/own-parts.ts';
import { loadsOf, unitOfPart } from '../../trial/parts.ts';
import { defineRule } from '../rule.ts';

/** Below this a rail is as good as off. */
const offVolts = 0.5;

export const backFeed = defineRule({
  id: 'power/back-feed',
  severity: 'doubt',
  title: 'Power through a line that should carry none',
  compares: 'what a data, audio or control line puts on a unit’s supply while its own power plug is pulled',
  why: 'A unit that is half alive starts up in odd ways, and its input diodes carry a current that they are not made for.',
  advice: 'Open the 5 V wire of that lead, put an isolator in it, or switch both units together.',
  source: 'the units’ own elements, solved with the power plug pulled',
  follows: ['drawing/fits-but-should-not'],
  messages: { fed: 'With its own power off, {unit} still gets {volts V} through {port}.' },
  looksAt: {
    hookup(hookup, { station, trial }, report) {
      let solver: DcSolver | null = null;
      for (const { load, from } of suspects(station, hookup, trial)) {
        solver ??= new DcSolver(trial.circuit);
        const unit = unitOfPart(load);
        const pulled = solver.solve(trial.receive.on, powerJoints(station, hookup, trial, unit));
        const volts = voltsBetween(pulled, load.plus, load.minus) ?? 0;
        if (volts <= offVolts) continue;
        const ref = { unit, port: from };
        report({
          message: 'fed',
          severity: 'doubt',
          at: [ref],
          values: { unit: unitName(station, unit), port: portName(station, ref), volts },
          moment: 'receive',
        });
      }
    },
  },
});

/** Loads of a unit with a power input of its own that hang on a plugged signal port, or to which a diode leads from one. */
function suspects(station: Station, hookup: Hookup, trial: Trial): { load: LoadPart; from: string }[] {
  const { circuit } = trial;
  return loadsOf(circuit).flatMap(({ part: load }) => {
    const unit = unitOfPart(load);
    const { ports, elements } = kindOf(station, unitOf(station, unit));
    const classOfPort = (id: string) => ports.find((p) => p.id === id)?.class;
    if (!elements.some((e) => e.type === 'load' && classOfPort(portOfRef(e.plus)) === 'dc')) return [];
    const own = portOfRef(load.spec.plus);
    const clamped = partsOfUnit(circuit, unit).flatMap(({ part }) =>
      part.kind === 'diode' && part.cathode === load.plus ? (portAt(circuit, part.anode)?.port ?? []) : [],
    );
    return [own, ...clamped].flatMap((from) => {
      const isSignal = ports.some((p) => p.id === from && p.class !== 'dc' && p.class !== 'rf');
      return isSignal && cablesAt(station, hookup, unit, from).length > 0 ? [{ load, from }] : [];
    });
  });
}

/** The joints of a unit's power plugs. */
function powerJoints(station: Station, hookup: Hookup, { circuit }: Trial, unit: string): Set<number> {
  const joints = jointsAt(circuit, cablesAt(station, hookup, unit), unit);
  const isPower = ({ part: { origin } }: (typeof joints)[number]) => portOf(station, origin).port.class === 'dc';
  return new Set(joints.filter(isPower).map(({ index }) => index));
}
