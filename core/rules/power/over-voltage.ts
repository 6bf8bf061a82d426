import type { LoadPart, SupplyPart } from '../../circuit/circuit.ts';
import { voltsBetween } from '../../keydown/feel.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import { kindOf, placeOfContact, portName } from '../../station/parts.ts';
import type { Station, Unit } from '../../station/schema/schema.ts';
import type { Port, UnitKind } from '../../station/schema/unit-kind.ts';
import { instantsBetween, instantsOfPart } from '../../trial/instants.ts';
import { suppliesOf, unitOfPart } from '../../trial/parts.ts';
import { feedersOf } from '../../trial/power/feeders.ts';
import { defineRule } from '../rule.ts';

export const overVoltage = defineRule({
  id: 'power/over-voltage',
  severity: 'danger',
  title: 'More volts than it stands',
  compares: 'the voltage on every contact against the most it stands, the supply’s tolerance included',
  why: 'Above its absolute limit a part fails at once or soon after; a signal input has no margin at all.',
  advice: 'Feed it from a supply inside its range, or take the cable off that contact.',
  source:
    'the unit’s own limits; a signal contact without one is taken to stand its own pull-up voltage and a volt (assumed)',
  follows: ['drawing/fits-but-should-not', 'power/reversed-polarity'],
  messages: {
    load: '{port} gets {volts V}; it stands {limit V} at most.',
    contact: '{port} has {volts V} on its {contact}; it stands {limit V} at most{assumed}.',
    below: '{port} has {volts V} on its {contact}; it stands no less than {limit V}{assumed}.',
  },
  looksAt: {
    load({ index, part }, { station, trial }, report) {
      const possible = Math.max(0, ...suppliesOf(trial.circuit).map((s) => toleranceOf(s.part)));
      const limit = part.spec.absMaxV;
      for (const { name, reach } of [atFirst(trial), ...instantsOfPart(trial, index)]) {
        const volts = highestVolts(trial, reach, part, possible);
        if (volts <= limit) continue;
        const ref = placeOfContact(unitOfPart(part), part.spec.plus);
        const values = { port: portName(station, ref), volts, limit };
        report({ message: 'load', severity: 'danger', at: [ref], values, weight: volts - limit, moment: name });
      }
    },
    port({ unit, port }, { station, trial }, report) {
      for (const { contact, label, most, least } of limitsOf(station, unit, port)) {
        const node = trial.circuit.nodeOf.get(`${unit.id}.${port.id}.${contact}`);
        const chassis = trial.circuit.nodeOf.get(`${unit.id}.chassis`);
        if (node === undefined || chassis === undefined) continue;
        for (const { name, reach } of [atFirst(trial), ...instantsBetween(trial, node, chassis)]) {
          const volts = voltsBetween(reach.dc, node, chassis);
          const passed = volts === null ? null : volts > most.volts ? most : volts < least.volts ? least : null;
          if (volts === null || passed === null) continue;
          const ref = { unit: unit.id, port: port.id };
          const assumed = passed.assumed ? ' (assumed)' : '';
          report({
            message: passed === most ? 'contact' : 'below',
            severity: 'danger',
            at: [{ ...ref, contact }],
            values: { port: portName(station, ref), contact: label, assumed, volts, limit: passed.volts },
            weight: Math.abs(volts - passed.volts),
            moment: name,
          });
        }
      }
    },
  },
});

const atFirst = (trial: Trial) => ({ name: 'receive', reach: trial.atFirst }) as const;

/** The voltage at a load with the supply that feeds it at the top of its tolerance. */
function highestVolts(trial: Trial, reach: Reach, load: LoadPart, possible: number): number {
  const volts = voltsBetween(reach.dc, load.plus, load.minus) ?? 0;
  // Which supply it is has to be traced, which few loads are worth.
  if (volts <= 0 || volts + possible <= load.spec.absMaxV) return volts;
  return volts + Math.max(0, ...feedersOf(trial.circuit, reach.on, load.plus).map((s) => toleranceOf(s.part)));
}

const toleranceOf = ({ spec }: SupplyPart): number => Math.max(0, (spec.maxVolts ?? spec.volts) - spec.volts);

interface Limit {
  readonly volts: number;
  readonly assumed: boolean;
}

interface ContactLimits {
  readonly contact: string;
  readonly label: string;
  readonly most: Limit;
  readonly least: Limit;
}

/** What each signal contact of a port stands: its own figures, or its pull-up and a volt. RF contacts have a rule of their own. */
function limitsOf(station: Station, unit: Unit, port: Port): ContactLimits[] {
  if (port.class === 'dc' || port.class === 'rf' || port.class === 'earth') return [];
  const kind = kindOf(station, unit);
  return (station.connectors[port.connector]?.contacts ?? []).flatMap((contact) => {
    const own = port.limits?.[contact.id];
    const pull = pullUpOn(kind, `${port.id}.${contact.id}`);
    const most = limit(own?.maxV, pull === null ? Number.POSITIVE_INFINITY : Math.max(0, pull) + 1);
    const least = limit(own?.minV, pull === null ? Number.NEGATIVE_INFINITY : Math.min(0, pull) - 1);
    const isLimited = Number.isFinite(most.volts) || Number.isFinite(least.volts);
    return isLimited ? [{ contact: contact.id, label: contact.name, most, least }] : [];
  });
}

const limit = (own: number | undefined, assumed: number): Limit => ({
  volts: own ?? assumed,
  assumed: own === undefined,
});

function pullUpOn(kind: UnitKind, ref: string): number | null {
  const pullUp = kind.elements.find((e) => e.type === 'pullUp' && e.contact === ref);
  return pullUp?.type === 'pullUp' ? pullUp.volts : null;
}
