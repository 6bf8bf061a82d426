import type { ElementOf } from '../station/schema/unit-kind.ts';

export type DataStandard = ElementOf<'dataEnd'>['standard'];

export interface DataLevels {
  readonly name: string;
  /** The lowest and highest volts that a driver puts on the wire. */
  readonly drives: readonly [low: number, high: number];
  /** A receiver reads one state at or below the first, the other at or above the second. */
  readonly reads: readonly [low: number, high: number];
  /** What an end stands. */
  readonly stands: readonly [least: number, most: number];
  /** Its drivers pull down only: several may share a wire. */
  readonly shares: boolean;
  readonly source: string;
}

/** Levels of single-ended signalling; null for what two ends of the same standard alone understand. */
export const dataLevels: Readonly<Record<DataStandard, DataLevels | null>> = {
  rs232: {
    name: 'RS-232',
    drives: [-12, 12],
    reads: [-3, 3],
    stands: [-25, 25],
    shares: false,
    source: 'EIA RS-232: ±3 to ±15 V at the receiver, up to 25 V with nothing connected',
  },
  ttl5: {
    name: '5 V logic',
    drives: [0, 5],
    reads: [0.8, 2],
    stands: [-0.5, 5.5],
    shares: false,
    source: 'TTL levels, from memory',
  },
  ttl3v3: {
    name: '3.3 V logic',
    drives: [0, 3.3],
    reads: [0.8, 2],
    stands: [-0.3, 3.6],
    shares: false,
    source: 'LVTTL levels, from memory',
  },
  openCollector: {
    name: 'an open-collector bus',
    drives: [0, 5],
    reads: [0.8, 2],
    stands: [-0.5, 5.5],
    shares: true,
    source: 'one-wire control buses of transceivers: 5 V through a pull-up; from memory',
  },
  usb: null,
  ethernet: null,
};
