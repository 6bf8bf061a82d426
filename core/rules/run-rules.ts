import type { Read } from '../circuit/reads.ts';
import { Changes } from '../trial/changes.ts';
import { type Home, homesIn } from './homes.ts';
import type { Around, Facts, Report, Rule } from './rule.ts';
import type { ThingName } from './things.ts';

/** What a rule said of something. */
export interface Said {
  readonly rule: Rule;
  /** The rule's place among all. */
  readonly rank: number;
  /** The place of what it looks at in the order of all that is said. */
  readonly order: number;
  readonly report: Report;
}

/** What all rules said of the things at one place, and what was read for it. */
interface KeptHome {
  readonly said: readonly Said[];
  readonly reads: readonly Read[];
}

/** What was said in each hook-up, place by place. */
export type Memory = readonly { readonly around: Around; readonly homes: ReadonlyMap<string, KeptHome> }[];

/** More than the things that any rule looks at. */
const places = 32;

/**
 * All that the rules say of a station, rule by rule, each hook-up by hook-up in the order of the drawing; and what of that
 * can be kept. What was said `before` an edit of things that are as they were, by what is as it was, is not said anew.
 */
export function runRules(
  facts: Facts,
  rules: readonly Rule[],
  before: Memory = [],
): { said: readonly Said[]; memory: Memory } {
  const looks = looksOf(rules);
  const tried = looks.size > 0 ? facts.hookups : [];
  const memory = tried.map(({ hookup, trial }) => {
    const around = { station: facts.station, hookup, trial };
    const earlier = before.find((kept) => kept.around.hookup.id === hookup.id);
    const changes = earlier ? Changes.between(earlier.around, around) : null;
    const homes = new Map<string, KeptHome>();
    for (const home of homesIn(around)) {
      const kept = changes ? earlier?.homes.get(home.name) : undefined;
      const isSame = kept && changes && !home.isOther(changes) && !changes.any(kept.reads);
      homes.set(home.name, isSame ? stillSaid(kept, changes) : lookAt(home, looks, around));
    }
    return { around, homes };
  });
  const said = memory.flatMap(({ homes }) => [...homes.values()].flatMap((home) => home.said));
  rules.forEach((rule, rank) => {
    rule.looksAt.station?.(facts, (report) => said.push({ rule, rank, order: rank * places, report }));
  });
  return { said: said.sort((a, b) => a.order - b.order), memory };
}

function stillSaid(kept: KeptHome, changes: Changes): KeptHome {
  const reads = changes.readsNow(kept.reads);
  return reads === kept.reads ? kept : { ...kept, reads };
}

/** What one rule does with one kind of thing. */
interface Look extends Omit<Said, 'report'> {
  readonly look: (thing: unknown, around: Around, tell: (report: Report) => void) => void;
}

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

function lookAt(home: Home, looks: ReadonlyMap<ThingName, readonly Look[]>, around: Around): KeptHome {
  const said: Said[] = [];
  const reads = around.trial.circuit.reads.during(() => {
    const things = home.things();
    for (const name of Object.keys(things) as ThingName[]) {
      const here = things[name] ?? [];
      for (const { look, ...by } of here.length > 0 ? (looks.get(name) ?? []) : []) {
        const tell = (report: Report) => said.push({ ...by, report: { hookup: around.hookup.id, ...report } });
        for (const thing of here) look(thing, around, tell);
      }
    }
  });
  return { said, reads };
}
