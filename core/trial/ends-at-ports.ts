import { type Fit, fitOf } from '../catalog/fit.ts';
import { portName, portOf } from '../station/parts.ts';
import { plugOf } from '../station/plug-of.ts';
import type { Connector } from '../station/schema/connector.ts';
import type { Cable, CableEnd, Station } from '../station/schema/schema.ts';

/** One end of a cable at its port: the plug, the jack and how they go together. */
export interface EndAtPort {
  readonly cable: Cable;
  readonly end: CableEnd;
  readonly plug: Connector & { id: string };
  readonly jack: Connector;
  readonly fit: Fit;
  /** Names for a message. */
  readonly words: { readonly cable: string; readonly plug: string; readonly port: string; readonly jack: string };
}

/** Both ends of a cable, but for one without a plug. */
export const endsAtPorts = (station: Station, cable: Cable): readonly EndAtPort[] =>
  (['a', 'b'] as const).flatMap((end) => {
    const plug = plugOf(station, cable, end);
    if (!plug) return [];
    const { port, connector: jack } = portOf(station, cable[end]);
    const fit = fitOf(station.connectors, plug.id, port.connector);
    const words = { cable: cable.number, plug: plug.name, port: portName(station, cable[end]), jack: jack.name };
    return [{ cable, end, plug, jack, fit, words }];
  });
