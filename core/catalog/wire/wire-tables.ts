/** mm² to the greatest Ω/km at 20 °C: IEC 60228 class 5, plain copper; below 0.5 mm² DIN VDE 0295. */
export const iecClass5: Readonly<Record<number, number>> = {
  0.05: 380,
  0.08: 237,
  0.14: 134,
  0.22: 96,
  0.25: 76,
  0.34: 53,
  0.5: 39,
  0.75: 26,
  1: 19.5,
  1.5: 13.3,
  2.5: 7.98,
  4: 4.95,
  6: 3.3,
  10: 1.91,
  16: 1.21,
  25: 0.78,
  35: 0.554,
};

/** NEC 240.4(D), copper: gauge and the largest overcurrent device, amperes. */
export const necSmall: readonly (readonly [awg: number, amps: number])[] = [
  [18, 7],
  [16, 10],
  [14, 15],
  [12, 20],
  [10, 30],
];

/** AC 43.13-1B table 11-3, fuse column: gauge and amperes. */
export const acFuse: readonly (readonly [awg: number, amps: number])[] = [
  [22, 5],
  [20, 5],
  [18, 10],
  [16, 10],
  [14, 15],
  [12, 20],
  [10, 30],
  [8, 50],
  [6, 70],
  [4, 70],
  [2, 100],
];

/** AC 43.13-1B table 11-9: 24 AWG in a harness at 70 °C, 105 °C conductor. */
export const acHarness24 = { amps: 2.5, source: 'AC 43.13-1B table 11-9' };

/** Insulation temperatures of 33 CFR 183.425 table 5, °C. */
export const cfrColumns = [60, 75, 80, 90, 105, 125, 200] as const;

/** 33 CFR 183.425 table 5: amperes by insulation temperature, 30 °C ambient, not in an engine space. */
export const cfrTable: readonly { readonly awg: number; readonly amps: readonly number[] }[] = [
  { awg: 18, amps: [10, 10, 15, 20, 20, 25, 25] },
  { awg: 16, amps: [15, 15, 20, 25, 25, 30, 35] },
  { awg: 14, amps: [20, 20, 25, 30, 35, 40, 45] },
  { awg: 12, amps: [25, 25, 35, 40, 45, 50, 55] },
  { awg: 10, amps: [40, 40, 50, 55, 60, 70, 70] },
  { awg: 8, amps: [55, 65, 70, 70, 80, 90, 100] },
  { awg: 6, amps: [80, 95, 100, 100, 120, 125, 135] },
  { awg: 4, amps: [105, 125, 130, 135, 160, 170, 180] },
  { awg: 2, amps: [140, 170, 175, 180, 210, 225, 240] },
];
