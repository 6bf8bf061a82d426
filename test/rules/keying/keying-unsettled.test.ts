import { keyingUnsettled } from '../../../core/rules/keying/keying-unsettled.ts';
import type { Actor, UnitElement } from '../../../core/station/schema/unit-kind.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const below = (
  pair: string,
): Pick<UnitElement & { type: 'contactPair' }, 'type' | 'device' | 'onOhms' | 'maxVolts' | 'maxAmps'> & {
  id: string;
} => ({ id: pair, type: 'contactPair', device: 'relay', onOhms: 0.1, maxVolts: 30, maxAmps: 1 });

/** A relay whose coil hangs on its own resting contact (a buzzer), or on a working one; behind a button where asked for. */
function relay(isBuzzer: boolean, button: boolean) {
  const actors: Actor[] = [
    {
      id: 'relay',
      label: 'Relay',
      feels: { type: 'voltageAbove', contact: '@coil', reference: 'power.minus', volts: 8 },
      operateMs: 5,
      releaseMs: 3,
      unpowered: true,
    },
    ...(button
      ? [
          {
            id: 'button',
            label: 'Button',
            feels: { type: 'operator', label: 'Press the button' } as const,
            operateMs: 0,
            releaseMs: 0,
            unpowered: true,
          },
        ]
      : []),
  ];
  return drawStation({
    units: {
      supply: 'bench-supply',
      box: {
        made: made(
          { power: ['dc', 'binding-posts'] },
          [
            { ...below('switch'), from: 'power.plus', to: '@in', when: button ? { on: ['button'] } : {} },
            { ...below('contact'), from: '@in', to: '@coil', when: isBuzzer ? { off: ['relay'] } : {} },
            { id: 'coil', type: 'conductor', from: '@coil', to: 'power.minus', ohms: 300 },
          ],
          { actors },
        ),
      },
    },
    cables: [['supply.out > box.power', { fuse: { amps: 1, family: 'blade', atM: 0.1 } }]],
  });
}

testRule(keyingUnsettled, {
  silent: [
    { name: 'a relay on the supply', station: relay(false, false) },
    { name: 'a relay on a button', station: relay(false, true) },
  ],
  reported: [
    {
      name: 'a relay whose coil hangs on its own resting contact',
      station: relay(true, false),
      message: 'rest',
      severity: 'fault',
      at: { unit: 'box' },
    },
    {
      name: 'the same behind a button',
      station: relay(true, true),
      message: 'pressed',
      severity: 'fault',
      at: { unit: 'box' },
      values: { control: 'box' },
    },
  ],
});
