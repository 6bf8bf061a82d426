import type { Circuit, Placed } from '../../circuit/circuit.ts';
import { findNets } from '../../circuit/find-nets.ts';
import { type Read, splitRead, type WholeList, wholeLists } from '../../circuit/reads.ts';
import { audioNetsOf } from '../../dc/audio-nets.ts';
import type { Trial } from '../../keydown/key-down.ts';
import type { Cable, Station } from '../../station/schema/schema.ts';
import { type Instant, instantsOf } from '../instants.ts';
import {
  changedFragments,
  type FragmentChange,
  joinsTheSame,
  listsTouched,
  nodesTouched,
  portsTouched,
} from './fragment-changes.ts';
import { NumbersBetween } from './numbers-between.ts';
import {
  changedCables,
  changedUnits,
  endsOfCables,
  isSameGround,
  neighboursOf,
  numberingOf,
} from './station-changes.ts';

/** A station and a trial of one of its hook-ups. */
export interface Tried {
  readonly station: Station;
  readonly trial: Trial;
}

type Pair = readonly [Instant, Instant];

/**
 * What in a hook-up is not as it was before an edit: units and cables by their ids, and by the numbers of the earlier trial
 * whatever was read there.
 */
export class Changes {
  private readonly numbers: NumbersBetween;
  private readonly cables: ReadonlySet<string>;
  /** Units that are other than they were, have other cables, or do something else. */
  private readonly units: Set<string>;
  private readonly neighbours: ReadonlySet<string>;
  private readonly blocks: Uint8Array;
  private readonly regions: Uint8Array;
  private readonly nets = new Set<number>();
  private readonly pieces = new Set<number>();
  private readonly lists = new Set<WholeList>();

  private constructor(
    private readonly before: Tried,
    private readonly now: Tried,
    instants: readonly Pair[],
  ) {
    this.numbers = new NumbersBetween(before.trial, now.trial);
    const fragments = changedFragments(before.trial.circuit, now.trial.circuit);
    const others = changedUnits(before.station, now.station);
    // What a unit is and does can show wherever its contacts lead; where it stands, and what is plugged in, beside it only.
    const deep = new Map(fragments.map((change) => [change.name, change]));
    const isMoved = (id: string) => deep.has(`unit ${id}`);
    for (const id of [...others.inside, ...unitsWithOtherStates(before.trial, now.trial, instants)])
      if (!isMoved(id)) deep.set(`unit ${id}`, { name: `unit ${id}`, ...this.placed(id) });
    this.cables = changedCables(before.station, now.station);
    const deepUnits = [...deep.keys()].flatMap((name) => (name.startsWith('unit ') ? [name.slice(5)] : []));
    this.units = new Set([
      ...deepUnits,
      ...others.outside,
      ...endsOfCables(this.cables, before.station, now.station),
      ...unitsWithOtherPlugs(before.trial, now.trial),
    ]);
    this.neighbours = neighboursOf(new Set(deepUnits), now.station);
    this.blocks = this.changedBlocks(instants);
    this.regions = this.changedRegions(instants);
    this.spread([...deep.values()]);
  }

  /** Null where so much is other than it was that nothing can be kept. */
  static between(before: Tried, now: Tried): Changes | null {
    if (before.trial.opened.length > 0 || now.trial.opened.length > 0) return null;
    if (!isSameGround(before.station, now.station)) return null;
    const [then, here] = [instantsOf(before.trial), instantsOf(now.trial)];
    if (then.length !== here.length) return null;
    const pairs = then.map((instant, i): Pair => [instant, here[i] as Instant]);
    const areAlike = pairs.every(([a, b]) => a.name === b.name && isSamePress(before.trial, a, now.trial, b));
    return areAlike ? new Changes(before, now, pairs) : null;
  }

  /** Whether a unit, its cables, or a unit at their other ends is other than it was. */
  unit(id: string): boolean {
    return this.units.has(id) || this.neighbours.has(id);
  }

  /** Whether a cable or a unit at its ends is. */
  cable({ id, a, b }: Cable): boolean {
    return this.cables.has(id) || this.unit(a.unit) || this.unit(b.unit);
  }

