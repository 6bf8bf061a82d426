import { kindOf } from '../../station/parts.ts';
import type { Place } from '../../station/place.ts';
import { ringName } from '../../station/ring-colours.ts';
import type { Station, Unit } from '../../station/schema/schema.ts';
import type { UnitKind } from '../../station/schema/unit-kind.ts';
import { type ChangeLine, fieldWords, fromTo, isSame, pairById, type Wording } from './change-line.ts';
import { figureName, figureText } from './figure-words.ts';

/** Units that come, go, or are otherwise. */
export function unitLines(before: Station, after: Station): ChangeLine[] {
  const { added, removed, changed } = pairById(before.units, after.units);
  const here = ({ id }: Unit): Place[] => [{ unit: id }];
  return [
    ...removed.map((unit) => ({ words: `${unit.name} goes`, at: here(unit) })),
    ...changed.flatMap(({ was, is }) =>
      changesOf(before, was, after, is).map((words) => ({ words: `${was.name}${words}`, at: here(was) })),
    ),
    ...added.map((unit) => ({ words: `New unit ${newName(unit, kindName(after, unit))}`, at: [] })),
  ];
}

type Settings = Readonly<Record<string, string>>;

/** `Dummy load 2: dummy load, 5 W`; the kind alone where it begins with the unit's name. */
const newName = ({ name }: Unit, kind: string): string => (kind.startsWith(name) ? kind : `${name}: ${kind}`);

const kindName = (station: Station, { kind }: Unit): string => station.kinds[kind]?.name ?? kind;

type Plain = Omit<Unit, 'id' | 'kind' | 'position' | 'settings' | 'overrides' | 'sides' | 'rings'>;

const wording: Wording<Plain> = {
  name: ['name', (name) => name],
  confirmed: ['its figures', (is) => (is ? 'compared with the unit' : 'typical')],
  outdoor: ['stands', (is) => (is === undefined ? 'as its kind does' : is ? 'outdoors' : 'indoors')],
  locked: ['its place', (is) => (is ? 'locked' : 'free')],
  note: ['note', (note) => `“${note}”`],
};

/** Each begins with what stands between the unit's name and it. */
function changesOf(before: Station, was: Unit, after: Station, is: Unit): string[] {
  const kind = was.kind === is.kind ? [] : [fromTo('kind', kindName(before, was), kindName(after, is))];
  const moved = isSame(was.position, is.position) ? [] : ['moves'];
  const lines = [
    ...[...kind, ...moved, ...fieldWords(wording, was, is)].map((words) => `: ${words}`),
    ...settingChanges(after.kinds[is.kind], was.settings, is.settings).map((words) => `: ${words}`),
    ...sideWords(after, was, is),
    ...ringWords(after, was, is),
    ...overrideWords(before, was, after, is),
  ];
  return lines.length > 0 ? lines : [' changes'];
}

/** `tuned for 40 m → 30 m` for each setting of a unit that is not as it was; one that is not set is as `otherwise` says. */
export function settingChanges(
  kind: UnitKind | undefined,
  was: Settings = {},
  is: Settings = {},
  otherwise: Settings = {},
): string[] {
  return [...new Set([...Object.keys(was), ...Object.keys(is)])].flatMap((id) => {
    if (was[id] === is[id]) return [];
    const setting = kind?.settings?.find((s) => s.id === id);
    const say = (value = otherwise[id] ?? setting?.initial ?? 'none') =>
      setting?.options.find((o) => o.id === value)?.label ?? value;
    return [fromTo(setting?.label ?? id, say(was[id]), say(is[id]))];
  });
}

function sideWords(station: Station, was: Unit, is: Unit): string[] {
  const ports = new Set([...Object.keys(was.sides ?? {}), ...Object.keys(is.sides ?? {})]);
  const known = station.kinds[is.kind]?.ports ?? [];
  return [...ports].flatMap((id) => {
    if (was.sides?.[id] === is.sides?.[id]) return [];
    const port = known.find((p) => p.id === id);
    const say = (side: string | undefined) => side ?? port?.side ?? 'its own side';
    return [` · ${port?.label || id}: ${fromTo('side', say(was.sides?.[id]), say(is.sides?.[id]))}`];
  });
}

/** Where a ring comes, goes or is of another colour: on the jack and on the plug in it. */
function ringWords(station: Station, was: Unit, is: Unit): string[] {
  const ports = new Set([...Object.keys(was.rings ?? {}), ...Object.keys(is.rings ?? {})]);
  const known = station.kinds[is.kind]?.ports ?? [];
  return [...ports].flatMap((id) => {
    if (was.rings?.[id] === is.rings?.[id]) return [];
    const label = known.find((p) => p.id === id)?.label || id;
    return [` · ${label}: ${fromTo('ring', ringName(was.rings?.[id]), ringName(is.rings?.[id]))}`];
  });
}

function overrideWords(before: Station, was: Unit, after: Station, is: Unit): string[] {
  const keys = new Set([...Object.keys(was.overrides ?? {}), ...Object.keys(is.overrides ?? {})]);
  return [...keys].flatMap((key) => {
    if (was.overrides?.[key] === is.overrides?.[key]) return [];
    const { port, label } = figureName(kindOf(after, is), key);
    const [old, fresh] = [figureText(kindOf(before, was), key), figureText(kindOf(after, is), key)];
    return [`${port && ` · ${port}`}: ${fromTo(label, old, fresh)}`];
  });
}
