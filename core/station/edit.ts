import type { CableKind } from './schema/cable-kind.ts';
import type { Connector } from './schema/connector.ts';
import type { Acceptance, Cable, Hookup, Mark, Plan, PortRef, Reading, Station, Unit } from './schema/schema.ts';
import type { UnitKind } from './schema/unit-kind.ts';
import { keepNamed, takeAlong } from './take-along.ts';
import { withoutUndefined } from './without-undefined.ts';

/** Descriptions that a document carries so that it opens the same in ten years. */
export interface Carried {
  kinds?: Record<string, UnitKind>;
  cableKinds?: Record<string, CableKind>;
  connectors?: Record<string, Connector>;
}

/** Everything that can be done to a station; the only way to a new document. */
export type Change =
  | { type: 'addUnits'; units: Unit[]; carried?: Carried }
  | { type: 'updateUnit'; id: string; set: Partial<Omit<Unit, 'id'>> }
  | { type: 'moveUnits'; moves: { id: string; position: Unit['position'] }[] }
  | { type: 'removeUnits'; ids: string[] }
  | { type: 'addCables'; cables: Cable[]; carried?: Carried }
  | { type: 'updateCable'; id: string; set: Partial<Omit<Cable, 'id'>>; carried?: Carried }
  | { type: 'removeCables'; ids: string[] }
  | { type: 'addHookup'; hookup: Hookup }
  | { type: 'updateHookup'; id: string; set: Partial<Omit<Hookup, 'id'>> }
  | { type: 'removeHookup'; id: string }
  | { type: 'addMarks'; marks: Mark[] }
  | { type: 'updateMark'; id: string; set: Partial<Omit<Mark, 'id'>> }
  | { type: 'removeMarks'; ids: string[] }
  | { type: 'setKind'; id: string; kind: UnitKind; connectors: Record<string, Connector> }
  | { type: 'setPlan'; set: Partial<Plan> }
  | { type: 'describe'; set: Partial<Pick<Station, 'title' | 'notes' | 'settings'>> }
  | { type: 'accept'; acceptance: Acceptance }
  | { type: 'takeBack'; finding: string }
  | { type: 'addReading'; reading: Reading }
  | { type: 'removeReading'; step: string; when: string }
  | { type: 'all'; name: string; changes: Change[] };

/** The station with a change made; a change that names nothing in it leaves it as it is. */
export function edit(station: Station, change: Change): Station {
  switch (change.type) {
    case 'addUnits':
      return addUnits(station, change.units, change.carried);
    case 'updateUnit': {
      const changed = { ...station, units: update(station.units, change.id, change.set) };
      return change.set.kind === undefined ? changed : takeAlong(station, changed);
    }
    case 'moveUnits': {
      const moves = new Map(change.moves.map((m) => [m.id, m.position]));
      return { ...station, units: station.units.map((u) => moveUnit(u, moves.get(u.id))) };
    }
    case 'removeUnits':
      return takeAlong(station, removeUnits(station, new Set(change.ids)));
    case 'addCables':
      return { ...carry(station, change.carried), cables: [...station.cables, ...change.cables] };
    case 'updateCable':
      return { ...carry(station, change.carried), cables: update(station.cables, change.id, change.set) };
    case 'removeCables':
      return takeAlong(station, { ...station, cables: station.cables.filter((c) => !change.ids.includes(c.id)) });
    case 'addHookup':
      return { ...station, hookups: [...station.hookups, change.hookup] };
    case 'updateHookup':
      return { ...station, hookups: update(station.hookups, change.id, change.set) };
    case 'removeHookup':
      return takeAlong(station, removeHookup(station, change.id));
    case 'addMarks':
      return { ...station, marks: [...(station.marks ?? []), ...change.marks] };
    case 'updateMark':
      return { ...station, marks: update(station.marks ?? [], change.id, change.set) };
    case 'removeMarks':
      return removeMarks(station, new Set(change.ids));
    case 'setKind':
      return takeAlong(station, setKind(carry(station, { connectors: change.connectors }), change.id, change.kind));
    case 'setPlan':
      return { ...station, plan: { ...station.plan, ...change.set } };
    case 'describe':
      return { ...station, ...change.set };
    case 'accept':
      return { ...station, accepted: [...without(station.accepted, change.acceptance.finding), change.acceptance] };
    case 'takeBack':
      return { ...station, accepted: without(station.accepted, change.finding) };
    case 'addReading':
      return { ...station, readings: [...station.readings, change.reading] };
    case 'removeReading':
      return {
        ...station,
        readings: station.readings.filter((r) => r.step !== change.step || r.when !== change.when),
      };
    case 'all':
      return change.changes.reduce(edit, station);
  }
}

