import { swappedWiring } from '../../catalog/cables/swapped-wiring.ts';
import { moveCableEnd } from '../../catalog/laying/move-cable-end.ts';
import { type Change, edit } from '../../station/edit.ts';
import { findCable, kindOf, portName, portOf } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import { ringAt } from '../../station/ring-at.ts';
import type { Cable, CableEnd, PortRef, Station, Unit } from '../../station/schema/schema.ts';
import type { Act } from './act.ts';
import { areAlike, insideOf, looksOf } from './alike.ts';
import { areTogether, cableEnds, goesIn, isSamePort, otherEnd, reaches, replug } from './plug-in-jack.ts';

/** Several leads go on one of these at once. */
const stacks: readonly string[] = ['posts', 'ring', 'earth', 'wire'];

/** Each core of these is put in its place by itself, so that two can be exchanged (common practice). */
const looseCores: readonly string[] = ['posts', 'ring', 'wire'];

interface Scope {
  /** Cables of which at least one takes part; all if not given. */
  readonly cables?: ReadonlySet<string>;
  /** Free ports that any plug is tried in, `unit.port`. */
  readonly ports?: ReadonlySet<string>;
  /** Units whose switches are tried; all if not given. */
  readonly units?: ReadonlySet<string>;
  /**
   * On a drawing that may be wrong: a plug may also become the one that its new port takes, and any two cores may
   * have been crossed when the lead was made.
   */
  readonly asDrawn?: boolean;
}

/** All that a hand could do by mistake to a station; things that come to the same are one act, on the first of them. */
export function listActs(station: Station, scope: Scope = {}): Act[] {
  const known = new Map<string, Act>();
  const isIn = (...cables: readonly Cable[]) => !scope.cables || cables.some((c) => scope.cables?.has(c.id));
  for (const act of [
    ...moves(station, isIn, scope),
    ...exchanges(station, isIn, scope),
    ...mistaken(station, isIn),
    ...station.cables.filter((cable) => isIn(cable)).flatMap((cable) => ownActs(station, cable, scope)),
    ...station.units
      .filter((unit) => !scope.units || scope.units.has(unit.id))
      .flatMap((unit) => [...switches(station, unit), ...reversed(station, unit, isIn)]),
  ])
    known.set(act.id, act);
  return [...known.values()];
}

type IsIn = (...cables: readonly Cable[]) => boolean;

const portsOf = (station: Station): PortRef[] =>
  station.units.flatMap((unit) => kindOf(station, unit).ports.map((port) => ({ unit: unit.id, port: port.id })));

const isFree = (station: Station, cable: Cable, ref: PortRef): boolean =>
  stacks.includes(portOf(station, ref).connector.face) ||
  !station.cables.some((c) => areTogether(c, cable) && (isSamePort(c.a, ref) || isSamePort(c.b, ref)));

/** Each plug in each free jack that it goes into. */
function moves(station: Station, isIn: IsIn, { ports: wanted, asDrawn = false }: Scope): Act[] {
  const ports = portsOf(station);
  return station.cables.flatMap((cable) =>
    cableEnds.flatMap((end) => {
      const from = cable[end];
      const alike = new Set<string>();
      return ports.flatMap((to): Act[] => {
        if (!isIn(cable) && !wanted?.has(`${to.unit}.${to.port}`)) return [];
        if (isSamePort(to, from) || isSamePort(to, cable[otherEnd(end)])) return [];
        if (areAlike(station, from, to) || alike.has(lookOf(station, to))) return [];
        if (!isFree(station, cable, to) || !reaches(station, cable, end, to)) return [];
        const change = moveTo(station, cable, end, to, asDrawn);
        if (!change) return [];
        alike.add(lookOf(station, to));
        return [
          {
            id: `moved ${cable.id}.${end} ${to.unit}.${to.port}`,
            kind: 'moved',
            cables: [cable.id],
            at: [{ cable: cable.id, end }, from, to],
            change,
            words: `${cable.number} in ${portName(station, to)} instead of ${portName(station, from)}`,
          },
        ];
      });
    }),
  );
}

/** The same for jacks that a hand can't tell apart: alike ports of a unit, with the same ring or without any. */
const lookOf = (station: Station, to: PortRef): string =>
  `${to.unit} ${ringAt(station, to) ?? ''} ${looksOf(station, to)}`;

/** A plug as it is into another port; on a drawing that may be wrong with the plug that the port takes. */
function moveTo(station: Station, cable: Cable, end: CableEnd, to: PortRef, asDrawn: boolean): Change | null {
  if (goesIn(station, cable, end, to)) return replug(station, cable, { [end]: to });
  if (!asDrawn || cable.plugs?.[end] !== undefined || !isSameClass(station, cable, end, to)) return null;
  return moveCableEnd(station, cable.id, end, to);
}

