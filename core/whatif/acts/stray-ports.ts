import { findUnit, kindOf } from '../../station/parts.ts';
import { remember } from '../../station/remember.ts';
import type { PortRef, Station } from '../../station/schema/schema.ts';
import type { UnitKind } from '../../station/schema/unit-kind.ts';

type Trait = 'sends' | 'hears' | 'radiates';

/** What a port of an RF box leads to, by the words that are written at it (common practice). */
const wanted: Readonly<Record<string, readonly Trait[]>> = {
  transmitter: ['sends'],
  input: ['sends'],
  receiver: ['hears'],
  radio: ['sends', 'hears'],
  station: ['sends', 'hears'],
  antenna: ['radiates'],
  output: ['radiates'],
};

/**
 * How many ports of a drawing's RF boxes do not lead to what they are called after: a tuner's `antenna` from which
 * neither an antenna nor a load is come to. All hook-ups together.
 */
export const strayPorts = remember((station: Station): number => {
  const leads = leadsOf(station);
  return station.units.reduce((sum, unit) => {
    const kind = kindOf(station, unit);
    const rf = kind.ports.filter((port) => port.class === 'rf');
    if (rf.length < 2) return sum;
    const strays = rf.filter(({ id, label }) => {
      const traits = wanted[label.toLowerCase()];
      const from = { unit: unit.id, port: id };
      if (!traits || !leads.has(nameOf(from))) return false;
      const met = metFrom(station, leads, from);
      return !traits.some((trait) => met.has(trait));
    });
    return sum + strays.length;
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

/** What there is on the way out of a port, through whatever other boxes, without coming back into its own. */
function metFrom(station: Station, leads: ReadonlyMap<string, readonly PortRef[]>, from: PortRef): Set<Trait> {
  const met = new Set<Trait>();
  const seen = new Set([from.unit]);
  const open = [...(leads.get(nameOf(from)) ?? [])];
  for (let ref = open.pop(); ref; ref = open.pop()) {
    if (seen.has(ref.unit)) continue;
    seen.add(ref.unit);
    const unit = findUnit(station, ref.unit);
    if (!unit) continue;
    const kind = kindOf(station, unit);
    for (const trait of traitsOf(kind)) met.add(trait);
    for (const port of kind.ports) {
      if (port.class === 'rf' && port.id !== ref.port)
        open.push(...(leads.get(nameOf({ unit: unit.id, port: port.id })) ?? []));
    }
  }
  return met;
}

const traitsOf = remember((kind: UnitKind): readonly Trait[] =>
  kind.elements.flatMap((element): Trait[] => {
    if (element.type === 'rfSource') return ['sends'];
    if (element.type !== 'rfLoad') return [];
    return [element.role === 'receiver' ? 'hears' : 'radiates'];
  }),
);
