import { pinPlanOf } from '../../catalog/pins/pin-plan-of.ts';
import type { Connector } from '../../station/schema/connector.ts';
import { piecesOf } from './strip.ts';

/** Pieces of heat-shrink sleeve for one cable. */
export interface HeatShrink {
  readonly overCable: number;
  readonly overCores: number;
}

/** How long a piece is, millimetres. Common practice. */
export const sleeveMm: Readonly<Record<keyof HeatShrink, number>> = { overCable: 30, overCores: 10 };

/**
 * One piece over the cable where it enters a plug; one over each core that is soldered to a plug with more than two
 * contacts or crimped in a terminal of its own, and over both joints of a fuse holder; none over the cores in a modular
 * plug, which cuts through their insulation. Common practice.
 */
export function heatShrinkFor(plugs: readonly (Connector | undefined)[], hasFuse: boolean): HeatShrink {
  const known = plugs.filter((plug) => plug !== undefined).filter((plug) => piecesOf(plug) > 0);
  const solderedTo = known.filter((plug) => pinPlanOf(plug).outline !== 'modular');
  const atCores = solderedTo.filter((plug) => plug.contacts.length > 2 || piecesOf(plug) > 1);
  const cores = atCores.reduce((sum, plug) => sum + plug.contacts.length, 0);
  return { overCable: known.length, overCores: cores + (hasFuse ? 2 : 0) };
}
