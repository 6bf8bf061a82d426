import { kindOf } from '../../station/parts.ts';
import type { Unit } from '../../station/schema.ts';
import type { ElementOf, Port, UnitKind } from '../../station/unit-kind.ts';
import { portOfRef } from '../look.ts';
import { defineRule } from '../rule.ts';

export const oneConnectorManyJobs = defineRule({
  id: 'drawing/one-connector-many-jobs',
  severity: 'note',
  title: 'One connector for voltages that do not go together',
  compares: 'power inputs with the same connector: the volts and the polarity that each stands',
  why: 'The right plug on the wrong unit is the commonest way to lose one, and nothing on a plug says what is on it.',
  advice:
    'Give each voltage, and each polarity, a connector of its own, or put a ring of one colour on plug and jack of each.',
  source: 'the units’ own figures; common practice',
  judgesDrawing: true,
  follows: [],
  messages: {
    many: '{count} swaps of {connector} plugs among {units} would put a wrong voltage or the wrong polarity on a unit.',
  },
  check({ station }, report) {
    const inputs = new Map<string, Input[]>();
    for (const unit of station.units) {
      for (const input of inputsOf(unit, kindOf(station, unit))) {
        const family = station.connectors[input.port.connector]?.family ?? '';
        inputs.set(family, [...(inputs.get(family) ?? []), input]);
      }
    }
    for (const list of inputs.values()) {
      const swaps = list.flatMap((one) =>
        list.filter((two) => two.unit !== one.unit && harms(one, two)).map((two) => [one, two]),
      );
      const units = [...new Map(swaps.flat().map((i) => [i.unit.id, i.unit])).values()];
      const [first, ...others] = units;
      const [input] = list;
      if (!first || !input) continue;
      report({
        message: 'many',
        severity: 'note',
        at: [{ unit: first.id }, ...others.map(({ id }) => ({ unit: id }))],
        values: {
          count: String(swaps.length),
          connector: station.connectors[input.port.connector]?.name ?? '',
          units: units.map((u) => u.name).join(', '),
        },
      });
    }
  },
});

interface Input {
  readonly unit: Unit;
  readonly port: Port;
  readonly load: ElementOf<'load'>;
}

const inputsOf = (unit: Unit, kind: UnitKind): Input[] =>
  kind.elements.flatMap((load) => {
    if (load.type !== 'load') return [];
    const port = kind.ports.find((p) => p.id === portOfRef(load.plus));
    return port?.class === 'dc' && portOfRef(load.minus) === port.id ? [{ unit, port, load }] : [];
  });

/** Whether the plug made for one input hurts the other one. */
function harms(one: Input, two: Input): boolean {
  const contact = ({ load }: Input) => load.plus.split('.')[1];
  if (contact(one) !== contact(two)) return !two.load.reverseProtected;
  return one.load.minV > two.load.absMaxV;
}
