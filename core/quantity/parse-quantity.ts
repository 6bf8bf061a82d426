import { wattsFromDbm } from './decibel.ts';

/** What a field holds; the result is always in the unit named here. */
export type QuantityKind = 'V' | 'A' | 'W' | 'dBm' | 'dB' | 'ohm' | 'm' | 'ms' | 'Hz' | 'number';

/** The number that a person typed, in the field's own unit, or a sentence that says what was wrong. */
export type ParsedQuantity = { value: number } | { problem: string };

const prefixFactors: Record<string, number> = {
  G: 1e9,
  M: 1e6,
  k: 1e3,
  K: 1e3,
  '': 1,
  m: 1e-3,
  u: 1e-6,
  µ: 1e-6,
  μ: 1e-6,
  n: 1e-9,
};

const unitNames: Record<QuantityKind, readonly string[]> = {
  V: ['V', 'volt', 'volts'],
  A: ['A', 'amp', 'amps'],
  W: ['W', 'watt', 'watts'],
  dBm: ['dBm'],
  dB: ['dB'],
  ohm: ['Ω', 'ohm', 'ohms', 'R'],
  m: ['m', 'metre', 'metres', 'meter', 'meters'],
  ms: ['s', 'sec'],
  Hz: ['Hz'],
  number: [''],
};

/** Factors for units that are not a prefix and the kind's own unit. */
const otherUnits: Partial<Record<QuantityKind, Record<string, number>>> = {
  m: {
    ft: 0.3048,
    feet: 0.3048,
    foot: 0.3048,
    "'": 0.3048,
    in: 0.0254,
    inch: 0.0254,
    '"': 0.0254,
    cm: 0.01,
    mm: 0.001,
  },
  number: { '%': 0.01 },
};

/**
 * Reads what people type into a field: `13.8`, `13,8 V`, `20 ft`, `200 mW`, `+10 dBm`, `2 ft 6 in`.
 * A bare number is in the kind's own unit; a comma is a decimal comma; watts may be typed as dBm and the other
 * way round. Nothing is thrown: what can't be read comes back as a sentence.
 */
export function parseQuantity(text: string, kind: QuantityKind): ParsedQuantity {
  const clean = text.trim().replace(/[−–]/g, '-');
  if (clean === '') return { problem: 'Nothing is entered.' };
  if (kind === 'm') {
    const feetInches = /^(\d+(?:[.,]\d+)?)\s*(?:ft|feet|')\s*(\d+(?:[.,]\d+)?)\s*(?:in|inch|")$/.exec(clean);
    if (feetInches) return { value: decimal(feetInches[1] ?? '') * 0.3048 + decimal(feetInches[2] ?? '') * 0.0254 };
  }
  const match = /^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d+)?)\s*(.*)$/.exec(clean);
  if (!match) return { problem: `“${text.trim()}” is not a number.` };
  const number = decimal(match[1] ?? '');
  const factor = unitFactor((match[2] ?? '').trim(), kind);
  if (factor === null) return { problem: `“${match[2]}” is not a unit that fits here; use ${unitLabel(kind)}.` };
  const value = typeof factor === 'function' ? factor(number) : number * factor;
  return Number.isFinite(value) ? { value } : { problem: `“${text.trim()}” is too large.` };
}

const decimal = (text: string): number => Number(text.replace(',', '.'));

const unitLabel = (kind: QuantityKind): string => (kind === 'number' ? 'a plain number' : kind === 'ohm' ? 'Ω' : kind);

function unitFactor(unit: string, kind: QuantityKind): number | ((n: number) => number) | null {
  if (unit === '') return 1;
  const other = otherUnits[kind]?.[unit];
  if (other !== undefined) return other;
  // Resistors are written so: 4.7k, 1M.
  if (kind === 'ohm' && prefixFactors[unit] !== undefined) return prefixFactors[unit] ?? null;
  if (kind === 'W' && unit === 'dBm') return wattsFromDbm;
  for (const name of unitNames[kind]) {
    if (name !== '' && unit.toLowerCase().endsWith(name.toLowerCase())) {
      const prefix = prefixFactors[unit.slice(0, unit.length - name.length)];
      if (prefix !== undefined) return kind === 'ms' ? prefix * 1000 : prefix;
    }
  }
  if (kind === 'dBm') {
    const watts = unitFactor(unit, 'W');
    return typeof watts === 'number' ? (n) => 10 * Math.log10(n * watts) + 30 : null;
  }
  return null;
}
