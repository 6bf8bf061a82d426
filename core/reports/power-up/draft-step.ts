import type { Place } from '../../station/place.ts';
import { formatQuantity } from './format-quantity.ts';
import { type Probe, type Setup, seenIn } from './setup.ts';
import type { Expected, OwnFigure, PowerUpPart, PowerUpQuantity, PowerUpStep } from './sheet.ts';
import { rangeOf } from './tolerance.ts';

/** How a step's reading is taken, so that it can be taken again with something failed. */
export interface Taking {
  readonly setup: Setup;
  readonly probe: Probe;
}

/** A step with the way in which its reading is worked out. */
export interface DraftStep extends PowerUpStep {
  readonly taking: Taking | null;
}

export interface DraftPart extends Omit<PowerUpPart, 'steps'> {
  readonly steps: readonly DraftStep[];
}

interface ToDo {
  readonly id: string;
  readonly text: string;
  readonly where?: string;
  readonly at?: readonly Place[];
}

/** Something to do, with nothing to read. */
export const doing = ({ id, text, where = '', at = [] }: ToDo): DraftStep => ({
  id,
  text,
  where,
  at,
  expected: null,
  warning: null,
  figure: null,
  taking: null,
});

interface ToRead extends ToDo {
  readonly taking: Taking;
  readonly quantity: PowerUpQuantity;
  /** Where an open circuit begins, in ohms; what electronics may show with all power off, if not given. */
  readonly openFrom?: number;
  /** The range where it is not that of the circuit's own figures. */
  readonly range?: ((value: number) => { readonly from: number; readonly to: number | null }) | undefined;
  /** It may be open or closed: nobody knows, and any reading is right. */
  readonly anyOhms?: boolean;
  /** What to say where metal alone makes less than a unit's electronics may show. */
  readonly shorts?: string;
  readonly limits?: { readonly minV: number; readonly maxV: number };
  readonly figure?: OwnFigure | undefined;
}

/** Something to read; nothing where the circuit has no such place. */
export function reading(given: ToRead): DraftStep[] {
  const { taking, quantity, limits, figure = null } = given;
  const value = taking.probe(seenIn(taking.setup));
  if (value === null && quantity !== 'ohm') return [];
  const expected: Expected = { quantity, value, ...boundsOf(given, value) };
  const short = given.shorts !== undefined && value !== null && value < shortOhms ? given.shorts : null;
  const warning = value === null || !limits ? short : warningOf(value, limits);
  return [{ ...doing(given), expected, warning, figure, taking }];
}

/** With all power off electronics may show some ohms; less than this is a short (common practice). */
const shortOhms = 20;

function boundsOf(
  { taking, quantity, range, openFrom = shortOhms, anyOhms = false }: ToRead,
  value: number | null,
): { from: number; to: number | null } {
  if (anyOhms) return { from: 0, to: null };
  if (value === null) return { from: openFrom, to: null };
  if (range) return range(value);
  if (quantity === 'V' || quantity === 'A' || quantity === 'ohm') return rangeOf(taking.setup, taking.probe, quantity);
  throw new Error(`no range for ${quantity}`);
}

function warningOf(volts: number, { minV, maxV }: { minV: number; maxV: number }): string | null {
  if (volts >= minV && volts <= maxV) return null;
  const window = `${minV} to ${maxV} V`;
  if (volts < -0.5)
    return `As drawn plus and minus are swapped here. Do not plug it in; put the drawing and the lead right first.`;
  const shows = formatQuantity(volts, 'V');
  if (volts > maxV) return `As drawn it gets ${shows}, and works on ${window}. Do not plug it in.`;
  return `As drawn it gets ${shows}, and works on ${window}.`;
}