  /** Whether what goes on in a region (its number now), or a unit in it, is. */
  region(number: number): boolean {
    const then = this.numbers.regions.indexOf(number);
    return then < 0 || this.regions[then] !== 0;
  }

  /** Whether a press (its number) is. */
  press(number: number): boolean {
    return this.before.trial.keyDowns[number]?.events !== this.now.trial.keyDowns[number]?.events;
  }

  /** Whether anything that was read then is. */
  any(reads: readonly Read[]): boolean {
    for (const read of reads) {
      const { kind, number } = splitRead(read);
      if (kind === 'block' ? this.blocks[number] !== 0 : this.isOther(kind, number)) return true;
    }
    return false;
  }

  /** What was read then, by the numbers of now. */
  readsNow(reads: readonly Read[]): readonly Read[] {
    return this.numbers.readsNow(reads);
  }

  private isOther(kind: 'net' | 'piece' | 'region' | 'list', number: number): boolean {
    if (kind === 'net') return this.nets.has(number);
    if (kind === 'piece') return this.pieces.has(number);
    if (kind === 'region') return this.regions[number] !== 0;
    return this.lists.has(wholeLists[number] as WholeList);
  }

  private placed(unit: string): Omit<FragmentChange, 'name'> {
    const of = ({ trial }: Tried) => trial.circuit.placed.get(`unit ${unit}`);
    return { was: of(this.before), is: of(this.now) };
  }

  private changedBlocks(instants: readonly Pair[]): Uint8Array {
    const { blocks } = this.numbers;
    return otherStates(
      blocks,
      this.now.trial.solvers.dc.blocks,
      (block) => this.before.trial.receive.dc.base.at(block),
      (block) => this.now.trial.receive.dc.base.at(block),
      instants.map(([then, now]) => [then.reach.dc.changed, now.reach.dc.changed]),
    );
  }

  private changedRegions(instants: readonly Pair[]): Uint8Array {
    const { regions } = this.numbers;
    return otherStates<object>(
      regions,
      this.now.trial.solvers.rf.count,
      (region) => this.before.trial.receive.rf.base[region],
      (region) => this.now.trial.receive.rf.base[region],
      instants.map(([then, now]) => [then.reach.rf.changed, now.reach.rf.changed]),
    );
  }

  /** Marks all that changed fragments touch. */
  private spread(changes: readonly FragmentChange[]) {
    const { circuit, solvers } = this.before.trial;
    const nets = findNets(circuit);
    for (const change of changes) {
      for (const node of nodesTouched(circuit, change)) {
        this.nets.add(nets[node] as number);
        this.pieces.add(solvers.dc.pieceOf(node));
      }
      for (const port of portsTouched(circuit, change)) this.regions[solvers.rf.numberAt(port)] = 1;
      // Where a fragment's parts join something else their numbers say nothing: a lone part looks like any other.
      const { was, is } = change;
      if (was && !(is && joinsTheSame(was.fragment, is.fragment)))
        for (let i = 0; i < was.parts.length; i++) this.blocks[solvers.dc.blockOf(was.first.part + i)] = 1;
      for (const placed of [was, is]) if (placed) for (const list of listsTouched(placed)) this.lists.add(list);
    }
    for (const unit of this.units) {
      const then = circuit.placed.get(`unit ${unit}`);
      for (let i = 0; then && i < then.fragment.rfPorts.length; i++)
        this.regions[solvers.rf.numberAt(then.first.rfPort + i)] = 1;
    }
    if (this.touchesAudio(changes)) this.lists.add('audio');
    if (numberingOf(this.before.station) !== numberingOf(this.now.station)) this.lists.add('numbers');
  }

  private touchesAudio(changes: readonly FragmentChange[]): boolean {
    const [then, now] = [audioNodes(this.before.trial.circuit), audioNodes(this.now.trial.circuit)];
    if (then.size === 0 && now.size === 0) return false;
    return changes.some((change) => isAmong(change.was, then) || isAmong(change.is, now));
  }
}

