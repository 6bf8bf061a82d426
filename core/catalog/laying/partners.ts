import { portOf } from '../../station/parts.ts';
import type { PortRef, Station } from '../../station/schema/schema.ts';
import type { Port, UnitKind } from '../../station/schema/unit-kind.ts';
import { connectors as catalogue } from '../connectors.ts';
import { judgePair, type PairVerdict } from '../fit.ts';
import type { ShelfKind } from '../kinds/index.ts';
import { flowOf } from './port-use.ts';

/** A port that a cable from another one could go to. */
export interface Partner {
  readonly ref: PortRef;
  readonly verdict: PairVerdict;
  /** It has a cable already, in any hook-up. */
  readonly taken: boolean;
}

/** A unit kind of the shelf that a cable could go to, and the port where it would. */
export interface NewPartner {
  readonly kind: ShelfKind;
  readonly port: Port;
}

const fitScore = { mates: 0, adapter: 40, misfit: 60, none: 100 };

/**
 * All ports that a cable from this one could end at, likeliest first: what fits before what doesn't, what takes before
 * what gives for a port that gives, free before taken, ports named for the other unit or with the same name first.
 */
export function findPartners(station: Station, from: PortRef): readonly Partner[] {
  const start = endOf(station, from);
  const taken = new Set(station.cables.flatMap(({ a, b }) => [nameOf(a), nameOf(b)]));
  const found = station.units.flatMap((unit) =>
    (station.kinds[unit.kind]?.ports ?? []).flatMap((port) => {
      const ref = { unit: unit.id, port: port.id };
      if (nameOf(ref) === nameOf(from)) return [];
      const partner = { ref, verdict: judgePair(station, from, ref), taken: taken.has(nameOf(ref)) };
      const own = unit.id === from.unit ? 30 : 0;
      const score =
        fitScore[partner.verdict.fit] + (partner.taken ? 12 : 0) + own + unlikeness(start, endOf(station, ref));
      return [{ partner, score }];
    }),
  );
  // Sorting is stable: what is alike stays in the order of the drawing.
  return found.sort((p, q) => p.score - q.score).map((f) => f.partner);
}

/** The unit kinds of a shelf that have a port for a cable from this one, likeliest first, each with its best port. */
export function findNewPartners(station: Station, from: PortRef, shelf: readonly ShelfKind[]): readonly NewPartner[] {
  const start = endOf(station, from);
  const found = shelf.flatMap((kind) => {
    const ports = kind.kind.ports
      .filter((port) => port.class === start.port.class)
      .map((port) => ({ port, score: unlikeness(start, { kind: kind.kind, port, name: kind.kind.name }) }))
      .sort((p, q) => p.score - q.score);
    const [best] = ports;
    return best && best.score < unfit ? [{ kind, ...best }] : [];
  });
  return found.sort((p, q) => p.score - q.score).map(({ kind, port }) => ({ kind, port }));
}

interface End {
  readonly kind: UnitKind;
  readonly port: Port;
  readonly name: string;
}

const nameOf = ({ unit, port }: PortRef): string => `${unit}.${port}`;

function endOf(station: Station, ref: PortRef): End {
  const { unit, port } = portOf(station, ref);
  const kind = station.kinds[unit.kind];
  if (!kind) throw new Error(`no unit kind ${unit.kind}`);
  return { kind, port, name: unit.name };
}

/**
 * How unlikely a cable between two ports is, by what they carry, give or take and are called: 0 is a pair that is named
 * for each other and fits by one plug.
 */
export const unlikelihood = (station: Station, a: PortRef, b: PortRef): number =>
  fitScore[judgePair(station, a, b).fit] +
  (a.unit === b.unit ? 30 : 0) +
  unlikeness(endOf(station, a), endOf(station, b));

/** Two ports that both give, or both take, are seldom joined. */
const unfit = 20;

/** How far two ports are from belonging together: 0 is a pair that is named for each other and fits by one plug. */
function unlikeness(one: End, other: End): number {
  const flows = [flowOf(one.kind, one.port), flowOf(other.kind, other.port)];
  const against = flows[0] === flows[1] && flows[0] !== 'either' ? unfit : 0;
  const apart = one.port.class === 'dc' ? handedOn(one, other) : unlikeNames(one, other);
  return against + apart + (familyOf(one.port) === familyOf(other.port) ? 0 : 1);
}

/** Power goes from a supply to a box that hands it on, and from there to what uses it. */
const handedOn = (one: End, other: End): number => (isDirect(one) && isDirect(other) ? 4 : 0);

const isDirect = ({ kind, port }: End): boolean =>
  kind.elements.some((e) => e.type !== 'conductor' && 'plus' in e && e.plus.startsWith(`${port.id}.`));

function unlikeNames(one: End, other: End): number {
  const named = isNamedFor(one.port, other) || isNamedFor(other.port, one) ? 0 : 4;
  return named + (one.port.label !== '' && one.port.label === other.port.label ? 0 : 2);
}

const familyOf = (port: Port): string | undefined => catalogue[port.connector]?.family;

/** The port `receiver` of a changeover is named for a unit called Receiver, or one of a kind that is called so. */
function isNamedFor(port: Port, other: End): boolean {
  const names = wordsOf(`${other.name} ${other.kind.name}`);
  return wordsOf(port.label).some((word) => names.includes(word));
}

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 2);
