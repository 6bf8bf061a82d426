import type { Place } from '../../station/place.ts';

/** The parts of a power-up sheet, in the order in which they are done. */
export const powerUpParts = [
  'unpowered',
  'supply',
  'distribution',
  'units',
  'lines',
  'dummy',
  'antenna',
  'eyes',
  'storm',
  'spares',
] as const;
export type PowerUpPartId = (typeof powerUpParts)[number];

export type PowerUpQuantity = 'V' | 'A' | 'ohm' | 'W' | 'swr';

/** An open circuit as a reading, in ohms: more than a hand meter shows. */
export const openOhms = 1e9;

/** What a meter should show. */
export interface Expected {
  readonly quantity: PowerUpQuantity;
  /** Null for an open circuit. */
  readonly value: number | null;
  /** Right from here up to `to`; `to` is null where there is no upper bound. */
  readonly from: number;
  readonly to: number | null;
}

/** A figure of a unit that a reading can take the place of. */
export interface OwnFigure {
  readonly unit: string;
  /** As in the unit's own figures: `output.volts`. */
  readonly key: string;
  /** What it is called: `Bench supply’s voltage`. */
  readonly name: string;
  /** The figure now, which gives the expected reading. */
  readonly given: number;
  /** What the figure grows by for each volt or ampere of the reading; for watts it is a level in dBm. */
  readonly per: number | 'dBm';
}

/** One thing to do, and what to read where there is something to read. */
export interface PowerUpStep {
  /** The same as long as the place is there; the document's readings name it. */
  readonly id: string;
  /** What to do, as a sentence. */
  readonly text: string;
  /** Where, in words; empty where the sentence says it. */
  readonly where: string;
  readonly at: readonly Place[];
  readonly expected: Expected | null;
  /** Why not to go on, where the drawing itself is wrong here. */
  readonly warning: string | null;
  readonly figure: OwnFigure | null;
}

export interface PowerUpPart {
  readonly id: PowerUpPartId;
  readonly title: string;
  /** What to have in mind before it. */
  readonly before: string;
  readonly steps: readonly PowerUpStep[];
}

/** A sentence about units, and their names. */
export interface Caution {
  readonly units: string;
  readonly text: string;
}

/** The whole sheet: plain data that can cross to another thread. */
export interface PowerUpSheet {
  /** Open dangers and faults of the drawing, to be put right first. */
  readonly first: readonly string[];
  /** The hook-up that all but the antenna's part is done in. */
  readonly hookup: string;
  readonly parts: readonly PowerUpPart[];
  /** What the units' kinds warn of, each once with all units that it is about. */
  readonly cautions: readonly Caution[];
}
