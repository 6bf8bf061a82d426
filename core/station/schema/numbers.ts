import { z } from 'zod';
import { quantityBounds } from '../../quantity/bounds.ts';
import type { QuantityKind } from '../../quantity/parse.ts';

// Compiled parsers need `eval`, which the page policy of the desktop app forbids.
z.config({ jitless: true });

const within = (kind: QuantityKind) => z.number().min(quantityBounds[kind].least).max(quantityBounds[kind].most);

export const volts = within('V');
export const amps = within('A');
export const ohms = within('ohm');
export const watts = within('W');
export const dbm = within('dBm');
export const decibels = within('dB');
export const milliseconds = within('ms');
export const metres = within('m');
export const hertz = within('Hz');
export const share = z.number().min(0).max(1);

/** Characters of an id. */
export const longestId = 80;

export const id = z
  .string()
  .min(1)
  .max(longestId)
  .regex(/^[A-Za-z0-9][A-Za-z0-9._-]*$/, 'an id is letters, digits, dots, dashes or underscores');

export const text = z.string().max(20_000);
