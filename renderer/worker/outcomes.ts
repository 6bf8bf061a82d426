import type { Station } from '../../core/index.ts';
import type { ComputingFailure, Good } from '../store/computed.ts';

/** What came of computing a document. */
export type Outcome<T> = Good<T> | { readonly of: Station; readonly failure: ComputingFailure };

/** So many steps back and forth cost no new computation; a report of a large station is some megabytes. */
const most = 8;

const isGood = <T>(outcome: Outcome<T>): outcome is Good<T> => 'value' in outcome;

/** The newest outcomes, for undo and redo to come back to. The last good one stays, however many fail after it. */
export class Outcomes<T> {
  private all: readonly Outcome<T>[] = [];

  /** `isSame` says whether what came of one document holds for another. */
  constructor(private readonly isSame: (a: Station, b: Station) => boolean) {}

  add(outcome: Outcome<T>) {
    const others = this.all.filter((o) => !this.isSame(o.of, outcome.of));
    const newest = [outcome, ...others];
    const good = newest.find(isGood);
    this.all = newest.filter((o, i) => i < most || o === good);
  }

  of(station: Station): Outcome<T> | undefined {
    return this.all.find((o) => this.isSame(o.of, station));
  }

  /** The newest value there is, of whatever document. */
  last(): Good<T> | undefined {
    return this.all.find(isGood);
  }

  forget() {
    this.all = [];
  }
}
