import { backFeed } from '../../../core/rules/power/back-feed.ts';
import type { UnitElement } from '../../../core/station/schema/unit-kind.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const logic: UnitElement = {
  ...load('usb.vbus', 'usb.ground', 0.05),
  id: 'logic',
  minV: 4.4,
  maxV: 5.25,
  absMaxV: 5.5,
};
const clamp: UnitElement = {
  id: 'clamp',
  type: 'diode',
  anode: 'usb.data-plus',
  cathode: 'power.plus',
  volts: 0.7,
  atAmps: 0.01,
  ohms: 10,
};

/** A kit transceiver on a supply, and a computer that holds its data line at so many volts. */
const kit = (inside: UnitElement[], dataVolts: number) =>
  drawStation({
    units: {
      supply: 'bench-supply',
      kit: {
        made: made({ power: ['dc', 'binding-posts'], usb: ['data', 'usb-b-jack'] }, [
          { ...load('power.plus', 'power.minus', 0.0001), minV: 3, dropOutV: 0.1 },
          ...inside,
        ]),
      },
      computer: {
        made: made({ usb: ['data', 'usb-a-jack'] }, [
          {
            id: 'bus',
            type: 'supply',
            plus: 'usb.vbus',
            minus: 'usb.ground',
            volts: 5,
            sourceOhms: 0.1,
            amps: 0.5,
            peakAmps: 0.9,
            beyond: 'limits',
          },
          { id: 'data', type: 'pullUp', contact: 'usb.data-plus', volts: dataVolts, ohms: 100 },
        ]),
      },
    },
    cables: ['supply.out > kit.power', 'computer.usb > kit.usb'],
  });

testRule(backFeed, {
  silent: [
    { name: 'a unit that takes nothing from USB', station: kit([], 3.3) },
    { name: 'a clamp diode on a line at 0 V', station: kit([clamp], 0) },
  ],
  reported: [
    {
      name: 'a controller board on the computer’s 5 V',
      station: kit([logic], 0),
      message: 'fed',
      severity: 'doubt',
      at: { unit: 'kit', port: 'usb' },
      values: { volts: 5 },
      within: 0.02,
    },
    {
      // 3.3 V less a diode's drop.
      name: '3.3 V logic through a clamp diode',
      station: kit([clamp], 3.3),
      message: 'fed',
      severity: 'doubt',
      at: { unit: 'kit', port: 'usb' },
      values: { volts: 2.7 },
      within: 0.1,
    },
  ],
});
