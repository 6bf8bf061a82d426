import type { Wire } from '../../station/schema/cable-kind.ts';
import { deratingOf, insulationOf, roomCelsius, type WireSurroundings } from './derating.ts';
import { acFuse, acHarness24, cfrColumns, cfrTable, iecClass5, necSmall } from './wire-tables.ts';

export interface WireLimit {
  readonly amps: number;
  /** Table and column, and what was done with it. */
  readonly source: string;
}

/** The share of a supply's voltage that may be lost on the way where the station sets no limit: NEC 215.2(A), note. */
export const usualDrop = 0.05;

/** Ω·mm²/m of annealed copper at 20 °C: the international standard of NBS Handbook 100 and IEC 60028. */
const resistivity = 1 / 58;
/** AC 43.13-1B, paragraph 11-66: copper would have no resistance at -234.5 °C. */
const zeroCelsius = 234.5;

/**
 * Diameter in millimetres of a gauge number; 0 is 1/0, -3 is 4/0. ASTM B258: 39 equal steps from 0.127 mm (No. 36) to
 * 11.684 mm (No. 0000).
 *
 *     awgDiameterMm(10) // 2.5882
 */
export const awgDiameterMm = (awg: number): number => 0.127 * 92 ** ((36 - awg) / 39);

/** Area in square millimetres of a gauge number: `awgAreaMm2(12)` is 3.3088. */
export const awgAreaMm2 = (awg: number): number => (Math.PI / 4) * awgDiameterMm(awg) ** 2;

/** Area of a wire in square millimetres; worked back from its resistance where only that is given; null if unknown. */
function areaMm2(wire: Wire): number | null {
  if (wire.mm2 !== undefined) return wire.mm2;
  if (wire.awg !== undefined) return awgAreaMm2(wire.awg);
  return wire.ohmsPerM ? resistivity / wire.ohmsPerM : null;
}

/**
 * Ohms per metre of one conductor, at 20 °C where no other temperature of the copper is given: the wire's own figure,
 * solid copper for a gauge, the greatest value of IEC 60228 class 5 (plain) for an area it lists, else resistivity over
 * area. A wire of which nothing is known is taken as AWG 24, the thinnest usual core.
 *
 *     wireOhmsPerM({ awg: 14 }) // 0.0082853
 */
export const wireOhmsPerM = (wire: Wire, celsius = roomCelsius): number => resistanceAt(ohmsPerMAt20(wire), celsius);

function ohmsPerMAt20(wire: Wire): number {
  if (wire.ohmsPerM !== undefined) return wire.ohmsPerM;
  if (wire.awg !== undefined) return resistivity / awgAreaMm2(wire.awg);
  if (wire.mm2 === undefined) return resistivity / awgAreaMm2(24);
  const listed = iecClass5[wire.mm2];
  return listed === undefined ? resistivity / wire.mm2 : listed / 1000;
}

/** Copper's resistance at another temperature than 20 °C, by R20 (234.5 + t) / 254.5 (AC 43.13-1B, 11-66). */
export const resistanceAt = (ohms20: number, celsius: number): number =>
  ohms20 * ((zeroCelsius + celsius) / (zeroCelsius + roomCelsius));

/** `AWG 24`, `AWG 2/0`, `1.5 mm²`; by its resistance where it has neither. */
export function wireName(wire: Wire): string {
  if (wire.awg !== undefined) return wire.awg > 0 ? `AWG ${wire.awg}` : `AWG ${1 - wire.awg}/0`;
  if (wire.mm2 !== undefined) return `${wire.mm2} mm²`;
  return wire.ohmsPerM === undefined ? 'wire of unknown size' : `${+(wire.ohmsPerM * 1000).toPrecision(3)} mΩ/m`;
}

