import type { Cable } from '../../core/station/schema/schema.ts';
import type { Actor, ElementOf, UnitElement, UnitKind } from '../../core/station/schema/unit-kind.ts';
import { made } from '../rules/made.ts';

export const ptt: Actor = {
  id: 'ptt',
  label: 'PTT',
  feels: { type: 'operator', label: 'Press the microphone’s switch' },
  operateMs: 0,
  releaseMs: 0,
  unpowered: true,
  does: 'keys',
};

export interface RadioFigures {
  readonly receive: number;
  readonly send: number;
  readonly minV?: number;
  readonly maxV?: number;
  readonly absMaxV?: number;
  readonly rest?: Partial<UnitKind>;
  readonly inside?: readonly UnitElement[];
}

/** As far as its supply goes, a radio is a load that grows while it sends. */
export const radioLoad = ({
  receive,
  send,
  minV = 11.73,
  maxV = 15.87,
  absMaxV = 16,
}: RadioFigures): ElementOf<'load'> => ({
  id: 'draw',
  type: 'load',
  plus: 'power.plus',
  minus: 'power.minus',
  law: 'current',
  amount: receive,
  states: [{ when: { on: ['ptt'] }, amount: send }],
  minV,
  maxV,
  absMinV: -0.5,
  absMaxV,
  reverseProtected: false,
  dropOutV: 5,
});

export const radio = (figures: RadioFigures): { made: UnitKind } => ({
  made: made({ power: ['dc', 'stud-pair'] }, [radioLoad(figures), ...(figures.inside ?? [])], {
    isolated: 'all',
    actors: [ptt],
    ...figures.rest,
  }),
});

/** A regulated supply on studs. */
export const supply = (volts: number, amps: number, set: Partial<ElementOf<'supply'>> = {}): { made: UnitKind } => ({
  made: made(
    { out: ['dc', 'stud-pair'] },
    [
      {
        id: 'output',
        type: 'supply',
        plus: 'out.plus',
        minus: 'out.minus',
        volts,
        sourceOhms: 0.01,
        amps,
        peakAmps: amps * 1.2,
        beyond: 'limits',
        ...set,
      },
    ],
    { isolated: 'all' },
  ),
});

/** A battery on studs, full unless something else is said. */
export const battery = (set: Partial<ElementOf<'battery'>> = {}): { made: UnitKind } => ({
  made: made(
    { out: ['dc', 'stud-pair'] },
    [
      {
        id: 'cells',
        type: 'battery',
        plus: 'out.plus',
        minus: 'out.minus',
        chemistry: 'leadAcid',
        ampHours: 60,
        charge: 1,
        sourceOhms: 0.015,
        maxVolts: 14.4,
        cutOffV: 10.5,
        amps: 60,
        peakAmps: 600,
        beyond: 'sags',
        ...set,
      },
    ],
    { isolated: 'all' },
  ),
});

/** A lead of a gauge with a blade fuse near its end a, or none. */
export const lead = (awg: number, lengthM: number, fuse: number | null = null, atM = 0.1): Partial<Cable> => ({
  kind: `lead-awg-${awg}`,
  lengthM,
  ...(fuse !== null && { fuse: { amps: fuse, family: 'blade', atM } }),
});

/** Plus and minus swapped. */
export const swapped = {
  wiring: [
    { a: 'plus', b: 'minus' },
    { a: 'minus', b: 'plus' },
  ],
};

/** The same lead with a bolted fuse that breaks what a large battery drives into a short. */
export const breaks = (drawn: Partial<Cable>): Partial<Cable> => ({
  ...drawn,
  ...(drawn.fuse && { fuse: { ...drawn.fuse, breakingAmps: 5000 } }),
});
