import type { Coax, Wire } from '../../station/schema/cable-kind.ts';

/** A generic type of coax: line figures and the DC resistance of its two conductors. */
export interface CoaxType extends Coax {
  readonly name: string;
  readonly centre: Wire;
  readonly outer: Wire;
  readonly source: string;
}

type Points = Coax['points'];

/** Points printed in dB per 100 feet, as `[MHz, dB]`, in the dB per 100 metres of the model. */
const per100Feet = (points: Points): Points => points.map(([mhz, db]) => [mhz, +(db * 3.28084).toFixed(3)]);

const shields = 'conductor resistances from memory';

/**
 * Attenuation points as printed for each generic type. Makers differ by 15 to 25 % under one RG number; `tolerance`
 * is that share. Voltages are rms working voltages of the military types; of foam types from memory.
 */
export const coaxTypes: Readonly<Record<string, CoaxType>> = {
  'rg-58': {
    name: 'RG-58',
    z0: 50,
    velocityFactor: 0.66,
    points: per100Feet([
      [1, 0.4],
      [10, 1.5],
      [50, 3.7],
      [100, 5.4],
      [200, 8.1],
      [400, 12.4],
      [700, 17.7],
      [900, 21.1],
      [1000, 22.8],
    ]),
    tolerance: 0.2,
    maxVolts: 1400,
    centre: { ohmsPerM: 0.036 },
    outer: { ohmsPerM: 0.014 },
    source: `RG-58A/U data sheet, typical, dB per 100 ft; MIL-C-17/28 voltage; ${shields}`,
  },
  'rg-213': {
    name: 'RG-213',
    z0: 50,
    velocityFactor: 0.66,
    points: per100Feet([
      [1, 0.27],
      [10, 0.55],
      [50, 1.3],
      [100, 1.9],
      [200, 2.7],
      [400, 4.1],
      [700, 6.5],
      [900, 7.6],
      [1000, 8],
    ]),
    tolerance: 0.15,
    maxVolts: 3700,
    centre: { ohmsPerM: 0.006 },
    outer: { ohmsPerM: 0.004 },
    source: `RG-213/U data sheet, typical, dB per 100 ft; MIL-C-17/74 voltage; ${shields}`,
  },
  'rg-174': {
    name: 'RG-174',
    z0: 50,
    velocityFactor: 0.66,
    points: per100Feet([
      [1, 1.9],
      [10, 3.3],
      [50, 5.8],
      [100, 8.4],
      [200, 12.5],
      [400, 19],
      [700, 27],
      [900, 31],
      [1000, 34],
    ]),
    tolerance: 0.2,
    maxVolts: 1100,
    centre: { ohmsPerM: 0.32 },
    outer: { ohmsPerM: 0.03 },
    source: `RG-174/U data sheet, typical, dB per 100 ft; steel centre; ${shields}`,
  },
  'rg-8x': {
    name: 'RG-8X',
    z0: 50,
    velocityFactor: 0.8,
    points: per100Feet([
      [1, 0.3],
      [10, 0.9],
      [50, 2.1],
      [100, 3.1],
      [200, 4.5],
      [400, 6.6],
      [700, 9.1],
      [900, 10.7],
      [1000, 11.2],
    ]),
    tolerance: 0.2,
    maxVolts: 600,
    centre: { ohmsPerM: 0.0132 },
    outer: { ohmsPerM: 0.01 },
    source: `RG-8X data sheet, typical, dB per 100 ft; 600 V and velocity (0.78 to 0.82) from memory; ${shields}`,
  },
  'low-loss-10mm': {
    name: 'low-loss foam, 10 mm',
    z0: 50,
    velocityFactor: 0.85,
    points: per100Feet([
      [30, 0.7],
      [50, 0.9],
      [150, 1.5],
      [220, 1.9],
      [450, 2.7],
      [900, 3.9],
      [1500, 5.1],
      [2500, 6.8],
    ]),
    tolerance: 0.1,
    maxVolts: 2500,
    centre: { ohmsPerM: 0.0046 },
    outer: { ohmsPerM: 0.0054 },
    source: `low-loss 0.405 inch foam coax data sheet, typical, dB per 100 ft; ${shields}`,
  },
  'rg-316': {
    name: 'RG-316',
    z0: 50,
    velocityFactor: 0.695,
    points: [
      [200, 36.5],
      [400, 52.8],
      [600, 65.7],
      [800, 76.9],
      [1000, 87],
      [2000, 128.7],
      [3000, 163],
    ],
    tolerance: 0.25,
    maxVolts: 900,
    centre: { ohmsPerM: 0.27 },
    outer: { ohmsPerM: 0.02 },
    source: `RG-316/U data sheet, typical, dB per 100 m from 200 MHz; steel centre; ${shields}`,
  },
  'rg-6': {
    name: 'RG-6 foam, 75 Ω',
    z0: 75,
    velocityFactor: 0.82,
    points: per100Feet([
      [30, 1.17],
      [50, 1.45],
      [150, 2.35],
      [450, 4.12],
      [900, 5.95],
    ]),
    tolerance: 0.2,
    maxVolts: 300,
    centre: { ohmsPerM: 0.021 },
    outer: { ohmsPerM: 0.009 },
    source: `RG-6 foam data sheet, typical, copper centre, dB per 100 ft; listing voltage; ${shields}`,
  },
  'half-inch': {
    name: 'half-inch corrugated',
    z0: 50,
    velocityFactor: 0.88,
    points: per100Feet([
      [0.5, 0.045],
      [1, 0.064],
      [2, 0.091],
      [10, 0.205],
      [20, 0.291],
      [30, 0.357],
      [50, 0.463],
      [100, 0.661],
      [150, 0.815],
      [300, 1.169],
      [450, 1.447],
      [1000, 2.22],
      [2000, 3.251],
    ]),
    tolerance: 0.05,
    maxVolts: 4000,
    centre: { ohmsPerM: 0.0015 },
    outer: { ohmsPerM: 0.0019 },
    source: `half-inch corrugated copper coax data sheet, typical, dB per 100 ft; ${shields}`,
  },
};
