import type { Cable, Plan, Station } from '../../../core/station/schema/schema.ts';
import type { UnitKind } from '../../../core/station/schema/unit-kind.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';

/** An antenna of so many ohms with a socket that stands anything. */
export const antenna = (ohms: number, set: Record<string, unknown> = {}): UnitKind =>
  made({ feed: ['rf', 'n-jack'] }, [
    { id: 'wire', type: 'rfLoad', port: 'feed', role: 'antenna', ohms, gainDbi: 2.15, ...set },
  ]);

interface Drawn {
  readonly ohms?: number;
  readonly antenna?: UnitKind;
  readonly rig?: Record<string, number>;
  readonly line?: Partial<Cable>;
  readonly plan?: Partial<Plan>;
  /** A unit in the line, with its ports `in` and `out`. */
  readonly between?: UnitKind;
}

/** A 100 W transceiver on an antenna through one cable, 0 m long if not given, and one unit before it if there is one. */
export const onAntenna = ({ ohms = 50, rig = {}, line = {}, plan = {}, between, ...rest }: Drawn): Station =>
  drawStation({
    units: {
      supply: 'switch-mode-supply',
      rig: { kind: 'transceiver-100w', overrides: rig },
      antenna: { made: rest.antenna ?? antenna(ohms) },
      ...(between && { unit: { made: between } }),
    },
    cables: [
      'supply.out > rig.power',
      ...(between ? ([['rig.antenna > unit.in', { lengthM: 0 }]] as [string, Partial<Cable>][]) : []),
      [`${between ? 'unit.out' : 'rig.antenna'} > antenna.feed`, { lengthM: 0, ...line }],
    ],
    plan: { frequencyHz: 14_060_000, ...plan },
  });
