import type { Station } from '../../schema/schema.ts';
import type { UnitElement, UnitKind } from '../../schema/unit-kind.ts';
import type { Problem } from '../problem.ts';

interface SizeLimit {
  readonly most: number;
  /** What there are too many of. */
  readonly what: string;
  readonly count: (kind: UnitKind) => number;
}

const elementsOf =
  (...types: UnitElement['type'][]) =>
  (kind: UnitKind): number =>
    kind.elements.filter(({ type }) => types.includes(type)).length;

/**
 * What a station may have in all its units together, so that a survey takes seconds: several times what halls and
 * exhibitions have. Every supply is looked at with every other one, and every transmitter with every other one.
 */
const sizeLimits: readonly SizeLimit[] = [
  { most: 1000, what: 'supplies, batteries and converters', count: elementsOf('supply', 'battery', 'converter') },
  { most: 1000, what: 'transmitters', count: elementsOf('rfSource') },
  { most: 2000, what: 'audio outputs', count: elementsOf('audioSource') },
  { most: 5000, what: 'actors', count: (kind) => kind.actors?.length ?? 0 },
  { most: 60_000, what: 'ports', count: (kind) => kind.ports.length },
  { most: 60_000, what: 'elements', count: (kind) => kind.elements.length },
];

/** Too much of something for a survey, with how much there is and what is taken. A unit whose kind is not there counts nothing. */
export function checkSize({ units, kinds }: Pick<Station, 'units' | 'kinds'>): Problem[] {
  return sizeLimits.flatMap(({ most, what, count }) => {
    const byKind = new Map(Object.entries(kinds).map(([id, kind]) => [id, count(kind)]));
    const there = units.reduce((sum, unit) => sum + (byKind.get(unit.kind) ?? 0), 0);
    if (there <= most) return [];
    return [
      { place: 'units', message: `There are ${there} ${what} in all units together; at most ${most} can be surveyed.` },
    ];
  });
}
