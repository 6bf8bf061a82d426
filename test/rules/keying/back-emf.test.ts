import { backEmf } from '../../../core/rules/keying/back-emf.ts';
import type { UnitElement } from '../../../core/station/schema/unit-kind.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const coil: UnitElement = {
  id: 'coil',
  type: 'load',
  plus: 'power.plus',
  minus: 'line.centre',
  law: 'resistance',
  amount: 160,
  minV: 9,
  maxV: 16,
  absMaxV: 20,
  reverseProtected: true,
};
const diode: UnitElement = {
  id: 'clamp',
  type: 'diode',
  anode: 'line.centre',
  cathode: 'power.plus',
  volts: 0.7,
  atAmps: 0.1,
  ohms: 0,
};
const relay = (clamped: boolean) =>
  made({ power: ['dc', 'two-pole-30'], line: ['control', 'mono-35-jack'] }, clamped ? [coil, diode] : [coil]);
// The line of this relay has a jack with tip and sleeve.
const onTip = (clamped: boolean) => JSON.parse(JSON.stringify(relay(clamped)).replaceAll('line.centre', 'line.tip'));
const switchedBy = (device: 'relay' | 'transistor', clamped: boolean) =>
  drawStation({
    units: {
      supply: 'bench-supply',
      relay: { made: onTip(clamped) },
      sequencer: {
        made: made(
          { out: ['control', 'mono-35-jack'] },
          [
            {
              id: 'step',
              type: 'contactPair',
              from: 'out.tip',
              to: 'out.sleeve',
              device,
              onOhms: 0.1,
              maxVolts: 40,
              maxAmps: 0.5,
              when: { on: ['hand'] },
            },
          ],
          {
            actors: [
              {
                id: 'hand',
                label: 'Step',
                feels: { type: 'operator', label: 'Press' },
                operateMs: 0,
                releaseMs: 0,
                unpowered: true,
              },
            ],
          },
        ),
      },
    },
    cables: ['supply.out > relay.power', 'sequencer.out > relay.line'],
  });

testRule(backEmf, {
  silent: [
    { name: 'a transistor, with a diode across the coil', station: switchedBy('transistor', true) },
    { name: 'a relay contact', station: switchedBy('relay', false) },
  ],
  reported: [
    {
      name: 'a transistor, and nothing across the coil',
      station: switchedBy('transistor', false),
      message: 'bare',
      severity: 'doubt',
      at: { unit: 'sequencer', port: 'out' },
      values: { switch: 'sequencer · out', coil: 'relay' },
    },
  ],
});
