import type { Facts } from '../../rules/rule.ts';
import { isOutdoor } from '../../station/outdoors.ts';
import { classOf } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import type { Cable, CableEnd, Hookup, Station } from '../../station/schema/schema.ts';
import type { PortClass } from '../../station/schema/unit-kind.ts';
import { seenIn } from './setup.ts';
import type { Workings } from './workings.ts';

/** A lead by which something outdoors comes into the house. */
export interface ComingIn {
  readonly cable: Cable;
  /** The end indoors, where it is unplugged. */
  readonly end: CableEnd;
  readonly class: PortClass;
  /** The hook-ups that have it; none where all do. */
  readonly only: readonly Hookup[];
  /** The most volts that stand on its loose plug while all else is on: more than none where a source is outdoors. */
  readonly volts: number;
}

/**
 * Every such lead but the wires to earth, which stay where they are. One between two things outdoors does not come in.
 */
export const comingIn = ({ station, hookups }: Facts, workings: Workings): ComingIn[] =>
  station.cables.flatMap((cable): ComingIn[] => {
    const [a, b] = [isOutdoor(station, cable.a.unit), isOutdoor(station, cable.b.unit)];
    if (a === b || classOf(station, cable) === 'earth') return [];
    const end = a ? 'b' : 'a';
    const all = hookups.map(({ hookup }) => hookup);
    const having = all.filter(({ id }) => !cable.hookups || cable.hookups.includes(id));
    // Plugged in nowhere: nothing is known of what stands on it.
    if (having.length === 0) return [];
    const volts = Math.max(0, ...having.map((hookup) => voltsOnPlug(workings, station, hookup, cable, end)));
    return [{ cable, end, class: classOf(station, cable), only: having.length < all.length ? having : [], volts }];
  });

/** Less than this a finger and an ohmmeter don't mind. What wind and rain charge is in no circuit. */
const deadVolts = 0.1;

export const isLive = ({ volts }: ComingIn): boolean => volts >= deadVolts;

function voltsOnPlug(workings: Workings, station: Station, hookup: Hookup, cable: Cable, end: CableEnd): number {
  const pulled = [{ cable: cable.id, end }];
  const { circuit, dc } = seenIn({ station, hookup, pulled, control: null, powered: true, workings });
  const nodes = (plugOf(station, cable, end)?.contacts ?? []).flatMap(
    ({ id }) => circuit.nodeOf.get(`cable ${cable.id}.${end}.${id}`) ?? [],
  );
  const between = nodes.flatMap((one, i) => nodes.slice(i + 1).map((other) => Math.abs(dc?.between(one, other) ?? 0)));
  return Math.max(0, ...between);
}
