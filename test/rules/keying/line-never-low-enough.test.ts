import { lineNeverLowEnough } from '../../../core/rules/keying/line-never-low-enough.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

/** A key line at 12 V over 1 kΩ that has to fall below 1.4 V. */
const amplifier = made(
  { power: ['dc', 'two-pole-30'], line: ['control', 'phono-jack'] },
  [
    load('power.plus', 'power.minus', 0.1),
    { id: 'bias', type: 'pullUp', contact: 'line.centre', volts: 12, ohms: 1000 },
  ],
  {
    actors: [
      {
        id: 'relay',
        label: 'Relay',
        feels: { type: 'voltageBelow', contact: 'line.centre', volts: 1.4 },
        operateMs: 10,
        releaseMs: 5,
        does: 'changesOver',
      },
    ],
  },
);
/** Silicon diodes in a row, 0.7 V each at a milliampere, by which one key serves several lines. */
const steering = (diodes: number) =>
  made(
    { line: ['control', 'phono-jack'], key: ['control', 'mono-635-jack'] },
    Array.from({ length: diodes }, (_, i) => ({
      id: `d${i}`,
      type: 'diode' as const,
      anode: i === 0 ? 'line.centre' : `@n${i}`,
      cathode: i === diodes - 1 ? 'key.tip' : `@n${i + 1}`,
      volts: 0.7,
      atAmps: 0.01,
      ohms: 0,
    })),
  );
const keyedThrough = (diodes: number) =>
  drawStation({
    units: {
      supply: 'bench-supply',
      amplifier: { made: amplifier },
      box: { made: steering(diodes) },
      key: 'straight-key',
    },
    cables: ['supply.out > amplifier.power', 'amplifier.line > box.line', 'key.out > box.key'],
  });

testRule(lineNeverLowEnough, {
  silent: [
    { name: 'one diode: 0.7 V', station: keyedThrough(1) },
    {
      name: 'a line that nothing pulls is another rule’s business',
      station: drawStation({
        units: { supply: 'bench-supply', amplifier: { made: amplifier } },
        cables: ['supply.out > amplifier.power'],
      }),
    },
  ],
  reported: [
    {
      name: 'three diodes: 2.1 V, where 1.4 V is the most',
      station: keyedThrough(3),
      message: 'high',
      severity: 'fault',
      at: { unit: 'amplifier', port: 'line' },
      values: { rest: 12, low: 2.1, limit: 1.4 },
      within: 0.03,
    },
  ],
});