/**
 * The largest current that a fuse may let through a wire for good, by the most cautious published figure at hand:
 * NEC 240.4(D) for 18 to 10 AWG, the fuse column of AC 43.13-1B table 11-3 for 22, 20 and for 8 to 2 AWG, its table
 * 11-9 (harness, 70 °C) for 24 AWG. A size between two gauges, and every metric one, takes the figure of the next
 * thinner gauge; one thinner than 24 AWG takes that of 24 AWG by the ratio of areas; one thicker than 2 AWG that of 2
 * AWG. The wire's own `ampacityA` goes before all. Heat around it and a bundle lower it. Null where no size is known.
 *
 *     wireLimitAmps({ mm2: 1.5 }) // { amps: 10, source: 'NEC 240.4(D), as 16 AWG' }
 *     wireLimitAmps({ awg: 14 }, { bundled: 5 }) // { amps: 12, source: 'NEC 240.4(D), × 0.80 as one of 5 in a bundle' }
 */
export function wireLimitAmps(wire: Wire, around: WireSurroundings = {}): WireLimit | null {
  const limit = tableLimit(wire);
  if (!limit) return null;
  const { factor, words } = deratingOf(wire, around);
  return { amps: limit.amps * factor, source: limit.source + words };
}

function tableLimit(wire: Wire): WireLimit | null {
  if (wire.ampacityA !== undefined) return { amps: wire.ampacityA, source: 'the cable’s own figure' };
  const area = areaMm2(wire);
  if (area === null) return null;
  const gauge = thinnerGauge(area, limits);
  if (!gauge) {
    const share = area / awgAreaMm2(24);
    return { amps: acHarness24.amps * share, source: `${acHarness24.source}, 24 AWG scaled by area` };
  }
  const { amps, source } = gauge;
  return { amps, source: wire.awg === gauge.awg ? source : `${source}, as ${gauge.awg} AWG` };
}

/**
 * The largest current that any published table here allows a single wire: 33 CFR 183.425 table 5 (boats), by the
 * column that its insulation reaches. A size between takes the next thinner gauge; heat and a bundle lower it. Null
 * below 18 AWG, where the table ends, and for insulation below 60 °C.
 */
export function wireUpperAmps(wire: Wire, around: WireSurroundings = {}): WireLimit | null {
  const area = areaMm2(wire);
  const row = area === null ? undefined : thinnerGauge(area, cfrTable);
  const column = cfrColumns.findLast((celsius) => celsius <= insulationOf(wire));
  const amps = column === undefined ? undefined : row?.amps[cfrColumns.indexOf(column)];
  if (amps === undefined) return null;
  const { factor, words } = deratingOf(wire, around);
  return { amps: amps * factor, source: `33 CFR 183.425 table 5, ${column} °C${words}` };
}

/**
 * The largest fuse that any published rule here allows before a wire below 50 V: 150 % of what 33 CFR 183.425 lets it
 * carry (33 CFR 183.455(c)(1)). An upper bound for boats, not advice: the wire is hotter than it is rated for well
 * before such a fuse opens. Null where that table has no figure.
 */
export function fuseUpperAmps(wire: Wire, around: WireSurroundings = {}): WireLimit | null {
  const wires = wireUpperAmps(wire, around);
  return wires && { amps: 1.5 * wires.amps, source: `33 CFR 183.455(c), 150 % of ${wires.source}` };
}

interface GaugeLimit extends WireLimit {
  readonly awg: number;
}

const limits: readonly GaugeLimit[] = [
  { awg: 24, ...acHarness24 },
  ...acFuse.filter(([awg]) => awg > 18).map(([awg, amps]) => ({ awg, amps, source: 'AC 43.13-1B table 11-3, fuse' })),
  ...necSmall.map(([awg, amps]) => ({ awg, amps, source: 'NEC 240.4(D)' })),
  ...acFuse.filter(([awg]) => awg < 10).map(([awg, amps]) => ({ awg, amps, source: 'AC 43.13-1B table 11-3, fuse' })),
];

/** The thickest listed gauge that is no thicker than this area; lists run from thin to thick. */
function thinnerGauge<T extends { awg: number }>(area: number, rows: readonly T[]): T | undefined {
  // A hair's breadth of slack: the area of a gauge number worked out twice has to be found again.
  return rows.findLast((row) => awgAreaMm2(row.awg) <= area * (1 + 1e-9));
}