/** Whether two presses are of the same controls, of units that are as they were. */
function isSamePress(then: Trial, { keyDown: a }: Instant, now: Trial, { keyDown: b }: Instant): boolean {
  if (a === null || b === null) return a === b;
  return (
    a.controls.length === b.controls.length &&
    a.controls.every((control, i) => {
      const [one, other] = [then.circuit.actors[control], now.circuit.actors[b.controls[i] ?? -1]];
      const fragment = (trial: Trial, unit = '') => trial.circuit.placed.get(`unit ${unit}`)?.fragment;
      return one?.key === other?.key && fragment(then, one?.unit) === fragment(now, other?.unit);
    })
  );
}

/** A press that is as it was changes the same actors; what it leaves alone is as in receive. */
const isSamePressAgain = ([{ keyDown: a }, { keyDown: b }]: Pair): boolean => a !== null && a.events === b?.events;

function unitsWithOtherStates(then: Trial, now: Trial, all: readonly Pair[]): string[] {
  const units: string[] = [];
  if (then === now) return units;
  const instants = all.filter((pair) => !isSamePressAgain(pair));
  for (const { fragment, first } of then.circuit.placed.values()) {
    const there = now.circuit.placed.get(fragment.name);
    const count = fragment.actors.length;
    if (!there || count === 0 || there.fragment.actors.length !== count) continue;
    const isOther = instants.some(([a, b]) => {
      for (let i = 0; i < count; i++) {
        const [from, to] = [first.actor + i, there.first.actor + i];
        if (a.reach.on[from] !== b.reach.on[to] || a.reach.felt[from] !== b.reach.felt[to]) return true;
      }
      return false;
    });
    if (isOther) units.push(fragment.name.slice('unit '.length));
  }
  return units;
}

/** Units of which a load's plug reads something else. */
function unitsWithOtherPlugs(then: Trial, now: Trial): string[] {
  const [before, after] = [plugsByUnit(then), plugsByUnit(now)];
  return [...new Set([...before.keys(), ...after.keys()])].filter((unit) => before.get(unit) !== after.get(unit));
}

function plugsByUnit({ circuit, plugVolts }: Trial): Map<string, string> {
  const plugs = new Map<string, string>();
  for (const [part, { cable, volts }] of plugVolts) {
    const origin = circuit.parts[part]?.origin;
    if (origin?.type === 'element') plugs.set(origin.unit, `${plugs.get(origin.unit) ?? ''} ${cable} ${volts}`);
  }
  return plugs;
}

/** Which blocks or regions (by their number then) are in another state in receive or at any instant. */
function otherStates<S extends object>(
  numbersNow: Int32Array,
  countNow: number,
  then: (number: number) => S | undefined,
  now: (number: number) => S | undefined,
  changes: readonly (readonly [ReadonlyMap<number, S>, ReadonlyMap<number, S>])[],
): Uint8Array {
  const other = new Uint8Array(numbersNow.length);
  const numbersThen = new Int32Array(countNow).fill(-1);
  for (let i = 0; i < other.length; i++) {
    const there = numbersNow[i] as number;
    if (there >= 0) numbersThen[there] = i;
    if (there < 0 || then(i) !== now(there)) other[i] = 1;
  }
  for (const [before, after] of changes) {
    for (const [i, state] of before) if (after.get(numbersNow[i] as number) !== state) other[i] = 1;
    for (const [there, state] of after) {
      const i = numbersThen[there] as number;
      if (i >= 0 && before.get(i) !== state) other[i] = 1;
    }
  }
  return other;
}

const audioNodes = (circuit: Circuit): ReadonlySet<number> =>
  new Set(audioNetsOf(circuit).flatMap(({ nodes }) => nodes));

function isAmong(placed: Placed | undefined, nodes: ReadonlySet<number>): boolean {
  if (!placed) return false;
  const { fragment, first, nodesElsewhere } = placed;
  return nodesElsewhere.some((node) => nodes.has(node)) || fragment.nodes.some((_, i) => nodes.has(first.node + i));
}
