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

/** A driver that puts the supply on a relay's coil while its switch is pressed. */
const driver = made(
  { power: ['dc', 'binding-posts'], out: ['control', 'phono-jack'] },
  [
    {
      id: 'switch',
      type: 'contactPair',
      from: 'power.plus',
      to: 'out.centre',
      device: 'relay',
      onOhms: 0.05,
      maxVolts: 30,
      maxAmps: 2,
      when: { on: ['ptt'] },
    },
    { id: 'minus', type: 'conductor', from: 'power.minus', to: 'out.shell', ohms: 0.01 },
  ],
  {
    isolated: 'all',
    actors: [
      {
        id: 'ptt',
        label: 'PTT',
        feels: { type: 'operator', label: 'Press' },
        operateMs: 0,
        releaseMs: 0,
        unpowered: true,
      },
    ],
  },
);
const coilOn = (relay: string) =>
  drawStation({
    units: { supply: 'bench-supply', driver: { made: driver }, relay },
    cables: ['supply.out > driver.power', 'driver.out > relay.coil'],
  });

testRule(lineNeverLowEnough, {
  silent: [
    { name: 'a coil for 12 V', station: coilOn('coax-relay-12v') },
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
    {
      // Surplus 28 V relays of 290 Ω pull in at 14 V: a station has 13.8 V at best.
      name: 'a coil for 28 V on 13.8 V',
      station: coilOn('coax-relay-28v'),
      message: 'weak',
      severity: 'fault',
      at: { unit: 'relay', port: 'coil' },
      values: { high: 13.8, limit: 14 },
      within: 0.01,
    },
  ],
});
