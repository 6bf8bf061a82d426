import type { ElementOf } from '../station/schema/unit-kind.ts';

type Chemistry = ElementOf<'battery'>['chemistry'];

/** `[state of charge, volts at rest]` of a 12 V battery, rising. */
const restTables: Record<Chemistry, readonly (readonly [number, number])[]> = {
  // Flooded lead-acid at 26.7 °C: BCI open-circuit voltages.
  leadAcid: [
    [0, 11.89],
    [0.25, 12.06],
    [0.5, 12.24],
    [0.75, 12.45],
    [1, 12.65],
  ],
  // Sealed, glass mat: from memory, 0.1 to 0.2 V above flooded.
  agm: [
    [0, 11.8],
    [0.25, 12.0],
    [0.5, 12.3],
    [0.75, 12.6],
    [1, 12.85],
  ],
  // Four cells, rested: published table of a 12.8 V LiFePO4 battery; flat in the middle, so a poor gauge.
  lifepo4: [
    [0, 10.0],
    [0.1, 12.0],
    [0.2, 12.8],
    [0.3, 13.0],
    [0.4, 13.2],
    [0.7, 13.3],
    [0.9, 13.4],
    [0.99, 13.6],
    [1, 13.6],
  ],
};

/** The charges at which the table of a chemistry has a point, rising. */
export const restCharges = (chemistry: Chemistry): readonly number[] => restTables[chemistry].map(([charge]) => charge);

/** Volts of a rested 12 V battery at a state of charge from 0 to 1, straight between the table's points. */
export function restVolts(chemistry: Chemistry, charge: number): number {
  const table = restTables[chemistry];
  const above = table.findIndex(([c]) => c >= charge);
  const [high, low] = [table[above] ?? table.at(-1), table[above - 1]];
  if (!high) throw new Error(`no table for ${chemistry}`);
  if (!low || high[0] === low[0]) return high[1];
  return low[1] + ((high[1] - low[1]) * (charge - low[0])) / (high[0] - low[0]);
}

/**
 * Hours that a full battery lasts at a constant current: t = H·(C/(I·H))^k, with C the capacity at the H-hour rate
 * (Peukert, in the form that is normalised to the rated capacity). No current lasts for ever.
 */
export function peukertHours(ampHours: number, amps: number, exponent: number, ratedHours = 20): number {
  return amps <= 0 ? Number.POSITIVE_INFINITY : ratedHours * (ampHours / (amps * ratedHours)) ** exponent;
}

/**
 * Peukert's exponent where a battery states none: 1.3 for flooded lead-acid (texts give 1.2 to 1.6), 1.1 for glass mat
 * (1.05 to 1.15), 1.03 for LiFePO4 (from memory: 1.02 to 1.05).
 */
export const usualPeukert: Readonly<Record<Chemistry, number>> = { leadAcid: 1.3, agm: 1.1, lifepo4: 1.03 };
