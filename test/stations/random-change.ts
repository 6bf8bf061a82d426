import { adapters } from '../../core/catalog/adapters.ts';
import { cableKinds } from '../../core/catalog/cables/cable-kinds.ts';
import { connectors } from '../../core/catalog/connectors.ts';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { changeKind } from '../../core/catalog/laying/change-kind.ts';
import { layInHookup } from '../../core/catalog/laying/lay-in-hookup.ts';
import { moveCableEnd } from '../../core/catalog/laying/move-cable-end.ts';
import { placeUnit } from '../../core/catalog/laying/place-unit.ts';
import { splitCable } from '../../core/catalog/laying/split-cable.ts';
import { fuseRatings } from '../../core/catalog/wire/fuses.ts';
import { numberCables } from '../../core/reports/cables/number-cables.ts';
import { acceptFinding } from '../../core/rules/accept.ts';
import type { Finding } from '../../core/rules/finding.ts';
import { copyHookup } from '../../core/station/copy-hookup.ts';
import { type Change, edit } from '../../core/station/edit.ts';
import { elementFigures } from '../../core/station/element-figures.ts';
import { findBrokenReferences } from '../../core/station/file/check/find-broken-references.ts';
import { wholeOf } from '../../core/station/file/pieces.ts';
import { classOf, hookupsOf, kindOf } from '../../core/station/parts.ts';
import { plugOf } from '../../core/station/plug-of.ts';
import type {
  Cable,
  CableEnd,
  Hookup,
  Mark,
  Plan,
  PortRef,
  Reading,
  Station,
  Unit,
} from '../../core/station/schema/schema.ts';
import type { FuseFamily } from '../../core/station/schema/unit-kind.ts';
import type { Random } from '../fuzz/random.ts';

/** A station with what was found in it: a finding is accepted, or its fix made. */
export interface Found {
  readonly station: Station;
  readonly findings: readonly Finding[];
}

type Maker = (found: Found, random: Random) => Change | null;

type SetUnit = Partial<Omit<Unit, 'id'>>;
type SetCable = Partial<Omit<Cable, 'id'>>;

// `undefined` takes a field away, which the types of a document don't say.
const unitSet = (set: (unit: Unit, found: Found, random: Random) => object | null): Maker =>
  withOne(
    ({ station }) => station.units,
    (unit, found, random) => {
      const own = set(unit, found, random);
      return own && { type: 'updateUnit', id: unit.id, set: own as SetUnit };
    },
  );

const cableSet = (set: (cable: Cable, found: Found, random: Random) => object | null): Maker =>
  withOne(
    ({ station }) => station.cables,
    (cable, found, random) => {
      const own = set(cable, found, random);
      return own && { type: 'updateCable', id: cable.id, set: own as SetCable };
    },
  );

function withOne<T>(
  list: (found: Found) => readonly T[],
  make: (item: T, found: Found, random: Random) => Change | null,
): Maker {
  return (found, random) => {
    const item = random.pick(list(found));
    return item === undefined ? null : make(item, found, random);
  };
}

const unitsIn = ({ station }: Found) => station.units;
const cablesIn = ({ station }: Found) => station.cables;
const hookupsIn = ({ station }: Found) => station.hookups;

/**
 * Kinds that a newcomer may be of. A converter that a cable at random feeds from its own output has several states that
 * balance: which one is found depends on where the search begins.
 */
const pool = shelf.filter(({ kind }) => kind.elements.every((e) => e.type !== 'converter'));

const portsOf = (station: Station): { ref: PortRef; portClass: string }[] =>
  station.units.flatMap((unit) =>
    kindOf(station, unit).ports.map((port) => ({ ref: { unit: unit.id, port: port.id }, portClass: port.class })),
  );

/** A port for the other end of a cable of this class; now and then one of any class. */
const portFor = (station: Station, portClass: string, random: Random): PortRef | undefined =>
  random.pick(portsOf(station).filter((p) => p.portClass === portClass || random.chance(0.05)))?.ref;

const length = (random: Random): number => Math.round((0.05 + random.share() ** 3 * 30) * 100) / 100;

const position = (random: Random) => ({ x: random.below(3000), y: random.below(2000) });

