import type { Read } from '../circuit/reads.ts';
import { Changes } from '../trial/memory/changes.ts';
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

/** What was said, and what was read for it. */
interface Answer {
  readonly said: readonly Said[];
  readonly reads: readonly Read[];
}

/** What all rules said of the things at one place; look by look too where it was looked at again, none where not. */
interface KeptHome extends Answer {
  readonly answers: readonly Answer[];
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
      const known = changes && !home.isOther(changes) ? earlier?.homes.get(home.name) : undefined;
      const still = changes && known ? { changes, known } : null;
      homes.set(home.name, lookAt(home, looks, around, still));
    }
    return { around, homes };
  });
  const said = memory.flatMap(({ homes }) => [...homes.values()].flatMap((home) => home.said));
  rules.forEach((rule, rank) => {
    rule.looksAt.station?.(facts, (report) => said.push({ rule, rank, order: rank * places, report }));
  });
  return { said: said.sort((a, b) => a.order - b.order), memory };
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

type Looks = ReadonlyMap<ThingName, readonly Look[]>;

/** What is known of a place that is as it was. */
interface Still {
  readonly known: KeptHome;
  readonly changes: Changes;
}

function lookAt(home: Home, looks: Looks, around: Around, still: Still | null): KeptHome {
  if (!still) return lookOnce(home, looks, around);
  if (!still.changes.any(still.known.reads)) return inNumbersOfNow(still);
  let things: ReturnType<Home['things']> | null = null;
  const answers: Answer[] = [];
  for (const name of home.holds) {
    for (const look of looks.get(name) ?? []) {
      const known = still.known.answers[answers.length];
      if (known && !still.changes.any(known.reads)) answers.push(answerNow(known, still.changes));
      else {
        things ??= home.things();
        answers.push(answerTo([look], things[name] ?? [], around));
      }
    }
  }
  return wholeOf(answers);
}

/** All looks in one go: whoever never comes back needs no more. */
function lookOnce(home: Home, looks: Looks, around: Around): KeptHome {
  const things = home.things();
  const said: Said[] = [];
  const reads = around.trial.circuit.reads.during(() => {
    for (const name of home.holds) lookThrough(looks.get(name) ?? [], things[name] ?? [], around, said);
  });
  return { answers: [], said, reads };
}

/** Most looks find nothing and ask for nothing. */
const nothing: Answer = { said: [], reads: [] };

function answerTo(looks: readonly Look[], things: readonly unknown[], around: Around): Answer {
  if (things.length === 0) return nothing;
  const said: Said[] = [];
  const reads = around.trial.circuit.reads.during(() => lookThrough(looks, things, around, said));
  return said.length === 0 && reads.length === 0 ? nothing : { said, reads };
}

function lookThrough(looks: readonly Look[], things: readonly unknown[], around: Around, said: Said[]) {
  if (things.length === 0) return;
  for (const { look, rule, rank, order } of looks) {
    const tell = (report: Report) => said.push({ rule, rank, order, report: { hookup: around.hookup.id, ...report } });
    for (const thing of things) look(thing, around, tell);
  }
}

function wholeOf(answers: readonly Answer[]): KeptHome {
  const said: Said[] = [];
  const reads: Read[] = [];
  for (const answer of answers) {
    if (answer === nothing) continue;
    for (const one of answer.said) said.push(one);
    for (const read of answer.reads) reads.push(read);
  }
  return { answers, said, reads };
}

function inNumbersOfNow({ known, changes }: Still): KeptHome {
  const reads = changes.readsNow(known.reads);
  if (reads === known.reads) return known;
  return { ...known, reads, answers: known.answers.map((answer) => answerNow(answer, changes)) };
}

function answerNow(answer: Answer, changes: Changes): Answer {
  const reads = changes.readsNow(answer.reads);
  return reads === answer.reads ? answer : { ...answer, reads };
}
