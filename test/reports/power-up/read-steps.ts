import { openOhms, type PowerUpStep } from '../../../core/reports/power-up/sheet.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { powerUpSheet } from './power-up-sheet.ts';

/** The steps of a station's sheet that have something to read, in their order. */
export const stepsToRead = (station: Station): (PowerUpStep & { expected: NonNullable<PowerUpStep['expected']> })[] =>
  powerUpSheet(station)
    .parts.flatMap((part) => part.steps)
    .flatMap((step) => (step.expected ? [{ ...step, expected: step.expected }] : []));

/** What a meter would show at each step of a station. */
export const readingsOf = (station: Station): Map<string, number> =>
  new Map(stepsToRead(station).map(({ id, expected }) => [id, expected.value ?? openOhms]));

/** A station with the user's own figures for a unit. */
export const withOwn = (station: Station, unit: string, own: Record<string, number>): Station => ({
  ...station,
  units: station.units.map((u) => (u.id === unit ? { ...u, overrides: { ...u.overrides, ...own } } : u)),
});
