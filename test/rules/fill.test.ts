import { expect, it } from 'vitest';
import { fillMessage } from '../../core/rules/fill-message.ts';

it.each([
  ['{port} gets it.', { port: 'tx · power' }, 'tx · power gets it.'],
  ['{volts V}', { volts: 13.8 }, '13.80 V'],
  ['{volts V}', { volts: -0.44 }, '−440 mV'],
  ['{amps A}', { amps: 0.62 }, '620 mA'],
  ['{watts W}', { watts: 3.02 }, '3.02 W'],
  ['{level dBm}', { level: -0.4 }, '−0.4 dBm'],
  ['{time ms}', { time: 2.5 }, '2.5 ms'],
  ['{ohms Ω}', { ohms: 4700 }, '4.70 kΩ'],
  ['{far m}', { far: 0.5 }, '0.50 m'],
  ['{share %}', { share: 0.25 }, '25 %'],
  ['{rating rated}', { rating: 7.5 }, '7.5 A'],
  ['{count} units', { count: 3 }, '3 units'],
  ['{a} and {a}', { a: 'R1' }, 'R1 and R1'],
  ['{none}{left}', { none: '', left: 'x' }, 'x'],
])('%s with %j is %s', (template, values, text) => {
  expect(fillMessage(template, values as Record<string, number | string>)).toBe(text);
});

it.each(['{missing}', '{missing V}'])('%s without its value stays for the eye to find', (template) =>
  expect(fillMessage(template, {})).toBe(template),
);

it('leaves a unit that it does not know', () => expect(fillMessage('{x furlongs}', { x: 1 })).toBe('{x furlongs}'));

it('does not fill what a value happens to hold', () =>
  expect(fillMessage('{name}: {volts V}', { name: '{volts V}', volts: 5 })).toBe('{volts V}: 5.00 V'));
