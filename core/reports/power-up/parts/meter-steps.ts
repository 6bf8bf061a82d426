import type { Chain } from '../../../rf/chain.ts';
import { unitName, unitOf } from '../../../station/parts.ts';
import type { Station } from '../../../station/schema/schema.ts';
import { rfPortRef } from '../../../trial/contact-at.ts';
import type { Context } from '../context.ts';
import { type DraftStep, doing, reading } from '../draft-step.ts';
import { isOwn } from '../own-figures.ts';
import { swrAt, wattsAt } from '../probes.ts';
import { seenIn } from '../setup.ts';
import type { OwnFigure } from '../sheet.ts';
import type { Sending } from './senders.ts';

/** A wattmeter in the line is read to 10 % of its scale; a transmitter makes its typical power to 25 % (common practice). */
const scaleShare = 0.1;
const powerShare = { own: 0.05, typical: 0.25 };

/** A bridge's own directivity, 20 dB or better, shows 1.2 where there is 1.0; antennas as typical as this differ. Common practice. */
const bridge = 1.22;
const typicalAntenna = 1.5;

/** The meters of a chain: the port that each looks away from, and the watts of its scale. */
export const metersIn = ({ steps }: Chain) =>
  steps.flatMap(({ edge, from }) => {
    const scale = edge.spec?.type === 'rfPath' ? edge.spec.scaleWatts : undefined;
    return scale === undefined ? [] : [{ from, scale }];
  });

export const isMetered = (chain: Chain): boolean => metersIn(chain).length > 0;

/** Watts and SWR on every meter in a transmitter's line; turned down it makes what is no figure of its own, or nobody knows. */
export function meterSteps(
  { station }: Context,
  part: string,
  { setup, unit, element, chain }: Sending,
  power: 'full' | 'low' | 'not known' = 'full',
): DraftStep[] {
  const { circuit } = seenIn(setup);
  const meters = metersIn(chain);
  if (meters.length === 0)
    return [
      doing({
        id: `${part}/${unit}/no-meter`,
        text: `No meter is in the line of ${unitName(station, unit)}: what it sends can’t be read.`,
      }),
    ];
  return meters.flatMap(({ from, scale }): DraftStep[] => {
    const ref = rfPortRef(circuit, from);
    const port = circuit.rf.ports[from] ?? '';
    const shared = { where: unitName(station, ref.unit), at: [ref] };
    const share = isOwn(station, unit, `${element}.dbm`) ? powerShare.own : powerShare.typical;
    const loose = chain.ends.some(
      (end) => end.load.spec.role === 'antenna' && !isOwn(station, end.load.unit, `${end.load.spec.id}.ohms`),
    );
    const wide = loose ? bridge * typicalAntenna : bridge;
    const watts = reading({
      ...shared,
      id: `${part}/${unit}/${port}/watts`,
      text: `Watts forward on ${unitName(station, ref.unit)}.`,
      taking: { setup, probe: wattsAt(port) },
      quantity: 'W',
      range: (middle) => ({
        from: Math.max(0, middle * (1 - share) - scale * scaleShare),
        to: middle * (1 + share) + scale * scaleShare,
      }),
      figure: power === 'full' ? powerFigure(station, unit, element) : undefined,
    });
    // Down there the needle does not leave its rest.
    const isSeen = watts.some(({ expected }) => expected !== null && expected.from > 0);
    return [
      ...(power === 'full' || (power === 'low' && isSeen) ? watts : []),
      ...reading({
        ...shared,
        id: `${part}/${unit}/${port}/swr`,
        text: `SWR on ${unitName(station, ref.unit)}.`,
        taking: { setup, probe: swrAt(port) },
        quantity: 'swr',
        range: (swr) => ({ from: Math.max(1, swr / wide), to: swr * wide }),
      }),
    ];
  });
}

function powerFigure(station: Station, unit: string, element: string): OwnFigure | undefined {
  const source = station.kinds[unitOf(station, unit).kind]?.elements.find((e) => e.id === element);
  const given =
    unitOf(station, unit).overrides?.[`${element}.dbm`] ?? (source?.type === 'rfSource' ? source.dbm : undefined);
  if (given === undefined) return undefined;
  return { unit, key: `${element}.dbm`, name: `${unitName(station, unit)}’s power`, given, per: 'dBm' };
}
