import type { Resistor } from '../../circuit/circuit.ts';
import { findCable, kindOf, portName, unitOf } from '../../station/parts.ts';
import type { Place } from '../../station/place.ts';
import type { Station } from '../../station/schema/schema.ts';

/** Where a fuse sits: in a cable, or at the unit that holds it, by the port that it feeds. */
export function fusePlace(station: Station, part: Resistor): Place {
  const { origin } = part;
  if (origin.type === 'cableFuse') return { cable: origin.cable };
  if (origin.type !== 'element') throw new Error('a fuse is in a cable or is an element');
  const port = fedPort(station, origin.unit, origin.element);
  return { unit: origin.unit, ...(port !== undefined && { port }) };
}

/** `The fuse in D1`, `The fuse of Fused strip · 3`. */
export const fuseName = (station: Station, part: Resistor): string =>
  `The fuse ${part.origin.type === 'cableFuse' ? 'in' : 'of'} ${fuseSeat(station, part)}`;

/** `D1`, `Fused strip · 3`: where a fuse sits, in words. */
export function fuseSeat(station: Station, part: Resistor): string {
  const place = fusePlace(station, part);
  if ('cable' in place) return findCable(station, place.cable)?.number ?? place.cable;
  const { unit, port } = place;
  return port === undefined ? unitOf(station, unit).name : portName(station, { unit, port });
}

/** The port that a fuse inside a unit leads to, or comes from; undefined for one between two inner joints. */
function fedPort(station: Station, unitId: string, element: string): string | undefined {
  const kind = kindOf(station, unitOf(station, unitId));
  const fuse = kind.elements.find((e) => e.id === element);
  if (fuse?.type !== 'conductor') return undefined;
  const ports = new Set(kind.ports.map((p) => p.id));
  return [fuse.to, fuse.from].map((ref) => ref.split('.')[0] ?? '').find((id) => ports.has(id));
}
