import type { LoadPart, SupplyPart } from '../../circuit/circuit.ts';
import { voltsBetween } from '../../keydown/feel.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import { kindOf, placeOfContact, portName } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import type { UnitKind } from '../../station/schema/unit-kind.ts';
import { feedersOf } from '../../trial/feeders.ts';
import { instantsBetween, instantsOfPart } from '../../trial/instants.ts';
import { loadsOf, suppliesOf, unitOfPart } from '../../trial/parts.ts';
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
    station({ station, hookups }, report) {
      const limits = limitsOf(station);
      for (const { hookup, trial } of hookups) {
        const possible = Math.max(0, ...suppliesOf(trial.circuit).map((s) => toleranceOf(s.part)));
        const first = { name: 'receive', reach: trial.atFirst } as const;
        const base = { severity: 'danger', hookup: hookup.id } as const;
        for (const { index, part } of loadsOf(trial.circuit)) {
          for (const { name, reach } of [first, ...instantsOfPart(trial, index)]) {
            const volts = highestVolts(trial, reach, part, possible);
            const limit = part.spec.absMaxV;
            if (volts <= limit) continue;
            const ref = placeOfContact(unitOfPart(part), part.spec.plus);
            const values = { port: portName(station, ref), volts, limit };
            report({ ...base, message: 'load', at: [ref], values, weight: volts - limit, moment: name });
          }
        }
        for (const { unit, port, contact, label, most, least } of limits) {
          const node = trial.circuit.nodeOf.get(`${unit}.${port}.${contact}`);
          const chassis = trial.circuit.nodeOf.get(`${unit}.chassis`);
          if (node === undefined || chassis === undefined) continue;
          for (const { name, reach } of [first, ...instantsBetween(trial, node, chassis)]) {
            const volts = voltsBetween(reach.dc, node, chassis);
            const passed = volts === null ? null : volts > most.volts ? most : volts < least.volts ? least : null;
            if (volts === null || passed === null) continue;
            const words = {
              port: portName(station, { unit, port }),
              contact: label,
              assumed: passed.assumed ? ' (assumed)' : '',
            };
            report({
              ...base,
              message: passed === most ? 'contact' : 'below',
              at: [{ unit, port, contact }],
              values: { ...words, volts, limit: passed.volts },
              weight: Math.abs(volts - passed.volts),
              moment: name,
            });
          }
        }
      }
    },
  },
});

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
  readonly unit: string;
  readonly port: string;
  readonly contact: string;
  readonly label: string;
  readonly most: Limit;
  readonly least: Limit;
}

/** What each signal contact stands: its own figures, or its pull-up and a volt. RF contacts have a rule of their own. */
function limitsOf(station: Station): ContactLimits[] {
  return station.units.flatMap((unit) => {
    const kind = kindOf(station, unit);
    return kind.ports.flatMap((port) => {
      if (port.class === 'dc' || port.class === 'rf' || port.class === 'earth') return [];
      return (station.connectors[port.connector]?.contacts ?? []).flatMap((contact) => {
        const own = port.limits?.[contact.id];
        const pull = pullUpOn(kind, `${port.id}.${contact.id}`);
        const most = limit(own?.maxV, pull === null ? Number.POSITIVE_INFINITY : Math.max(0, pull) + 1);
        const least = limit(own?.minV, pull === null ? Number.NEGATIVE_INFINITY : Math.min(0, pull) - 1);
        const isLimited = Number.isFinite(most.volts) || Number.isFinite(least.volts);
        const names = { unit: unit.id, port: port.id, contact: contact.id, label: contact.name };
        return isLimited ? [{ ...names, most, least }] : [];
      });
    });
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
