/** What can be asked of a circuit and of its solutions, each with a number. */
const kinds = ['block', 'net', 'piece', 'region', 'list'] as const;
export type ReadKind = (typeof kinds)[number];

/** Lists that are asked for as a whole; `numbers` are the names and numbers from which a fix takes new ones. */
export const wholeLists = ['loads', 'supplies', 'fuses', 'audio', 'receivers', 'numbers'] as const;
export type WholeList = (typeof wholeLists)[number];

/** Where nothing was asked for; never added to. */
const none: Read[] = [];

/** One thing that was asked for, as a number. */
export type Read = number;

const placeOf: Readonly<Record<ReadKind, number>> = { block: 0, net: 1, piece: 2, region: 3, list: 4 };

export const readOf = (kind: ReadKind, number: number): Read => number * kinds.length + placeOf[kind];

export const splitRead = (read: Read): { kind: ReadKind; number: number } => ({
  kind: kinds[read % kinds.length] as ReadKind,
  number: Math.floor(read / kinds.length),
});

/**
 * Writes down what is asked of a circuit and of its solutions while somebody wants to know, so that an answer can be kept
 * as long as nothing that it came from has changed: `block` (of DC), `net` (contacts that metal or a diode can join),
 * `piece` (contacts that anything joins), `region` (of RF), `list`.
 */
export class Reads {
  private turn = 0;
  private isOn = false;
  private noted: Read[] = none;
  /** By read the turn in which it was noted last. */
  private readonly last: number[] = [];

  /** Everything that is asked for while `look` runs, each once. */
  during(look: () => void): readonly Read[] {
    this.turn += 1;
    this.isOn = true;
    this.noted = none;
    try {
      look();
    } finally {
      this.isOn = false;
    }
    return this.noted;
  }

  get isWanted(): boolean {
    return this.isOn;
  }

  note(kind: ReadKind, number: number) {
    if (!this.isOn) return;
    const read = readOf(kind, number);
    if (this.last[read] === this.turn) return;
    this.last[read] = this.turn;
    if (this.noted === none) this.noted = [];
    this.noted.push(read);
  }

  noteList(list: WholeList) {
    if (this.isOn) this.note('list', wholeLists.indexOf(list));
  }
}
