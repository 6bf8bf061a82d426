import { kindOf, portOfRef } from '../../station/parts.ts';
import type { Unit } from '../../station/schema/schema.ts';
import type { ElementOf, Port, UnitKind } from '../../station/schema/unit-kind.ts';
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
    many: '{swaps} of {connector} plugs among {units} would put a wrong voltage or the wrong polarity on a unit.',
  },
  looksAt: {
    station({ station }, report) {
      const inputs = new Map<string, Input[]>();
      for (const unit of station.units) {
        for (const input of inputsOf(unit, kindOf(station, unit))) {
          const family = station.connectors[input.port.connector]?.family ?? '';
          inputs.set(family, [...(inputs.get(family) ?? []), input]);
        }
      }
      for (const list of inputs.values()) {
        const alike = groupsOf(list);
        const pairs = alike.flatMap((one) =>
          alike.filter((two) => harms(one[0], two[0])).map((two) => [one, two] as const),
        );
        const count = pairs.reduce((sum, [one, two]) => sum + one.length * two.length, 0);
        const hurt = new Set(pairs.flat().flat());
        const units = list
          .filter((i) => hurt.has(i))
          .map((i) => i.unit)
          .sort((a, b) => a.id.localeCompare(b.id));
        const [first, ...others] = [...new Set(units)];
        const [input] = list;
        if (!first || !input) continue;
        report({
          message: 'many',
          severity: 'note',
          at: [{ unit: first.id }, ...others.map(({ id }) => ({ unit: id }))],
          values: {
            swaps: count === 1 ? 'One swap' : `${count} swaps`,
            connector: station.connectors[input.port.connector]?.name ?? '',
            units: [first, ...others].map((u) => u.name).join(', '),
          },
        });
      }
    },
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

/** Inputs of the same contact and the same limits together: a station has many units and few kinds. */
function groupsOf(list: readonly Input[]): (readonly [Input, ...Input[]])[] {
  const groups = new Map<string, [Input, ...Input[]]>();
  for (const input of list) {
    const { plus, minV, absMaxV, reverseProtected } = input.load;
    const key = [plus.split('.')[1], minV, absMaxV, reverseProtected].join(' ');
    const group = groups.get(key);
    if (group) group.push(input);
    else groups.set(key, [input]);
  }
  return [...groups.values()];
}

/** Whether the plug made for one input hurts the other one. */
function harms(one: Input, two: Input): boolean {
  const contact = ({ load }: Input) => load.plus.split('.')[1];
  if (contact(one) !== contact(two)) return !two.load.reverseProtected;
  return one.load.minV > two.load.absMaxV;
}
