import {
  type Change,
  copyHookup,
  describeChange,
  goTo,
  hookupsOf,
  layInHookup,
  numberCables,
  placeUnit,
  readStation,
  recordChange,
  type Station,
  shelf,
  startHistory,
  writeStation,
} from '../../core/index.ts';
import type { Random } from './random.ts';

/** Edits as a user makes them, each of the document as it is then; null where there is nothing to edit. */
const edits: readonly [EditMaker, ...EditMaker[]] = [
  (s, r) => placeUnit(s, r.pick(shelf)?.id ?? '', { x: 0, y: 0 }),
  (s, r) => {
    const ports = s.units.flatMap((u) => (s.kinds[u.kind]?.ports ?? []).map((p) => ({ unit: u.id, port: p.id })));
    const [a, b, hookup] = [r.pick(ports), r.pick(ports), r.pick(hookupsOf(s))];
    return a && b && hookup && a !== b ? layInHookup(s, a, b, hookup) : null;
  },
  (s, r) => withOne(s.units, r, (u) => ({ type: 'removeUnits', ids: [u.id] })),
  (s, r) => withOne(s.cables, r, (c) => ({ type: 'removeCables', ids: [c.id] })),
  (s, r) => withOne(s.cables, r, (c) => ({ type: 'updateCable', id: c.id, set: { lengthM: 1.5, note: 'new' } })),
  (s, r) => withOne(s.units, r, (u) => ({ type: 'updateUnit', id: u.id, set: { name: 'New name', locked: true } })),
  (s, r) => withOne(s.hookups, r, (h) => copyHookup(s, h.id)?.change ?? null),
  (s, r) => withOne(s.hookups, r, (h) => ({ type: 'removeHookup', id: h.id })),
  (s, r) => numberCables(s, { by: r.one(['class', 'unit', 'running']), order: r.one(['drawing', 'list']), from: 1 }),
  () => ({ type: 'setPlan', set: { speedWpm: 12 } }),
];

type EditMaker = (station: Station, random: Random) => Change | null;

function withOne<T>(list: readonly T[], random: Random, make: (item: T) => Change | null): Change | null {
  const item = random.pick(list);
  return item === undefined ? null : make(item);
}

/** What goes wrong when a few edits are told in words, made, saved and undone; nothing where nothing does. */
export function editAndUndo(station: Station, random: Random): string[] {
  const wrong: string[] = [];
  let history = startHistory(station);
  for (let n = 0; n < 4; n++) {
    const change = random.one(edits)(history.station, random);
    if (!change) continue;
    const words = describeChange(history.station, change).map((line) => line.words);
    const before = history.station;
    history = recordChange(history, change);
    if (words.some((line) => line.trim() === '')) wrong.push(`${change.type} is told in an empty line`);
    if (words.length === 0 && history.station !== before) wrong.push(`${change.type} is not told in words`);
  }
  const read = readStation(writeStation(history.station));
  if ('problems' in read) wrong.push(`edited it is refused: ${read.problems[0]?.place}: ${read.problems[0]?.message}`);
  if (writeStation(goTo(history, 0).station) !== writeStation(station)) wrong.push('undone it is not what it was');
  return wrong;
}
