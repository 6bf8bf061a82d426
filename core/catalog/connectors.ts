import type { Connector } from '../station/schema/connector.ts';
import { coaxialConnectors } from './connectors/coaxial.ts';
import { dataConnectors } from './connectors/data.ts';
import { headsetConnectors } from './connectors/headset.ts';
import { jackConnectors } from './connectors/jacks.ts';
import { morePowerConnectors } from './connectors/more-power.ts';
import { multiWayConnectors } from './connectors/multi-way.ts';
import { powerConnectors } from './connectors/power.ts';

/**
 * Every connector half of the catalogue by its id. `mates[0]` of a jack is the plug that a cable gets by default, and
 * of a plug the jack. `contactOhms` is that of one mated contact; a misfit stands with the half that is pushed in.
 */
export const connectors: Readonly<Record<string, Connector>> = {
  ...powerConnectors,
  ...coaxialConnectors,
  ...jackConnectors,
  ...dataConnectors,
  ...morePowerConnectors,
  ...headsetConnectors,
  ...multiWayConnectors,
};
