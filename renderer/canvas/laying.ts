import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { judgePair, layCable, type PortRef, portName, type Station } from '../../core/index.ts';
import { currentHookup } from '../store/current.ts';
import { change, currentStation } from '../store/document.ts';
import { select, viewStore } from '../store/view.ts';

export type Judgement = ReturnType<typeof judgePair>;

/** A cable that is being laid: the port it starts from, and what each other port is to it. */
interface Laying {
  readonly from: PortRef | null;
  readonly judged: ReadonlyMap<string, Judgement>;
  /** Read out to screen readers. */
  readonly said: string;
  /** What the port that is pointed at is to the one taken. */
  readonly why: string;
}

const none: ReadonlyMap<string, Judgement> = new Map();

const layingStore = createStore<Laying>(() => ({ from: null, judged: none, said: '', why: '' }));

export const useLaying = <T>(pick: (state: Laying) => T): T => useStore(layingStore, pick);

const portKey = (ref: PortRef): string => `${ref.unit}.${ref.port}`;

/** Takes a port as the start of a cable, or as its other end where one is already taken. */
export function pickPort(ref: PortRef) {
  const { from } = layingStore.getState();
  if (from) finishLaying(ref);
  else startLaying(ref);
}

export function startLaying(from: PortRef) {
  const station = currentStation();
  const said = `${portName(station, from)} starts a cable. Choose the port where it ends; Escape gives up.`;
  layingStore.setState({ from, judged: judgeAll(station, from), said, why: '' });
}

/** Lays the cable to this port, whatever it is: what doesn't fit becomes a finding. */
export function finishLaying(to: PortRef) {
  const { from } = layingStore.getState();
  if (!from || portKey(from) === portKey(to)) return giveUp();
  const station = currentStation();
  change(layCable(station, from, to, hookupFor(station, from, to)));
  const laid = currentStation().cables.filter((c) => !station.cables.some((before) => before.id === c.id));
  select({ cables: laid.map((c) => c.id) });
  const numbers = laid.map((c) => c.number).join(', ');
  layingStore.setState({
    from: null,
    judged: none,
    said: `Cable ${numbers} from ${portName(station, from)} to ${portName(station, to)}.`,
  });
}

/** Says what a port that is pointed at is to the one taken; nothing for an empty text. */
export const explainPort = (why: string) => layingStore.setState({ why });

export function giveUp() {
  if (layingStore.getState().from) layingStore.setState({ from: null, judged: none, said: 'No cable is laid.' });
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

/** Where one of the ports has its cable in another hook-up, the new one is for the hook-up looked at only. */
function hookupFor(station: Station, a: PortRef, b: PortRef): string | undefined {
  if (station.hookups.length === 0) return undefined;
  const hookup = currentHookup(station, viewStore.getState()).id;
  const ends = [portKey(a), portKey(b)];
  const elsewhere = station.cables.some(
    (c) => c.hookups && !c.hookups.includes(hookup) && (ends.includes(portKey(c.a)) || ends.includes(portKey(c.b))),
  );
  return elsewhere ? hookup : undefined;
}
