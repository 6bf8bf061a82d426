import type { Connector } from '../station/schema/connector.ts';
import { coaxialConnectors } from './connectors/coaxial-connectors.ts';
import { dataConnectors } from './connectors/data-connectors.ts';
import { headsetConnectors } from './connectors/headset-connectors.ts';
import { jackConnectors } from './connectors/jack-connectors.ts';
import { morePowerConnectors } from './connectors/more-power-connectors.ts';
import { multiWayConnectors } from './connectors/multi-way-connectors.ts';
import { powerConnectors } from './connectors/power-connectors.ts';

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