/** Whether a port carries what the cable's other end carries. */
const isSameClass = (station: Station, cable: Cable, end: CableEnd, to: PortRef): boolean =>
  portOf(station, cable[otherEnd(end)]).port.class === portOf(station, to).port.class;

interface End {
  readonly cable: Cable;
  readonly end: CableEnd;
  readonly ref: PortRef;
}

/** Each two plugs that go into each other's jack. */
function exchanges(station: Station, isIn: IsIn, { asDrawn = false }: Scope): Act[] {
  const ends = station.cables.flatMap((cable) => cableEnds.map((end): End => ({ cable, end, ref: cable[end] })));
  return ends.flatMap((one, i) =>
    ends.slice(i + 1).flatMap((two): Act[] => {
      if (one.cable === two.cable || !isIn(one.cable, two.cable) || !areTogether(one.cable, two.cable)) return [];
      if (areAlike(station, one.ref, two.ref) || isBack(one, two) || isBack(two, one)) return [];
      if (!reaches(station, one.cable, one.end, two.ref) || !reaches(station, two.cable, two.end, one.ref)) return [];
      const change = exchange(station, one, two, asDrawn);
      if (!change) return [];
      const cables = [one.cable.id, two.cable.id];
      return [
        {
          id: `exchanged ${one.cable.id}.${one.end} ${two.cable.id}.${two.end}`,
          kind: 'exchanged',
          cables,
          at: [{ cable: one.cable.id, end: one.end }, { cable: two.cable.id, end: two.end }, one.ref, two.ref],
          change,
          words: `${exchangedWords(station, one, two)}`,
        },
      ];
    }),
  );
}

/** Whether a lead would come back to where its own other end is. */
const isBack = (one: End, two: End): boolean => isSamePort(two.ref, one.cable[otherEnd(one.end)]);

function exchange(station: Station, one: End, two: End, asDrawn: boolean): Change | null {
  const name = `Exchange ${one.cable.number} and ${two.cable.number}`;
  const first = moveTo(station, one.cable, one.end, two.ref, asDrawn);
  if (!first) return null;
  const between = edit(station, first);
  const cable = findCable(between, two.cable.id);
  const second = cable && moveTo(between, cable, two.end, one.ref, asDrawn);
  return second ? { type: 'all', name, changes: [first, second] } : null;
}

function exchangedWords(station: Station, one: End, two: End): string {
  const both = `${one.cable.number} and ${two.cable.number} exchanged`;
  if (one.ref.unit === two.ref.unit) return `${both} at ${portName(station, { unit: one.ref.unit })}`;
  return `${both}: ${one.cable.number} in ${portName(station, two.ref)}, ${two.cable.number} in ${portName(station, one.ref)}`;
}

/** Two leads that look the same and are not: each in the other's place, both ends. */
function mistaken(station: Station, isIn: IsIn): Act[] {
  return station.cables.flatMap((one, i) =>
    station.cables.slice(i + 1).flatMap((two): Act[] => {
      if (!isIn(one, two) || !areTogether(one, two) || isSameInside(one, two)) return [];
      if (!cableEnds.every((end) => goesIn(station, one, end, two[end]) && goesIn(station, two, end, one[end])))
        return [];
      const [first, second] = [
        { a: two.a, b: two.b },
        { a: one.a, b: one.b },
      ];
      const isLong = (cable: Cable, ends: { a: PortRef; b: PortRef }) =>
        reaches(station, { ...cable, a: ends.a }, 'b', ends.b);
      if (!isLong(one, first) || !isLong(two, second)) return [];
      return [
        {
          id: `mistaken ${one.id} ${two.id}`,
          kind: 'mistaken',
          cables: [one.id, two.id],
          at: [{ cable: one.id }, { cable: two.id }],
          change: {
            type: 'all',
            name: `Exchange ${one.number} and ${two.number}`,
            changes: [replug(station, one, first), replug(station, two, second)],
          },
          words: `${one.number} taken for ${two.number}, and ${two.number} for ${one.number}`,
        },
      ];
    }),
  );
}

const isSameInside = (one: Cable, two: Cable): boolean => insideOf(one) === insideOf(two);

