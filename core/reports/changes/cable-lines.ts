import { adapters } from '../../catalog/adapters.ts';
import { wiringOf } from '../../catalog/cables/wiring-of.ts';
import { formatLength, formatRating } from '../../quantity/format.ts';
import { findUnit, hookupsOf } from '../../station/parts.ts';
import type { Place } from '../../station/place.ts';
import { plugOf } from '../../station/plug-of.ts';
import type { Cable, CableEnd, PortRef, Station } from '../../station/schema/schema.ts';
import { type ChangeLine, fieldWords, fromTo, isSame, pairById, type Wording } from './change-line.ts';
import { refName } from './ref-name.ts';

/** Cables that come, go, or are otherwise. */
export function cableLines(before: Station, after: Station): ChangeLine[] {
  const { added, removed, changed } = pairById(before.cables, after.cables);
  const here = ({ id }: Cable): Place[] => [{ cable: id }];
  return [
    ...removed.map((cable) => ({ words: `Cable ${cable.number} goes: ${courseOf(before, cable)}`, at: here(cable) })),
    ...changed.flatMap(({ was, is }) =>
      changesOf(before, was, after, is).map((words) => ({ words: `${was.number}: ${words}`, at: here(was) })),
    ),
    ...added.map((cable) => ({
      words: `New cable ${cable.number}, ${newCableWords(after, cable)}`,
      at: [cable.a, cable.b].filter(({ unit }) => findUnit(before, unit)),
    })),
  ];
}

const courseOf = (station: Station, { a, b }: Cable): string => `${refName(station, a)} to ${refName(station, b)}`;

function newCableWords(station: Station, cable: Cable): string {
  const inHookups = cable.hookups ? `, for ${hookupNames(station, cable.hookups)}` : '';
  return `${kindName(station, cable.kind)}, ${formatLength(cable.lengthM)}, from ${courseOf(station, cable)}${inHookups}`;
}

const kindName = (station: Station, id: string): string => station.cableKinds[id]?.name ?? id;

const hookupNames = (station: Station, ids: readonly string[]): string =>
  ids.map((id) => hookupsOf(station).find((h) => h.id === id)?.name ?? id).join(', ');

const adapterNames = (ids: readonly string[] = []): string =>
  ids.map((id) => adapters[id]?.name ?? id).join(', ') || 'none';

type Plain = Omit<Cable, 'id' | 'plugs' | 'adapters' | 'wiring' | 'hookups'>;

function wordingFor(before: Station, after: Station): Wording<Plain> {
  const end = (ref: PortRef) => refName(findUnit(after, ref.unit) ? after : before, ref);
  return {
    number: ['number', (number) => number],
    numberLocked: ['its number', (is) => (is ? 'locked' : 'free')],
    kind: ['kind', (id) => kindName(after.cableKinds[id] ? after : before, id)],
    lengthM: ['length', (metres) => formatLength(metres)],
    a: ['from', end],
    b: ['to', end],
    fuse: ['fuse', ({ amps, atM }) => `${formatRating(amps)} at ${formatLength(atM)}`],
    screenAt: ['screen', (at) => `joined at its ${at === 'a' ? 'start' : 'end'} only`],
    sheathed: ['sheath', (is) => (is ? 'conduit or another sheath' : 'none')],
    status: ['status', (status) => ({ toMake: 'to make', made: 'made', tested: 'tested' })[status]],
    note: ['note', (note) => `“${note}”`],
  };
}

function changesOf(before: Station, was: Cable, after: Station, is: Cable): string[] {
  const ends = (['a', 'b'] as const).flatMap((end) => endWords(before, was, after, is, end));
  const wiring = isSame(was.wiring, is.wiring)
    ? []
    : [fromTo('wiring', wiringWords(before, was), wiringWords(after, is))];
  const inHookups = (station: Station, { hookups }: Cable) =>
    hookups ? hookupNames(station, hookups) : 'every hook-up';
  const hookups = isSame(was.hookups, is.hookups)
    ? []
    : [fromTo('plugged in for', inHookups(before, was), inHookups(after, is))];
  const lines = [...fieldWords(wordingFor(before, after), was, is), ...ends, ...wiring, ...hookups];
  return lines.length > 0 ? lines : ['changes'];
}

function endWords(before: Station, was: Cable, after: Station, is: Cable, end: CableEnd): string[] {
  const where = `at ${refName(after, is[end])}`;
  const plugName = (station: Station, cable: Cable) => plugOf(station, cable, end)?.name ?? 'not known';
  const [old, fresh] = [plugName(before, was), plugName(after, is)];
  // A plug follows its port; it is said only where it was chosen for itself.
  const isChosen = !isSame(was.plugs?.[end], is.plugs?.[end]) && old !== fresh;
  return [
    ...(isChosen ? [fromTo(`plug ${where}`, old, fresh)] : []),
    ...(isSame(was.adapters?.[end], is.adapters?.[end])
      ? []
      : [fromTo(`adapter ${where}`, adapterNames(was.adapters?.[end]), adapterNames(is.adapters?.[end]))]),
  ];
}

/** `straight` as it comes without wiring of its own, `swapped` for two cores the other way round, else contact by contact. */
function wiringWords(station: Station, cable: Cable): string {
  if (!cable.wiring) return 'straight';
  const usual = wiringOf(station, { ...cable, wiring: undefined } as Cable);
  const has = (a: string, b: string) => cable.wiring?.some((row) => row.a === a && row.b === b) ?? false;
  const [first, second] = usual;
  if (usual.length !== cable.wiring.length) return rowsOf(station, cable);
  if (usual.every(({ a, b }) => has(a, b))) return 'straight';
  const isSwapped = usual.length === 2 && first && second && has(first.a, second.b) && has(second.a, first.b);
  return isSwapped ? 'swapped' : rowsOf(station, cable);
}

function rowsOf(station: Station, cable: Cable): string {
  const nameAt = (end: CableEnd, id: string) =>
    plugOf(station, cable, end)?.contacts.find((c) => c.id === id)?.name ?? id;
  return (
    (cable.wiring ?? []).map(({ a, b }) => `${nameAt('a', a)} to ${nameAt('b', b)}`).join(', ') || 'nothing joined'
  );
}
