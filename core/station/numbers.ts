import { z } from 'zod';

// Compiled parsers need `eval`, which the page policy of the desktop app forbids.
z.config({ jitless: true });

// Bounds keep a slip of the finger (or a damaged file) from becoming a result; they are wider than any station.
const upTo = (most: number) => z.number().min(0).max(most);

export const volts = z.number().min(-100_000).max(100_000);
export const amps = upTo(100_000);
export const ohms = upTo(1e12);
export const watts = upTo(1e6);
export const dbm = z.number().min(-250).max(120);
export const decibels = z.number().min(-200).max(300);
export const milliseconds = upTo(600_000);
export const metres = upTo(10_000);
export const hertz = upTo(1e12);
export const share = z.number().min(0).max(1);

export const id = z
  .string()
  .min(1)
  .max(80)
  .regex(/^[A-Za-z0-9][A-Za-z0-9._-]*$/, 'an id is letters, digits, dots, dashes or underscores');

export const text = z.string().max(20_000);
