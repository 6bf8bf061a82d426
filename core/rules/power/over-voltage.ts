import { voltsBetween } from '../../keydown/feel.ts';
import type { Trial } from '../../keydown/key-down.ts';
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
    for (const { hookup, trial } of hookups) {
      for (const { name, reach } of [{ name: 'receive', reach: trial.atFirst }, ...instantsOf(trial)]) {
        for (const { part } of loadsOf(trial.circuit)) {
          const volts =
            (voltsBetween(reach.dc, part.plus, part.minus) ?? 0) + tolerance(trial, reach.dc.island[part.plus]);
          if (volts <= part.spec.absMaxV) continue;
          const [unit, port] = [unitOfPart(part), portOfRef(part.spec.plus)];
          const values = { port: portName(station, { unit, port }), volts, limit: part.spec.absMaxV };
          report({
            message: 'load',
            severity: 'danger',
            at: [{ unit, port }],
            values,
            hookup: hookup.id,
            moment: name,
          });
        }
        for (const { unit, port, contact, label, limit, assumed } of limitsOf(station)) {
          const node = trial.circuit.nodeOf.get(`${unit}.${port}.${contact}`);
          const chassis = trial.circuit.nodeOf.get(`${unit}.chassis`);
          const volts = node === undefined || chassis === undefined ? null : voltsBetween(reach.dc, node, chassis);
          if (volts === null || volts <= limit) continue;
          const values = {
            port: portName(station, { unit, port }),
            contact: label,
            volts,
            limit,
            assumed: assumed ? ' (assumed)' : '',
          };
          report({
            message: 'contact',
            severity: 'danger',
            at: [{ unit, port, contact }],
            values,
            hookup: hookup.id,
            moment: name,
          });
        }
      }
    }
  },
});

/** How much higher than its nominal voltage a regulating supply of the island may stand. */
function tolerance(trial: Trial, island: number | undefined): number {
  const supply = suppliesOf(trial.circuit).find(({ part }) => trial.receive.dc.island[part.plus] === island);
  return supply ? Math.max(0, (supply.part.spec.maxVolts ?? supply.part.spec.volts) - supply.part.spec.volts) : 0;
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
