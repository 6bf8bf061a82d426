import type { Wire } from '../../station/schema/cable-kind.ts';

/** What is around a wire and keeps its heat in. */
export interface WireSurroundings {
  /** Air around the wire; a room at 20 °C if not given. */
  readonly ambientCelsius?: number | undefined;
  /** Conductors that carry current in one bundle; 1 if not given. */
  readonly bundled?: number | undefined;
}

/** A room, and the temperature that resistance tables are printed for. */
export const roomCelsius = 20;
/** The ambient temperature for which the ampacity tables are made. */
const tableCelsius = 30;

/** NEC 400.5: what each of so many current-carrying conductors in one sheath or bundle may carry; from 21 on from memory. */
const bundleSteps: readonly (readonly [from: number, factor: number])[] = [
  [1, 1],
  [4, 0.8],
  [7, 0.7],
  [10, 0.5],
  [21, 0.45],
  [31, 0.4],
  [41, 0.35],
];

/** The temperature that a wire's insulation stands, °C; one without a mark is a 60 °C cord (NEC 400.5). */
export const insulationOf = (wire: Wire): number => wire.insulationCelsius ?? 60;

/**
 * Share of the table's current in air of another temperature, by √((Tc − Ta) / (Tc − 30)), the law behind NEC
 * 310.15(B)(1); 0 where the air is as hot as the insulation stands. In cooler air it stays 1: the cautious tables are
 * for fuses, and a fuse does not know that the room is cool.
 *
 *     ambientFactor(60, 50) // 0.577
 */
export function ambientFactor(insulationCelsius: number, ambientCelsius: number): number {
  if (ambientCelsius <= tableCelsius) return 1;
  return Math.sqrt(Math.max(0, insulationCelsius - ambientCelsius) / Math.max(1, insulationCelsius - tableCelsius));
}

/** Share of the table's current for each of so many conductors that carry current side by side (NEC 400.5). */
export const bundleFactor = (conductors: number): number =>
  bundleSteps.findLast(([from]) => conductors >= from)?.[1] ?? 1;

/** The factor for a wire in its surroundings, and how it came about in words; empty words for a factor of 1. */
export function deratingOf(
  wire: Wire,
  { ambientCelsius = roomCelsius, bundled = 1 }: WireSurroundings,
): { readonly factor: number; readonly words: string } {
  const [air, bundle] = [ambientFactor(insulationOf(wire), ambientCelsius), bundleFactor(bundled)];
  const words = [
    ...(air < 1 ? [`, × ${air.toFixed(2)} at ${ambientCelsius} °C`] : []),
    ...(bundle < 1 ? [`, × ${bundle.toFixed(2)} as one of ${bundled} in a bundle`] : []),
  ];
  return { factor: air * bundle, words: words.join('') };
}