const units: Readonly<Record<string, Maker>> = {
  'add a unit': ({ station }, random) => placeUnit(station, random.pick(pool)?.id ?? '', position(random)),
  'copy a unit': withOne(unitsIn, (unit, { station }, random) =>
    kindOf(station, unit).elements.some((e) => e.type === 'converter')
      ? null
      : { type: 'addUnits', units: [{ ...unit, id: `${unit.id}-${random.below(1000)}`, position: position(random) }] },
  ),
  'remove a unit': withOne(unitsIn, ({ id }) => ({ type: 'removeUnits', ids: [id] })),
  'rename a unit': unitSet((_, __, random) => ({ name: `Named ${random.below(20)}` })),
  'name a unit like another': unitSet((_, { station }, random) => ({ name: random.pick(station.units)?.name })),
  'move a unit': withOne(unitsIn, ({ id }, _, random) => ({
    type: 'moveUnits',
    moves: [{ id, position: position(random) }],
  })),
  'move all units': ({ station }) => ({
    type: 'moveUnits',
    moves: station.units.map(({ id, position: { x, y } }) => ({ id, position: { x: x + 18, y } })),
  }),
  'turn a unit': unitSet(({ sides }, __, random) =>
    sides ? { sides: undefined } : { sides: { power: random.one(['left', 'right', 'top', 'bottom']) } },
  ),
  'confirm a unit': unitSet(({ confirmed }) => ({ confirmed: confirmed ? undefined : true })),
  'put a unit outdoors or in': unitSet((_, __, random) => ({ outdoor: random.one([true, false, undefined]) })),
  'lock a unit': unitSet(({ locked }) => ({ locked: locked ? undefined : true, note: 'here' })),
  'switch a unit': unitSet((unit, { station }, random) => {
    const setting = random.pick(kindOf(station, unit).settings ?? []);
    const option = setting && random.pick(setting.options);
    return setting && option ? { settings: { ...unit.settings, [setting.id]: option.id } } : null;
  }),
  'give a unit a figure': unitSet((unit, { station }, random) => {
    const kind = kindOf(station, unit);
    const element = random.pick(kind.elements);
    const figure = element && random.pick(elementFigures(kind, element));
    if (!figure) return null;
    const { key, value, limit } = figure;
    const other = (value === 0 ? 1 : value) * random.one([0.3, 0.9, 1.01, 1.3, 3]);
    const within = Math.min(limit.most, Math.max(limit.least, other));
    return { overrides: { ...unit.overrides, [key]: limit.whole ? Math.round(within) : within } };
  }),
  'take back a unit’s figures': unitSet(({ overrides }) => (overrides ? { overrides: undefined } : null)),
  'describe a kind anew': withOne(unitsIn, (unit, { station }, random) => {
    const kind = station.kinds[unit.kind];
    if (!kind) return null;
    const element = random.pick(kind.elements);
    const port = random.pick(kind.ports);
    const described = random.one([
      { ...kind, name: `${kind.name}, made` },
      { ...kind, elements: kind.elements.filter((e) => e !== element) },
      { ...kind, ports: kind.ports.filter((p) => p !== port) },
      { ...kind, outdoor: !kind.outdoor },
      { ...kind, isolated: kind.isolated === 'all' ? [] : ('all' as const) },
    ]);
    const whole = { kind: described, connectors: station.connectors };
    return changeKind(station, unit.kind, whole)?.change ?? null;
  }),
  'make a unit one of another kind': withOne(unitsIn, (unit, { station }, random) => {
    const [id, kind] = random.pick(Object.entries(station.kinds)) ?? [];
    if (!id || !kind || id === unit.kind) return null;
    const first: Change[] = [{ type: 'updateUnit', id: unit.id, set: { kind: id } }];
    return changeKind(station, id, { kind, connectors: station.connectors }, first)?.change ?? null;
  }),
};

const plugs: Readonly<Record<string, Maker>> = {
  'move a plug': withOne(cablesIn, (cable, { station }, random) => {
    const to = portFor(station, classOf(station, cable), random);
    return to ? moveCableEnd(station, cable.id, random.one(['a', 'b']), to) : null;
  }),
  'move a plug on its unit': withOne(cablesIn, (cable, { station }, random) => {
    const end = random.one<CableEnd>(['a', 'b']);
    const to = random.pick(portsOf(station).filter((p) => p.ref.unit === cable[end].unit));
    return to ? moveCableEnd(station, cable.id, end, to.ref) : null;
  }),
  'swap two plugs': withOne(cablesIn, (cable, { station }, random) => {
    const other = random.pick(station.cables.filter((c) => classOf(station, c) === classOf(station, cable)));
    const first = other && moveCableEnd(station, cable.id, 'b', other.b);
    const second = other && first && moveCableEnd(edit(station, first), other.id, 'b', cable.b);
    return first && second ? { type: 'all', name: 'Swap two plugs', changes: [first, second] } : null;
  }),
  'fit another plug': withOne(cablesIn, (cable, _, random) => {
    const [id, connector] = random.pick(Object.entries(connectors)) ?? [];
    if (!id || !connector) return null;
    const set: SetCable = { plugs: { ...cable.plugs, [random.one(['a', 'b'])]: id } };
    if (random.chance(0.5)) (set as { wiring: undefined }).wiring = undefined;
    return {
      type: 'updateCable',
      id: cable.id,
      set,
      carried: { connectors: { [id]: connector } },
    };
  }),
  'take back the plugs': cableSet(({ plugs: own }) => (own ? { plugs: undefined } : null)),
  'fit an adapter or take it off': cableSet(({ adapters: own }, _, random) => {
    const id = random.pick(Object.keys(adapters)) ?? '';
    return { adapters: own ? undefined : { [random.one(['a', 'b'])]: [id] } };
  }),
  'cross the wiring': cableSet((cable, { station }, random) => {
    const contacts = (end: 'a' | 'b') => plugOf(station, cable, end)?.contacts.map((c) => c.id) ?? [];
    const [a, b] = [contacts('a'), contacts('b').reverse()];
    const rows = a.slice(0, b.length).map((contact, i) => ({ a: contact, b: b[i] ?? '' }));
    return { wiring: cable.wiring && random.chance(0.5) ? undefined : rows.filter(() => random.chance(0.9)) };
  }),
};

