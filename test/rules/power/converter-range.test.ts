import { converterRange } from '../../../core/rules/power/converter-range.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

/** 12 V to 24 V, 2 A. */
const boost = made(
  { in: ['dc', 'two-pole-30'], out: ['dc', 'two-pole-30'] },
  [
    {
      id: 'boost',
      type: 'converter',
      plus: 'in.plus',
      minus: 'in.minus',
      outPlus: 'out.plus',
      outMinus: 'out.minus',
      minV: 11,
      maxV: 15,
      absMaxV: 18,
      outVolts: 24,
      outOhms: 0.05,
      outAmps: 2,
      efficiency: 0.9,
      idleWatts: 0.5,
    },
  ],
  { isolated: 'all' },
);
const relay = (amps: number) =>
  made({ power: ['dc', 'two-pole-30'] }, [
    { ...load('power.plus', 'power.minus', amps), minV: 20, maxV: 30, absMaxV: 35 },
  ]);
const feeding = (volts: number, amps: number) =>
  drawStation({
    units: {
      supply: { kind: 'switch-mode-supply', overrides: { 'output.volts': volts, 'output.maxVolts': volts } },
      boost: { made: boost },
      relay: { made: relay(amps) },
    },
    cables: ['supply.out > boost.in', 'boost.out > relay.power'],
  });

testRule(converterRange, {
  silent: [
    { name: '13.8 V in, 1.9 A out', station: feeding(13.8, 1.9) },
    { name: 'hardly more than its least', station: feeding(11.3, 0.1) },
  ],
  reported: [
    {
      name: '10 V in',
      station: feeding(10, 0.1),
      message: 'input',
      severity: 'fault',
      at: { unit: 'boost', port: 'in' },
      values: { volts: 10, minV: 11, maxV: 15 },
      within: 0.01,
    },
    {
      name: '16 V in',
      station: feeding(16, 0.1),
      message: 'input',
      severity: 'fault',
      at: { unit: 'boost', port: 'in' },
      values: { volts: 16 },
      within: 0.01,
    },
    {
      name: '2.1 A out of 2 A',
      station: feeding(13.8, 2.1),
      message: 'output',
      severity: 'fault',
      at: { unit: 'boost', port: 'out' },
      values: { amps: 2.1, limit: 2 },
    },
  ],
});
