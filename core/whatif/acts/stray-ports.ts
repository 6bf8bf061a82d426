import { findUnit, kindOf } from '../../station/parts.ts';
import { remember } from '../../station/remember.ts';
import type { PortRef, Station } from '../../station/schema/schema.ts';
import type { PortClass, UnitKind } from '../../station/schema/unit-kind.ts';

type Trait = 'sends' | 'hears' | 'radiates' | 'feeds' | 'stores' | 'draws';

/** What a port of an RF or a DC box leads to, by the words that are written at it (common practice). */
const wanted: Readonly<Partial<Record<PortClass, Readonly<Record<string, readonly Trait[]>>>>> = {
  rf: {
    transmitter: ['sends'],
    input: ['sends'],
    receiver: ['hears'],
    radio: ['sends', 'hears'],
    station: ['sends', 'hears'],
    antenna: ['radiates'],
    output: ['radiates'],
  },
  dc: {
    battery: ['stores'],
    'mains supply': ['feeds'],
    source: ['feeds', 'stores'],
    in: ['feeds', 'stores'],
    out: ['draws'],
    load: ['draws'],
    station: ['draws'],
  },
};

/** What is further off than this, in boxes, is as good as not there. */
const mostBoxes = 8;

/**
 * How far the ports of a drawing's RF and DC boxes are from what they are called after, in boxes on the way: a tuner's
 * `antenna` from the nearest antenna or load. All hook-ups together.
 */
export const strayPorts = remember((station: Station): number => {
  const leads = leadsOf(station);
  return station.units.reduce((sum, unit) => {
    const kind = kindOf(station, unit);
    return kind.ports.reduce((own, { id, label, class: carried }) => {
      const traits = wanted[carried]?.[label.toLowerCase()];
      if (kind.ports.every((other) => other.id === id || other.class !== carried)) return own;
      const from = { unit: unit.id, port: id };
      return traits && leads.has(nameOf(from)) ? own + boxesTo(station, leads, { from, carried, traits }) : own;
    }, sum);
  }, 0);
});

const nameOf = ({ unit, port }: PortRef): string => `${unit}.${port}`;

/** For each RF port with a cable, the ports at the other ends. */
function leadsOf(station: Station): ReadonlyMap<string, readonly PortRef[]> {
  const leads = new Map<string, PortRef[]>();
  for (const { a, b } of station.cables) {
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const) {
      const known = leads.get(nameOf(from));
      if (known) known.push(to);
      else leads.set(nameOf(from), [to]);
    }
  }
  return leads;
}

/** How many boxes out of a port the nearest thing with a trait is, without coming back into its own box. */
function boxesTo(
  station: Station,
  leads: ReadonlyMap<string, readonly PortRef[]>,
  { from, carried, traits }: { from: PortRef; carried: PortClass; traits: readonly Trait[] },
): number {
  const seen = new Set([from.unit]);
  let open = leads.get(nameOf(from)) ?? [];
  for (let boxes = 0; boxes < mostBoxes && open.length > 0; boxes++) {
    const next: PortRef[] = [];
    for (const ref of open) {
      const unit = findUnit(station, ref.unit);
      if (!unit || seen.has(ref.unit)) continue;
      seen.add(ref.unit);
      const kind = kindOf(station, unit);
      if (traitsOf(kind).some((trait) => traits.includes(trait))) return boxes;
      for (const port of kind.ports) {
        if (port.class === carried && port.id !== ref.port)
          next.push(...(leads.get(nameOf({ unit: unit.id, port: port.id })) ?? []));
      }
    }
    open = next;
  }
  return mostBoxes;
}

const traitsOf = remember((kind: UnitKind): readonly Trait[] =>
  kind.elements.flatMap((element): Trait[] => {
    if (element.type === 'rfSource') return ['sends'];
    if (element.type === 'supply') return ['feeds'];
    if (element.type === 'battery') return ['stores'];
    if (element.type === 'load') return ['draws'];
    if (element.type !== 'rfLoad') return [];
    return [element.role === 'receiver' ? 'hears' : 'radiates'];
  }),
);
