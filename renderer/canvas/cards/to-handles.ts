import { type NodeHandle, Position } from '@xyflow/react';
import type { CardSize } from './card-size.ts';

/** A side of a card as the drawing library calls it. */
export const handleSides = { left: Position.Left, right: Position.Right, top: Position.Top, bottom: Position.Bottom };

/** A port's touch target is so wide and high, with the port in its middle. */
const targetPx = 24;

/** A card's ports as the drawing library wants them. */
export const toHandles = (size: CardSize): NodeHandle[] =>
  size.ports.map(({ id, side, x, y }) => ({
    id,
    type: 'source',
    position: handleSides[side],
    x: x - targetPx / 2,
    y: y - targetPx / 2,
    width: targetPx,
    height: targetPx,
  }));
