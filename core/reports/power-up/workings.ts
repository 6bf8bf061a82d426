import type { Trial } from '../../keydown/key-down.ts';
import type { TriedHookup } from '../../rules/rule.ts';
import type { Hookup } from '../../station/schema/schema.ts';

/** How many answers of a sort are kept, as each is large. */
const most = 12;

interface Known {
  readonly owner: unknown;
  readonly answer: unknown;
}

/**
 * What was worked out for one draft: circuits, trials, what is seen in a setup. The same is asked for several times in a
 * row and then seldom again, so of each sort only the last answers are kept, and all of them no longer than the draft.
 */
export class Workings {
  private readonly sorts = new Map<unknown, Known[]>();

  /** The hook-ups as they were surveyed: of what is plugged together at a step, all that is the same is taken from there. */
  constructor(private readonly hookups: readonly TriedHookup[]) {}

  /** The hook-up as it was tried whole. */
  tried({ id }: Hookup): Trial | null {
    return this.hookups.find(({ hookup }) => hookup.id === id)?.trial ?? null;
  }

  /** What `make` gives for an owner, or gave for one that `isSame` says is the same. */
  answer<O, T>(make: (owner: O) => T, isSame: (a: O, b: O) => boolean, owner: O): T {
    const known = this.sorts.get(make) ?? [];
    this.sorts.set(make, known);
    const at = known.findIndex((k) => isSame(k.owner as O, owner));
    const found = known[at] ?? { owner, answer: make(owner) };
    if (at >= 0) known.splice(at, 1);
    // The newest stands last.
    known.push(found);
    if (known.length > most) known.shift();
    return found.answer as T;
  }
}

/** A function that works out each answer once for a draft, and remembers it in the draft's workings. */
export const inWorkings =
  <O extends { readonly workings: Workings }, T>(make: (owner: O) => T, isSame: (a: O, b: O) => boolean) =>
  (owner: O): T =>
    owner.workings.answer(make, isSame, owner);
