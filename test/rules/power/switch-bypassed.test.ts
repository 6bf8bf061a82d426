import { switchBypassed } from '../../../core/rules/power/switch-bypassed.ts';
import type { Actor, UnitElement } from '../../../core/station/schema/unit-kind.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const lead = (id: string, from: string, to: string): UnitElement => ({ id, type: 'conductor', from, to, ohms: 0.001 });
const shunt: UnitElement = {
  id: 'shunt',
  type: 'conductor',
  from: 'in.minus',
  to: 'out.minus',
  ohms: 0.001,
  measures: true,
};
const cutOff = (from: string, to: string): UnitElement => ({
  id: 'switch',
  type: 'contactPair',
  from,
  to,
  device: 'relay',
  onOhms: 0.001,
  maxVolts: 30,
  maxAmps: 40,
  when: { settings: { switch: 'on' } },
});

const knob: Actor = {
  id: 'knob',
  label: 'Knob',
  feels: { type: 'operator', label: 'Switch on' },
  operateMs: 0,
  releaseMs: 0,
  unpowered: true,
};

/** A supply, a box in its leads and two radios, which a coax joins or not; the second one behind the box, or beside it. */
const station = (box: UnitElement[], second: 'behind' | 'beside' | 'none') => {
  const radio = (amps: number) => ({
    made: made({ power: ['dc', 'binding-posts'], antenna: ['rf', 'bnc-jack'] }, [
      load('power.plus', 'power.minus', amps),
    ]),
  });
  return drawStation({
    units: {
      supply: 'bench-supply',
      box: {
        made: made({ in: ['dc', 'binding-posts'], out: ['dc', 'binding-posts'] }, box, {
          isolated: 'all',
          actors: [knob],
        }),
      },
      radio: radio(1),
      ...(second !== 'none' && { other: radio(0.5) }),
    },
    cables: [
      'supply.out > box.in',
      'box.out > radio.power',
      ...(second === 'none' ? [] : [second === 'behind' ? 'box.out > other.power' : 'supply.out > other.power']),
      ...(second === 'none' ? [] : ['radio.antenna > other.antenna']),
    ],
  });
};

/** A cut-off that an operator closes: open in receive. */
const gated = (from: string, to: string): UnitElement =>
  ({ ...cutOff(from, to), when: { on: ['knob'] } }) as UnitElement;

testRule(switchBypassed, {
  silent: [
    {
      name: 'a meter in the minus of everything',
      station: station([lead('plus', 'in.plus', 'out.plus'), shunt], 'behind'),
    },
    {
      name: 'a cut-off in the plus',
      station: station([lead('minus', 'in.minus', 'out.minus'), gated('in.plus', 'out.plus')], 'beside'),
    },
    {
      name: 'a cut-off in the minus of a radio that nothing else joins',
      station: station([lead('plus', 'in.plus', 'out.plus'), gated('in.minus', 'out.minus')], 'none'),
    },
  ],
  reported: [
    {
      name: 'a cut-off in the minus, and a coax to a radio on the other side',
      station: station([lead('plus', 'in.plus', 'out.plus'), gated('in.minus', 'out.minus')], 'beside'),
      message: 'switch',
      severity: 'fault',
      at: { unit: 'box' },
    },
    {
      name: 'a radio whose minus goes straight to the supply',
      station: station([lead('plus', 'in.plus', 'out.plus'), shunt], 'beside'),
      message: 'meter',
      severity: 'fault',
      at: { unit: 'box' },
      values: { total: 1.5 },
      within: 0.01,
    },
  ],
});
