import type { Station } from '../../core/station/schema/schema.ts';
import type { ElementOf, UnitElement, UnitKind } from '../../core/station/schema/unit-kind.ts';
import { load, made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';
import { battery, breaks, lead, ptt, radio, radioLoad, supply } from './parts.ts';

const plan = { duty: 0.4, sendShare: 0.3, hoursPerDay: 0.5, frequencyHz: 14_060_000 };

type Made = { made: UnitKind } | string | { kind: string; settings?: Record<string, string> };

export const station = (
  units: Record<string, Made>,
  cables: NonNullable<Parameters<typeof drawStation>[0]['cables']>,
  more: object = {},
): Station => drawStation({ units, cables, plan: { ...plan, ...more } });

/** A battery, a lead and a radio. */
export const fromBattery = (rig: Made, route: object, cells: Made = battery(), more: object = {}): Station =>
  station({ battery: cells, rig }, [['battery.out > rig.power', route]], more);

/** Two radios, one behind a monitor in the minus, the other behind it too or beside it. */
export const monitored = (other: string): Station =>
  station(
    {
      battery: battery(),
      strip: 'fused-strip',
      monitor: 'dc-meter',
      behind: 'fused-strip',
      handy: radio({ receive: 0.1, send: 1, minV: 11 }),
      rig: radio({ receive: 0.5, send: 4, minV: 11 }),
    },
    [
      ['battery.out > strip.input', lead(14, 0.15)],
      ['strip.one > monitor.source', lead(14, 0.5)],
      ['monitor.load > behind.input', lead(14, 0.5)],
      ['behind.one > handy.power', lead(16, 1)],
      [other, lead(14, 1)],
    ],
  );

/** Conducts when the supply is the wrong way round, and nearly nothing else. */
export const shuntDiode: UnitElement = {
  id: 'shunt',
  type: 'diode',
  anode: 'power.minus',
  cathode: 'power.plus',
  volts: 0.8,
  atAmps: 3,
  ohms: 0.02,
};

export const beacon: Made = {
  made: made({ power: ['dc', 'stud-pair'] }, [
    { ...load('power.plus', 'power.minus', 0.2), minV: 4.5, maxV: 5.5, absMaxV: 5.5 },
  ]),
};

/** A laptop on a step-up adapter whose output minus is the input's plus or minus, and a data lead to the radio. */
export const laptop = (common: 'power.plus' | 'power.minus'): Station =>
  station(
    {
      supply: supply(13.8, 10),
      adapter: {
        made: made(
          { power: ['dc', 'stud-pair'], out: ['dc', 'stud-pair'] },
          [
            {
              id: 'converter',
              type: 'converter',
              plus: 'power.plus',
              minus: 'power.minus',
              outPlus: 'out.plus',
              outMinus: 'out.minus',
              minV: 10,
              maxV: 16,
              absMaxV: 18,
              outVolts: 20,
              outOhms: 0.05,
              outAmps: 4,
              efficiency: 0.9,
              idleWatts: 0.5,
            },
            { id: 'common', type: 'conductor', from: common, to: 'out.minus', ohms: 0.005 },
          ],
          { isolated: 'all' },
        ),
      },
      laptop: {
        made: made({ power: ['dc', 'stud-pair'], serial: ['data', 'mono-35-jack'] }, [
          { ...load('power.plus', 'power.minus', 2), minV: 18, maxV: 21, absMaxV: 22 },
        ]),
      },
      rig: {
        made: made(
          { power: ['dc', 'stud-pair'], serial: ['data', 'mono-35-jack'] },
          [radioLoad({ receive: 1, send: 4 })],
          { actors: [ptt] },
        ),
      },
    },
    [
      ['supply.out > adapter.power', lead(14, 1, 10)],
      ['adapter.out > laptop.power', lead(14, 1)],
      ['supply.out > rig.power', lead(14, 1, 10)],
      ['laptop.serial > rig.serial', { kind: 'audio-lead', lengthM: 1 }],
    ],
  );

/** A relay that joins two supplies for good. */
export const relayJoin: Made = {
  made: made(
    { one: ['dc', 'stud-pair'], two: ['dc', 'stud-pair'], out: ['dc', 'stud-pair'] },
    ['plus', 'minus'].flatMap((pole): UnitElement[] => [
      { id: `one-${pole}`, type: 'conductor', from: `one.${pole}`, to: `out.${pole}`, ohms: 0.005 },
      { id: `two-${pole}`, type: 'conductor', from: `two.${pole}`, to: `out.${pole}`, ohms: 0.005 },
    ]),
    { isolated: 'all' },
  ),
};

/** 200 Ah behind a protection that opens at so many amperes. */
export const lithium = (amps: number): Made =>
  battery({
    chemistry: 'lifepo4',
    ampHours: 200,
    charge: 0.76,
    sourceOhms: 0.01,
    maxVolts: 14.6,
    amps,
    peakAmps: amps,
    beyond: 'shutsDown',
  });

/** A panel (or a string of them), a controller for 50 V at most, its battery and a radio on it. */
export const solar = (panel: Partial<ElementOf<'supply'>>): Station =>
  station(
    {
      panel: supply(22, 5.5, { beyond: 'limits', ...panel }),
      controller: 'solar-charge-controller',
      battery: battery(),
      rig: radio({ receive: 0.5, send: 4, minV: 11 }),
    },
    [
      ['panel.out > controller.panel', lead(12, 5)],
      ['battery.out > controller.battery', lead(12, 1, 15)],
      ['controller.load > rig.power', lead(14, 1)],
    ],
  );

/** A cut-off in the minus, open; the radio behind it and a second box share a coax, or the radio stands alone. */
export function cutOff(isBypassed: boolean): Station {
  const box = (receive: number): Made => ({
    made: made({ power: ['dc', 'stud-pair'], antenna: ['rf', 'bnc-jack'] }, [
      { ...load('power.plus', 'power.minus', receive), minV: 11, dropOutV: 5 },
    ]),
  });
  const cutoff: Made = {
    made: made(
      { battery: ['dc', 'stud-pair'], load: ['dc', 'stud-pair'] },
      [
        { id: 'plus', type: 'conductor', from: 'battery.plus', to: 'load.plus', ohms: 0.001 },
        {
          id: 'switch',
          type: 'contactPair',
          from: 'battery.minus',
          to: 'load.minus',
          device: 'relay',
          onOhms: 0.002,
          maxVolts: 30,
          maxAmps: 40,
          when: { on: ['closed'] },
        },
      ],
      {
        isolated: 'all',
        actors: [
          {
            id: 'closed',
            label: 'Switch',
            // The two halves differ in whether the battery is low.
            feels: {
              type: 'voltageAbove',
              contact: 'battery.plus',
              reference: 'battery.minus',
              volts: isBypassed ? 14 : 11,
            },
            operateMs: 5,
            releaseMs: 5,
            unpowered: true,
          },
        ],
      },
    ),
  };
  return station(
    {
      battery: battery(),
      strip: 'fused-strip',
      cutoff,
      rig: box(1),
      ...(isBypassed && { tuner: box(0.2) }),
    },
    [
      ['battery.out > strip.input', lead(14, 0.15)],
      ['strip.one > cutoff.battery', lead(14, 0.5)],
      ['cutoff.load > rig.power', lead(14, 1)],
      ...(isBypassed
        ? ([
            ['strip.two > tuner.power', lead(16, 1)],
            ['rig.antenna > tuner.antenna', { lengthM: 0.5 }],
          ] as [string, object][])
        : []),
    ],
  );
}

/** A supply that floats a battery of 100 Ah, and a radio of 22 A. */
export const floated = (psu: Made, chargeAmps: number): Station =>
  station(
    {
      supply: psu,
      battery: battery({ ampHours: 100, chargeAmps, sourceOhms: 0.2 }),
      rig: radio({ receive: 1, send: 22 }),
    },
    [
      ['battery.out > supply.out', lead(4, 1, 60)],
      ['supply.out > rig.power', lead(10, 1, 25)],
    ],
  );

export const twoBatteries = (one: Made, two: Made): Station =>
  station({ one, two, joint: relayJoin, rig: radio({ receive: 1, send: 10, minV: 11 }) }, [
    ['one.out > joint.one', breaks(lead(12, 0.5, 20))],
    ['two.out > joint.two', breaks(lead(12, 0.5, 20))],
    ['joint.out > rig.power', lead(12, 1, 20, 0.05)],
  ]);

/** A kit transceiver whose controller board runs on USB, and a computer; the 5 V wire connected or opened. */
export const usbKit = (isConnected: boolean): Station =>
  station(
    {
      supply: supply(13.8, 3),
      kit: {
        made: made({ power: ['dc', 'stud-pair'], usb: ['data', 'usb-b-jack'] }, [
          { ...load('power.plus', 'power.minus', 0.3), minV: 11 },
          { ...load('usb.vbus', 'usb.ground', 0.05), id: 'board', minV: 4.4, maxV: 5.25, absMaxV: 5.5 },
        ]),
      },
      computer: 'computer',
    },
    [
      ['supply.out > kit.power', lead(18, 1, 3)],
      [
        'computer.usb-one > kit.usb',
        isConnected
          ? { lengthM: 1 }
          : {
              lengthM: 1,
              wiring: [
                { a: 'data-minus', b: 'data-minus' },
                { a: 'data-plus', b: 'data-plus' },
                { a: 'ground', b: 'ground' },
              ],
            },
      ],
    ],
  );