/** What a hand can do with one lead alone: cross its cores, or lay it the other way round. */
function ownActs(station: Station, cable: Cable, { asDrawn = false }: Scope): Act[] {
  const acts: Act[] = [];
  const loose = cableEnds.find((end) => looseCores.includes(plugOf(station, cable, end)?.face ?? ''));
  const crossed = loose || asDrawn ? crossedChange(station, cable) : null;
  if (crossed) {
    const words = loose
      ? `The two cores of ${cable.number} crossed at ${portName(station, cable[loose])}`
      : `The two cores of ${cable.number} crossed`;
    acts.push({
      id: `crossed ${cable.id}`,
      kind: 'crossed',
      cables: [cable.id],
      at: [{ cable: cable.id, ...(loose && { end: loose }) }],
      change: crossed,
      words,
    });
  }
  const { a, b } = cable;
  if (isUneven(cable) && goesIn(station, cable, 'a', b) && goesIn(station, cable, 'b', a)) {
    acts.push({
      id: `turned ${cable.id}`,
      kind: 'turned',
      cables: [cable.id],
      at: [{ cable: cable.id }],
      change: replug(station, cable, { a: b, b: a }),
      words: `${cable.number} laid the other way round`,
    });
  }
  return acts;
}

/** Whether it matters which end of a lead is where. */
const isUneven = ({ fuse, wiring, screenAt }: Cable): boolean =>
  fuse !== undefined || screenAt !== undefined || (wiring?.some((row) => row.a !== row.b) ?? false);

/** Plus and minus changed over; a lead whose cores are then as they come needs no wiring of its own. */
function crossedChange(station: Station, cable: Cable): Change | null {
  const wiring = swappedWiring(station, cable);
  if (!wiring) return null;
  const bare = swappedWiring(station, { ...cable, wiring: undefined } as Cable);
  const isUsual =
    cable.wiring !== undefined &&
    bare !== null &&
    JSON.stringify(sorted(bare)) === JSON.stringify(sorted(cable.wiring));
  return { type: 'updateCable', id: cable.id, set: { wiring: isUsual ? undefined : wiring } };
}

const sorted = (rows: NonNullable<Cable['wiring']>) => rows.map(({ a, b }) => `${a} ${b}`).sort();

/** All leads on the two poles of a battery or supply crossed: the box itself the wrong way round. */
function reversed(station: Station, unit: Unit, isIn: IsIn): Act[] {
  return kindOf(station, unit).elements.flatMap((element): Act[] => {
    if (element.type !== 'battery' && element.type !== 'supply') return [];
    const port = element.plus.split('.')[0] ?? '';
    const ref = { unit: unit.id, port };
    const here = station.cables.filter((c) => isSamePort(c.a, ref) || isSamePort(c.b, ref));
    // A single lead is crossed by itself.
    if (here.length < 2 || !isIn(...here)) return [];
    const changes = here.map((cable) => crossedChange(station, cable));
    if (!changes.every((change) => change !== null)) return [];
    return [
      {
        id: `crossed ${unit.id}.${port}`,
        kind: 'crossed',
        cables: here.map((c) => c.id),
        at: [ref, ...here.map((c) => ({ cable: c.id }))],
        change: { type: 'all', name: `Turn ${unit.name} round`, changes },
        words: `${unit.name} the wrong way round: plus and minus crossed on ${here.map((c) => c.number).join(', ')}`,
      },
    ];
  });
}

/** Each switch in each of its other positions; where hook-ups set it for themselves, in all of those. */
function switches(station: Station, unit: Unit): Act[] {
  return (kindOf(station, unit).settings ?? []).flatMap((setting) => {
    const now = unit.settings?.[setting.id] ?? setting.initial;
    const own = station.hookups.filter((h) => h.settings?.[unit.id]?.[setting.id] !== undefined);
    return setting.options.flatMap((option): Act[] => {
      if (option.id === now && own.every((h) => h.settings?.[unit.id]?.[setting.id] === option.id)) return [];
      const set: Change = {
        type: 'updateUnit',
        id: unit.id,
        set: { settings: { ...unit.settings, [setting.id]: option.id } },
      };
      const changes = own.map((h): Change => {
        const settings = { ...h.settings, [unit.id]: { ...h.settings?.[unit.id], [setting.id]: option.id } };
        return { type: 'updateHookup', id: h.id, set: { settings } };
      });
      const label = setting.options.find((o) => o.id === now)?.label ?? now;
      return [
        {
          id: `switched ${unit.id}.${setting.id} ${option.id}`,
          kind: 'switched',
          cables: [],
          at: [{ unit: unit.id }],
          change: { type: 'all', name: `Set ${unit.name}`, changes: [set, ...changes] },
          words:
            option.id === now
              ? `${unit.name}: ${setting.label} at ${option.label} in every hook-up`
              : `${unit.name}: ${setting.label} at ${option.label} instead of ${label}`,
        },
      ];
    });
  });
}