/** Units of a kind that the document describes otherwise than they bring along are of the document's kind. */
function addUnits(station: Station, units: readonly Unit[], carried: Carried = {}): Station {
  const next = carry(station, carried);
  const fitted = units.map((unit) => {
    const [was, is] = [carried.kinds?.[unit.kind], next.kinds[unit.kind]];
    return was && is && was !== is ? keepNamed(unit, { was, is }) : unit;
  });
  return { ...next, units: [...station.units, ...fitted] };
}

function carry(station: Station, carried: Carried = {}): Station {
  // What the document already carries wins: it may hold the user's own figures.
  return {
    ...station,
    kinds: withMore(station.kinds, carried.kinds),
    cableKinds: withMore(station.cableKinds, carried.cableKinds),
    connectors: withMore(station.connectors, carried.connectors),
  };
}

/** What is there and what it lacks of `more`; itself where it lacks nothing, as what is the same stays the same object. */
function withMore<T>(present: Readonly<Record<string, T>>, more: Readonly<Record<string, T>> = {}): Record<string, T> {
  return Object.keys(more).every((id) => Object.hasOwn(present, id)) ? present : { ...more, ...present };
}

function update<T extends { id: string }>(items: readonly T[], id: string, set: Partial<NoInfer<T>>): T[] {
  return items.map((item) => (item.id === id ? withoutUndefined({ ...item, ...set }) : item));
}

const moveUnit = (unit: Unit, position: Unit['position'] | undefined): Unit =>
  position ? { ...unit, position } : unit;

function removeUnits(station: Station, ids: ReadonlySet<string>): Station {
  return {
    ...keepPorts(station, ({ unit }) => !ids.has(unit)),
    units: station.units.filter((u) => !ids.has(u.id)),
    hookups: station.hookups.map((h) => {
      if (!Object.keys(h.settings ?? {}).some((unit) => ids.has(unit))) return h;
      return {
        ...h,
        settings: Object.fromEntries(Object.entries(h.settings ?? {}).filter(([unit]) => !ids.has(unit))),
      };
    }),
  };
}

/** The station without cables and couplings at ports that are gone. */
function keepPorts(station: Station, isThere: (ref: PortRef) => boolean): Station {
  const isWhole = ({ a, b }: { a: PortRef; b: PortRef }) => isThere(a) && isThere(b);
  const { couplings } = station;
  return {
    ...station,
    cables: station.cables.filter(isWhole),
    ...(couplings && { couplings: couplings.filter(isWhole) }),
  };
}

/** A kind described anew, or a further one; what was at ports that it no longer has goes. */
function setKind(station: Station, id: string, kind: UnitKind): Station {
  const units = new Set(station.units.filter((u) => u.kind === id).map((u) => u.id));
  const ports = new Set(kind.ports.map((p) => p.id));
  const left = keepPorts(station, ({ unit, port }) => !units.has(unit) || ports.has(port));
  return { ...left, kinds: { ...station.kinds, [id]: kind } };
}

/** A station without any marks has no list of them, as if there had never been one. */
function removeMarks({ marks = [], ...station }: Station, ids: ReadonlySet<string>): Station {
  const left = marks.filter((m) => !ids.has(m.id));
  return left.length > 0 ? { ...station, marks: left } : station;
}

function removeHookup(station: Station, id: string): Station {
  const hookups = station.hookups.filter((h) => h.id !== id);
  // A cable that was only in the hook-up goes with it; one that was in others too stays there.
  const cables = station.cables.flatMap((cable) => {
    if (!cable.hookups?.includes(id)) return [cable];
    const left = cable.hookups.filter((h) => h !== id);
    return left.length > 0 ? [{ ...cable, hookups: left }] : [];
  });
  return { ...station, hookups, cables };
}

const without = (accepted: readonly Acceptance[], finding: string) => accepted.filter((a) => a.finding !== finding);

const names: Record<Exclude<Change['type'], 'all'>, string> = {
  addUnits: 'Add unit',
  updateUnit: 'Change unit',
  moveUnits: 'Move unit',
  removeUnits: 'Remove unit',
  addCables: 'Lay cable',
  updateCable: 'Change cable',
  removeCables: 'Remove cable',
  addHookup: 'Add hook-up',
  updateHookup: 'Change hook-up',
  removeHookup: 'Remove hook-up',
  addMarks: 'Add note or zone',
  updateMark: 'Change note or zone',
  removeMarks: 'Remove note or zone',
  setKind: 'Change unit kind',
  setPlan: 'Change plan',
  describe: 'Change description',
  accept: 'Accept finding',
  takeBack: 'Take back acceptance',
  addReading: 'Write down a reading',
  removeReading: 'Strike out a reading',
};

/** What a change is called in the list of steps. */
export const changeName = (change: Change): string => (change.type === 'all' ? change.name : names[change.type]);
