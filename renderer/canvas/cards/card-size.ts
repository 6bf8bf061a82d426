import type { Port, UnitKind } from '../../../core/index.ts';
import { figureLetters, figureLines, ratingLine } from './figures.ts';
import { textWidth } from './text-width.ts';

type Side = Port['side'];

/** Where the middle of a port's face is, from the card's upper left corner. */
export interface PortSpot {
  readonly id: string;
  readonly label: string;
  readonly side: Side;
  readonly x: number;
  readonly y: number;
}

export interface CardSize {
  readonly width: number;
  readonly height: number;
  /** The tinted head: the name, and above it the labels of ports on the upper side. */
  readonly headHeight: number;
  /** Labels of ports on the upper side take so much of the head. */
  readonly nameTop: number;
  readonly ports: readonly PortSpot[];
}

/** Cards snap to this; ports sit on halves of it, so cables meet them on the routing grid. */
export const gridPx = 18;
/** The point of the grid that is nearest. */
export const onGrid = ({ x, y }: { x: number; y: number }) => ({
  x: Math.round(x / gridPx) * gridPx,
  y: Math.round(y / gridPx) * gridPx,
});

const pitchPx = 27;
const nameHeadPx = 27;
const figureLinePx = 18;
const widestNamePx = 190;

/**
 * A card's size and where its ports are. Head, figures, ports and the labels of upper and lower ports each have a band
 * of their own, so no label ever meets a figure. The size depends on kind and name only: it is the same at every moment.
 */
export function cardSize(kind: UnitKind, name: string): CardSize {
  const on = (side: Side) => kind.ports.filter((p) => p.side === side);
  const [left, right, top, bottom] = [on('left'), on('right'), on('top'), on('bottom')];
  const nameTop = top.length > 0 ? gridPx : 0;
  const headHeight = nameTop + nameHeadPx;
  const portsTop = headHeight + figureLines(kind) * figureLinePx;
  const rows = Math.max(left.length, right.length);
  const labelBand = bottom.some((p) => p.label) ? gridPx : 9;
  const height = roundUp(portsTop + rows * pitchPx + labelBand + (rows === 0 ? 9 : 0), gridPx);
  const width = roundUp(Math.max(widthOfText(kind, name), sideBySide(left, right), along(top), along(bottom)), gridPx);
  const spots: PortSpot[] = [
    ...left.map((p, i) => spot(p, 0, portsTop + gridPx + i * pitchPx)),
    ...right.map((p, i) => spot(p, width, portsTop + gridPx + i * pitchPx)),
    ...spread(top, width, 0),
    ...spread(bottom, width, height),
  ];
  return { width, height, headHeight, nameTop, ports: spots };
}

const roundUp = (value: number, step: number): number => Math.ceil(value / step) * step;

const spot = (port: Port, x: number, y: number): PortSpot => ({
  id: port.id,
  label: port.label,
  side: port.side,
  x,
  y,
});

function widthOfText(kind: UnitKind, name: string): number {
  const figures = figureLines(kind) === 0 ? 0 : Math.max(ratingLine(kind).length, figureLetters);
  return Math.max(
    72,
    Math.min(widestNamePx, textWidth(name, 14, 'bold')) + 24,
    textWidth('0'.repeat(figures), 11.5, 'mono') + 10,
  );
}

const labelRoom = (ports: readonly Port[]): number =>
  ports.length === 0 ? 0 : Math.max(...ports.map((p) => (p.label ? textWidth(p.label, 12) + 14 : 9)));

const sideBySide = (left: readonly Port[], right: readonly Port[]): number => labelRoom(left) + labelRoom(right) + 12;

const roomAlong = (ports: readonly Port[]): number =>
  roundUp(Math.max(pitchPx, ...ports.map((p) => textWidth(p.label, 12) + 8)), 9);

const along = (ports: readonly Port[]): number => (ports.length === 0 ? 0 : (ports.length + 0.5) * roomAlong(ports));

/** Ports along an upper or lower side, about the middle, on the routing grid. */
function spread(ports: readonly Port[], width: number, y: number): PortSpot[] {
  const step = roomAlong(ports);
  const first = Math.round((width - (ports.length - 1) * step) / 2 / 9) * 9;
  return ports.map((port, i) => spot(port, first + i * step, y));
}
