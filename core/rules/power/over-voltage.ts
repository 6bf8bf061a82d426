import { voltsBetween } from '../../keydown/feel.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import { kindOf, portName } from '../../station/parts.ts';
import type { Station } from '../../station/schema.ts';
import type { UnitKind } from '../../station/unit-kind.ts';
import { instantsOf, loadsOf, portOfRef, suppliesOf, unitOfPart } from '../look.ts';
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
  },
  check({ station, hookups }, report) {
    const limits = limitsOf(station);
    for (const { hookup, trial } of hookups) {
      for (const { name, reach } of [{ name: 'receive', reach: trial.atFirst }, ...instantsOf(trial)]) {
        const base = { severity: 'danger', hookup: hookup.id, moment: name } as const;
        const tolerance = toleranceByIsland(trial, reach);
        for (const { part } of loadsOf(trial.circuit)) {
          const more = tolerance.get(reach.dc.island[part.plus] as number) ?? 0;
          const volts = (voltsBetween(reach.dc, part.plus, part.minus) ?? 0) + more;
          if (volts <= part.spec.absMaxV) continue;
          const ref = { unit: unitOfPart(part), port: portOfRef(part.spec.plus) };
          const values = { port: portName(station, ref), volts, limit: part.spec.absMaxV };
          report({ ...base, message: 'load', at: [ref], values });
        }
        for (const { unit, port, contact, label, limit, assumed } of limits) {
          const node = trial.circuit.nodeOf.get(`${unit}.${port}.${contact}`);
          const chassis = trial.circuit.nodeOf.get(`${unit}.chassis`);
          const volts = node === undefined || chassis === undefined ? null : voltsBetween(reach.dc, node, chassis);
          if (volts === null || volts <= limit) continue;
          const words = {
            port: portName(station, { unit, port }),
            contact: label,
            assumed: assumed ? ' (assumed)' : '',
          };
          report({ ...base, message: 'contact', at: [{ unit, port, contact }], values: { ...words, volts, limit } });
        }
      }
    }
  },
});

/** How much higher than its nominal voltage a regulating supply may stand, by the island that it feeds. */
function toleranceByIsland(trial: Trial, reach: Reach): Map<number, number> {
  return new Map(
    suppliesOf(trial.circuit).map(({ part }) => [
      reach.dc.island[part.plus] as number,
      Math.max(0, (part.spec.maxVolts ?? part.spec.volts) - part.spec.volts),
    ]),
  );
}

interface ContactLimit {
  unit: string;
  port: string;
  contact: string;
  label: string;
  limit: number;
  assumed: boolean;
}

/** The most that each signal contact stands: its own figure, or its pull-up and a volt. RF contacts have a rule of their own. */
function limitsOf(station: Station): ContactLimit[] {
  return station.units.flatMap((unit) => {
    const kind = kindOf(station, unit);
    return kind.ports.flatMap((port) => {
      if (port.class === 'dc' || port.class === 'rf' || port.class === 'earth') return [];
      return (station.connectors[port.connector]?.contacts ?? []).flatMap((contact) => {
        const own = port.limits?.[contact.id]?.maxV;
        const limit = own ?? assumedLimit(kind, `${port.id}.${contact.id}`);
        return limit === null
          ? []
          : [
              {
                unit: unit.id,
                port: port.id,
                contact: contact.id,
                label: contact.name,
                limit,
                assumed: own === undefined,
              },
            ];
      });
    });
  });
}

function assumedLimit(kind: UnitKind, ref: string): number | null {
  const pullUp = kind.elements.find((e) => e.type === 'pullUp' && e.contact === ref);
  return pullUp?.type === 'pullUp' ? pullUp.volts + 1 : null;
}
