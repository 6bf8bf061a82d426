import type { Station } from '../../core/station/schema/schema.ts';
import type { ElementOf, UnitElement, UnitKind } from '../../core/station/schema/unit-kind.ts';
import { made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';
import { lead, ptt, radioLoad, supply } from './parts.ts';

type Drawing = Parameters<typeof drawStation>[0];
type Units = Drawing['units'];
type Cables = NonNullable<Drawing['cables']>;

/** A 30 A supply and a 100 W transceiver on it, and whatever else there is. */
export const shack = (units: Units, cables: Cables, more: Partial<Drawing> = {}): Station =>
  drawStation({
    units: { supply: supply(13.8, 30), rig: 'transceiver-100w', ...units },
    cables: [['supply.out > rig.power', lead(10, 1, 25)], ...cables],
    ...more,
    plan: { frequencyHz: 14_060_000, ...more.plan },
  });

/** A radio that makes RF while its switch is pressed: watts in dBm, a socket. */
export const transmitter = (
  dbm: number,
  jack: string,
  set: Partial<ElementOf<'rfSource'>> = {},
  rest: Partial<UnitKind> = {},
): { made: UnitKind } => ({
  made: made(
    { power: ['dc', 'stud-pair'], antenna: ['rf', jack] },
    [
      radioLoad({ receive: 0.5, send: 10 }),
      { id: 'output', type: 'rfSource', port: 'antenna', dbm, ...set, when: { on: ['ptt'] } },
    ],
    { isolated: 'all', actors: [{ ...ptt, does: 'sends' }], ...rest },
  ),
});

export const antenna = (ohms: number, set: Partial<ElementOf<'rfLoad'>> = {}, jack = 'n-jack'): { made: UnitKind } => ({
  made: made({ feed: ['rf', jack] }, [
    { id: 'wire', type: 'rfLoad', port: 'feed', role: 'antenna', ohms, gainDbi: 2.15, ...set },
  ]),
});

/** A transmitter, one coax, an antenna. */
export const onLine = (
  dbm: number,
  hertz: number,
  line: Cables[number] extends infer C ? Partial<Extract<C, readonly unknown[]>[1]> : never,
  end = antenna(50),
  between: Units = {},
): Station =>
  drawStation({
    units: { supply: supply(13.8, 20), tx: transmitter(dbm, 'uhf-jack'), antenna: end, ...between },
    cables: [
      ['supply.out > tx.power', lead(12, 1, 20)],
      ['tx.antenna > antenna.feed', line],
    ],
    plan: { frequencyHz: hertz },
  });

/** A receiver with a mute line, on its own antenna. */
export const listener = (damageDbm: number, overloadDbm = damageDbm - 15): { made: UnitKind } => ({
  made: made({ antenna: ['rf', 'n-jack'] }, [
    { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm, overloadDbm },
  ]),
});

/** A transmitter on one antenna and a receiver on another that hears it so many decibels down. */
export function beside(
  dbm: number,
  receiver: { made: UnitKind },
  lossDb: number,
  set: Partial<ElementOf<'rfSource'>> = {},
): Station {
  const station = drawStation({
    units: {
      supply: supply(13.8, 20),
      tx: transmitter(dbm, 'n-jack', set),
      one: antenna(50),
      two: antenna(50),
      receiver,
    },
    cables: [
      ['supply.out > tx.power', lead(12, 1, 20)],
      ['tx.antenna > one.feed', { lengthM: 1, kind: 'coax-rg-213' }],
      ['two.feed > receiver.antenna', { lengthM: 1, kind: 'coax-rg-213' }],
    ],
    plan: { frequencyHz: 14_060_000 },
  });
  const [a, b] = [
    { unit: 'one', port: 'feed' },
    { unit: 'two', port: 'feed' },
  ] as const;
  return { ...station, couplings: [{ a, b, lossDb }] };
}

/** A receiver and an active antenna, with a DC injector between: which of its sides is where. */
export const injector = (radioSide: string, antennaSide: string): Station =>
  drawStation({
    units: { supply: 'bench-supply', receiver: 'sdr-receiver-hf', injector: 'bias-tee', whip: 'active-whip' },
    cables: [
      ['supply.out > receiver.power', { fuse: { amps: 1, family: 'blade', atM: 0.1 } }],
      ['supply.out > injector.power', { fuse: { amps: 1, family: 'blade', atM: 0.1 } }],
      `receiver.antenna > injector.${radioSide}`,
      [`injector.${antennaSide} > whip.feed`, { lengthM: 3 }],
    ],
  });

/** A way through a unit of two sockets. */
export const way = (set: Partial<ElementOf<'rfPath'>>): { made: UnitKind } => ({
  made: made({ in: ['rf', 'uhf-jack'], out: ['rf', 'uhf-jack'] }, [
    { id: 'way', type: 'rfPath', a: 'in', b: 'out', lossDb: 0.2, ...set } as UnitElement,
  ]),
});