const cables: Readonly<Record<string, Maker>> = {
  'lay a cable': ({ station }, random) => {
    const from = random.pick(portsOf(station));
    const to = from && portFor(station, from.portClass, random);
    const hookup = random.pick(hookupsOf(station));
    if (!from || !to || !hookup || (to.unit === from.ref.unit && to.port === from.ref.port)) return null;
    return layInHookup(station, from.ref, to, hookup);
  },
  'remove a cable': withOne(cablesIn, ({ id }) => ({ type: 'removeCables', ids: [id] })),
  'remove two cables': ({ station }, random) => ({
    type: 'removeCables',
    ids: [random.pick(station.cables)?.id ?? '', random.pick(station.cables)?.id ?? ''],
  }),
  'put a unit into a cable': withOne(cablesIn, ({ id }, { station }, random) =>
    splitCable(station, id, placeUnit(station, random.pick(pool)?.id ?? '', position(random))),
  ),
  'lengthen a cable': cableSet((_, __, random) => ({ lengthM: length(random) })),
  'fuse a cable or not': cableSet(({ fuse, lengthM }, _, random) => {
    if (fuse && random.chance(0.5)) return { fuse: undefined };
    const family = random.one<FuseFamily>(['blade', 'glass-fast', 'glass-slow']);
    return { fuse: { amps: random.pick(fuseRatings[family]) ?? 5, family, atM: lengthM * random.one([0.01, 0.5]) } };
  }),
  'make a cable of another kind': withOne(cablesIn, (cable, { station }, random) => {
    const kinds = cableKinds.filter(({ kind }) => kind.class === classOf(station, cable) || random.chance(0.02));
    const other = random.pick(kinds);
    if (!other) return null;
    const used = Object.values(other.kind.plugs ?? {});
    const carried = {
      cableKinds: { [other.id]: other.kind },
      connectors: Object.fromEntries(used.flatMap((id) => (connectors[id] ? [[id, connectors[id]]] : []))),
    };
    return { type: 'updateCable', id: cable.id, set: { kind: other.id }, carried };
  }),
  'join a screen at one end': cableSet((_, __, random) => ({ screenAt: random.one(['a', 'b', undefined]) })),
  'sheathe a cable': cableSet(({ sheathed }) => ({ sheathed: sheathed ? undefined : true })),
  'tick a cable off': cableSet((_, __, random) => ({ status: random.one(['toMake', 'made', 'tested']), note: 'so' })),
  'number a cable': cableSet((_, __, random) => ({ number: `X${random.below(50)}`, numberLocked: true })),
  'number all cables': ({ station }, random) =>
    numberCables(station, { by: random.one(['class', 'unit', 'running']), order: 'drawing', from: random.below(3) }),
  'plug a cable in for some hook-ups': cableSet((_, { station }, random) => {
    const some = station.hookups.filter(() => random.chance(0.5)).map(({ id }) => id);
    return { hookups: some.length > 0 && random.chance(0.8) ? some : undefined };
  }),
};

