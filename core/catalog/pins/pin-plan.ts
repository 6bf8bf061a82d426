/** Where a contact is: millimetres from the middle of the connector, x to the right, y downwards. */
export interface PinSpot {
  readonly id: string;
  readonly x: number;
  readonly y: number;
}

/** How the contacts of a plug lie, as one sees them while soldering. */
export interface PinPlan {
  /** A circle, a D, a modular plug, or a plain box. */
  readonly outline: 'round' | 'd' | 'modular' | 'box';
  readonly widthMm: number;
  readonly heightMm: number;
  /** Where its key or notch is, if it has one. */
  readonly key: 'top' | 'bottom' | null;
  readonly pins: readonly PinSpot[];
  /** From where it is seen. */
  readonly view: string;
  readonly source: string;
}

/** The side of a plug on which the wires are. */
export const solderSide = 'seen from the solder side';
