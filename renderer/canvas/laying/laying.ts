import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import {
  type Cable,
  type CableEnd,
  type Change,
  cableWords,
  edit,
  judgePair,
  layInHookup,
  moveCableEnd,
  type NewPartner,
  type PortRef,
  portName,
  proposalWords,
  type Station,
} from '../../../core/index.ts';
import { currentHookup } from '../../store/current.ts';
import { change, currentStation } from '../../store/document.ts';
import { placing } from '../../store/place-kind.ts';
import { select, viewStore } from '../../store/view.ts';
import type { Point } from '../routing/geometry.ts';

export type Judgement = ReturnType<typeof judgePair>;

/** A cable that is being laid or one end of which is moved: the port it starts from, and what each other port is to it. */
interface Laying {
  readonly from: PortRef | null;
  /** The cable whose end is moved; its other end is `from`. */
  readonly moved: { readonly cable: string; readonly end: CableEnd } | null;
  readonly judged: ReadonlyMap<string, Judgement>;
  /** The list of partners is open; where it was asked for by dropping on paper, a new unit goes there. */
  readonly asked: { readonly at: Point | null } | null;
  /** Read out to screen readers. */
  readonly said: string;
  /** What the port that is pointed at is to the one taken. */
  readonly why: string;
  /** The port that is pointed at, where a cable could end. */
  readonly over: PortRef | null;
}

const none: ReadonlyMap<string, Judgement> = new Map();
const idle = { from: null, moved: null, judged: none, asked: null, why: '', over: null };

export const layingStore = createStore<Laying>(() => ({ ...idle, said: '' }));

const { getState, setState } = layingStore;

export const useLaying = <T>(pick: (state: Laying) => T): T => useStore(layingStore, pick);

const portKey = (ref: PortRef): string => `${ref.unit}.${ref.port}`;

/** Takes a port as the start of a cable, or as its other end where one is already taken. */
export function pickPort(ref: PortRef) {
  if (getState().from) finishLaying(ref);
  else startLaying(ref);
}

export function startLaying(from: PortRef) {
  const station = currentStation();
  const said = `${portName(station, from)} starts a cable. Choose the port where it ends; Escape gives up.`;
  setState({ ...idle, from, judged: judgeAll(station, from), said });
}

/** Takes one end of a cable off its port, to be plugged in elsewhere. */
export function startMoving(cable: Cable, end: CableEnd) {
  const station = currentStation();
  const from = end === 'a' ? cable.b : cable.a;
  const said = `Choose where this end of ${cable.number} goes; Escape leaves it where it is.`;
  setState({ ...idle, from, moved: { cable: cable.id, end }, judged: judgeAll(station, from), said });
}

/** Opens the list of what the port could be joined to. */
export function askPartners(from: PortRef, at: Point | null = null) {
  if (!getState().from) startLaying(from);
  setState({ asked: { at } });
}

/** Ends the cable at this port, whatever it is: what doesn't fit becomes a finding. */
export function finishLaying(to: PortRef) {
  const { from, moved } = getState();
  if (!from || portKey(from) === portKey(to)) return giveUp();
  const before = currentStation();
  const step = stepTo(to);
  if (step) change(step);
  const ids = moved
    ? [moved.cable]
    : currentStation()
        .cables.slice(before.cables.length)
        .map((c) => c.id);
  select({ cables: ids });
  const cable = currentStation().cables.find((c) => c.id === ids[0]);
  setState({ ...idle, said: cable ? `${cableWords(currentStation(), cable)}.` : '' });
}

/** Sets a unit of the shelf down and ends the cable at it, as one step. */
export function finishAtNewUnit({ kind, port }: NewPartner, position: Point) {
  const { from } = getState();
  if (!from) return;
  const before = currentStation();
  const placed = placing(before, kind.id, position);
  const withUnit = edit(before, placed);
  const unit = withUnit.units.at(-1);
  if (!unit) return;
  const laid = layHere(withUnit, from, { unit: unit.id, port: port.id });
  change({ type: 'all', name: `Add ${unit.name} on a cable`, changes: [placed, laid] });
  select({ units: [unit.id] });
  setState({ ...idle, said: `${unit.name} is on a cable from ${portName(before, from)}.` });
}

/** The change that ends the cable being laid, or moved, at a port; null where there is none. */
export function stepTo(to: PortRef): Change | null {
  const { from, moved } = getState();
  if (!from || portKey(from) === portKey(to)) return null;
  const station = currentStation();
  return moved ? moveCableEnd(station, moved.cable, moved.end, to) : layHere(station, from, to);
}

/** Says what a port that is pointed at is to the one taken. */
export const explainPort = (why: string, over: PortRef) => setState({ why, over });

/** No port is pointed at any more. */
export const leavePort = () => setState({ why: '', over: null });

export function giveUp() {
  const { from, moved } = getState();
  if (from) setState({ ...idle, said: moved ? 'The cable stays where it was.' : 'No cable is laid.' });
}

/** The cable that would be laid from the port taken to this one, in one line; empty where none is being laid. */
export function proposalTo(to: PortRef): string {
  const { from, moved } = getState();
  return from && !moved ? proposalWords(currentStation(), from, to) : '';
}

function judgeAll(station: Station, from: PortRef): ReadonlyMap<string, Judgement> {
  const judged = new Map<string, Judgement>();
  for (const unit of station.units) {
    for (const port of station.kinds[unit.kind]?.ports ?? []) {
      const ref = { unit: unit.id, port: port.id };
      if (portKey(ref) !== portKey(from)) judged.set(portKey(ref), judgePair(station, from, ref));
    }
  }
  return judged;
}

/** The change that lays a cable in the hook-up that is looked at. */
const layHere = (station: Station, from: PortRef, to: PortRef): Change =>
  layInHookup(station, from, to, currentHookup(station, viewStore.getState()));