const hookups: Readonly<Record<string, Maker>> = {
  'copy a hook-up': withOne(hookupsIn, ({ id }, { station }) => copyHookup(station, id)?.change ?? null),
  'add a hook-up': ({ station }, random) => {
    const hookup: Hookup = { id: `h${random.below(100)}`, name: `Hook-up ${station.hookups.length}` };
    return station.hookups.length < 3 ? { type: 'addHookup', hookup } : null;
  },
  'rename a hook-up': withOne(hookupsIn, ({ id }, _, random) => ({
    type: 'updateHookup',
    id,
    set: { name: `Called ${random.below(20)}` },
  })),
  'switch a unit in a hook-up': withOne(hookupsIn, ({ id, settings }, { station }, random) => {
    const unit = random.pick(station.units.filter((u) => kindOf(station, u).settings));
    const setting = unit && random.pick(kindOf(station, unit).settings ?? []);
    const option = setting && random.pick(setting.options);
    if (!unit || !option) return null;
    const own = { ...settings?.[unit.id], [setting.id]: option.id };
    return { type: 'updateHookup', id, set: { settings: { ...settings, [unit.id]: own } } };
  }),
  'remove a hook-up': withOne(hookupsIn, ({ id }) => ({ type: 'removeHookup', id })),
};

const mark = (random: Random): Mark => ({
  id: `m${random.below(1000)}`,
  type: random.one(['note', 'zone']),
  text: 'Here',
  position: position(random),
  width: 200,
  height: 100,
});

const reading = (random: Random): Reading => ({
  step: 'unit/receiver/amps',
  value: random.share(),
  unit: 'A',
  when: `2026-01-0${1 + random.below(9)}`,
});

const words: Readonly<Record<string, Maker>> = {
  plan: (_, random) => ({
    type: 'setPlan',
    set: random.one<Partial<Plan>>([
      { speedWpm: 5 + random.below(30) },
      { duty: random.share() },
      { frequencyHz: random.one([3_560_000, 10_120_000, 14_060_000, 144_300_000]) },
      { mode: random.one(['keying', 'voice', 'data']) },
      { hoursPerDay: random.below(24) },
    ]),
  }),
  settings: ({ station }, random) => ({
    type: 'describe',
    set: random.one<Partial<Pick<Station, 'title' | 'notes' | 'settings'>>>([
      { settings: { ...station.settings, maxDrop: 0.01 + random.share() / 10 } },
      { settings: { ...station.settings, ambientCelsius: random.below(50) } },
      { settings: { ...station.settings, bundled: 1 + random.below(8) } },
      { settings: { ...station.settings, metresPerUnit: 0.001 + random.share() / 100 } },
      { title: `Titled ${random.below(9)}`, notes: 'Noted' },
    ]),
  }),
  'add a mark': (_, random) => ({ type: 'addMarks', marks: [mark(random)] }),
  'change a mark': withOne(
    ({ station }) => station.marks ?? [],
    ({ id }) => ({ type: 'updateMark', id, set: { text: 'There' } }),
  ),
  'remove a mark': withOne(
    ({ station }) => station.marks ?? [],
    ({ id }) => ({ type: 'removeMarks', ids: [id] }),
  ),
  'accept a finding': withOne(
    ({ findings }) => findings,
    (finding) => acceptFinding(finding, 'It is meant so'),
  ),
  'take back an acceptance': withOne(
    ({ station }) => station.accepted,
    ({ finding }) => ({ type: 'takeBack', finding }),
  ),
  'make a fix': withOne(
    ({ findings }) => findings.flatMap(({ fix }) => fix ?? []),
    ({ change }) => change,
  ),
  'write down a reading': (_, random) => ({ type: 'addReading', reading: reading(random) }),
  'strike out a reading': withOne(
    ({ station }) => station.readings,
    ({ step, when }) => ({ type: 'removeReading', step, when }),
  ),
};

const single: readonly (readonly [string, Maker])[] = [units, plugs, plugs, cables, cables, hookups, words].flatMap(
  (group) => Object.entries(group),
);

export interface NamedChange {
  readonly name: string;
  readonly change: Change;
}

/**
 * An edit as a user makes one, of whatever type, that leaves a document which a file can hold; null where the ones that
 * came to mind can't be made of this station.
 */
export function randomChange(found: Found, random: Random): NamedChange | null {
  const first = oneChange(found, random);
  if (!first || random.chance(0.9)) return first;
  const between = { ...found, station: edit(found.station, first.change) };
  const second = oneChange(between, random);
  if (!second) return first;
  const change: Change = { type: 'all', name: 'Two edits', changes: [first.change, second.change] };
  return { name: `${first.name}, then ${second.name}`, change };
}

function oneChange(found: Found, random: Random): NamedChange | null {
  for (let tries = 0; tries < 10; tries++) {
    const [name, make] = random.pick(single) as (typeof single)[number];
    const change = make(found, random);
    if (change && isWhole(edit(found.station, change))) return { name, change };
  }
  return null;
}

const isWhole = (station: Station): boolean =>
  station.units.length < 90 && findBrokenReferences(wholeOf(station)).length === 0;
