import { type Home, homesIn } from './homes.ts';
import type { Around, Facts, Report, Rule } from './rule.ts';
import type { ThingName } from './things.ts';

/** What a rule said of something. */
export interface Said {
  readonly rule: Rule;
  /** The rule's place among all. */
  readonly rank: number;
  readonly report: Report;
}

/** What one rule does with one kind of thing, by its place in the order of all that is said. */
interface Look {
  readonly rule: Rule;
  readonly rank: number;
  readonly order: number;
  readonly look: (thing: unknown, around: Around, tell: (report: Report) => void) => void;
}

interface Kept extends Said {
  readonly order: number;
}

/** All that the rules say of a station: rule by rule, each hook-up by hook-up in the order of the drawing. */
export function runRules(facts: Facts, rules: readonly Rule[]): Said[] {
  const kept: Kept[] = [];
  const looks = looksOf(rules);
  for (const { hookup, trial } of looks.size > 0 ? facts.hookups : []) {
    const around = { station: facts.station, hookup, trial };
    for (const home of homesIn(around)) kept.push(...lookAt(home, looks, around));
  }
  rules.forEach((rule, rank) => {
    rule.looksAt.station?.(facts, (report) => kept.push({ rule, rank, order: rank * places, report }));
  });
  return kept.sort((a, b) => a.order - b.order);
}

/** More than the things that any rule looks at. */
const places = 32;

function looksOf(rules: readonly Rule[]): ReadonlyMap<ThingName, readonly Look[]> {
  const looks = new Map<ThingName, Look[]>();
  rules.forEach((rule, rank) => {
    Object.keys(rule.looksAt).forEach((name, place) => {
      if (name === 'station') return;
      const thing = name as ThingName;
      const look = rule.looksAt[thing] as Look['look'];
      looks.set(thing, [...(looks.get(thing) ?? []), { rule, rank, order: rank * places + place, look }]);
    });
  });
  return looks;
}

function lookAt({ things }: Home, looks: ReadonlyMap<ThingName, readonly Look[]>, around: Around): Kept[] {
  const kept: Kept[] = [];
  for (const name of Object.keys(things) as ThingName[]) {
    const here = things[name] ?? [];
    for (const { rule, rank, order, look } of looks.get(name) ?? []) {
      const tell = (report: Report) =>
        kept.push({ rule, rank, order, report: { hookup: around.hookup.id, ...report } });
      for (const thing of here) look(thing, around, tell);
    }
  }
  return kept;
}
