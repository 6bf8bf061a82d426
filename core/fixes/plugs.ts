import { cableKinds } from '../catalog/cables/cable-kinds.ts';
import { fitOf } from '../catalog/fit.ts';
import { connectorsById } from '../catalog/laying/place-unit.ts';
import { plural } from '../quantity/counted.ts';
import type { Fix } from '../station/fix.ts';
import { portOf } from '../station/parts.ts';
import type { Cable, CableEnd, Station } from '../station/schema/schema.ts';

/** The plug that the port takes, where the cable carries another one by its own choice. */
export function rightPlug(station: Station, cable: Cable, end: CableEnd): Fix | undefined {
  const kind = station.cableKinds[cable.kind];
  const classes = [cable.a, cable.b].map((ref) => portOf(station, ref).port.class);
  // A power lead in an RF socket is no matter of plugs.
  if (kind?.plugs || cable.plugs?.[end] === undefined || classes[0] !== classes[1]) return undefined;
  const { [end]: _, ...rest } = cable.plugs;
  const { port, connector } = portOf(station, cable[end]);
  const mate = connector.mates[0];
  if (mate === undefined) return undefined;
  return {
    name: `Put a plug for ${port.label || 'it'} on ${cable.number}`,
    change: {
      type: 'updateCable',
      id: cable.id,
      set: { plugs: Object.keys(rest).length > 0 ? rest : undefined },
      carried: { connectors: connectorsById([mate]) },
    },
  };
}

/** The adapters that lead from the plug to the port. */
export function fitAdapters(cable: Cable, end: CableEnd, chain: readonly string[]): Fix | undefined {
  if (chain.length === 0) return undefined;
  const name = `Fit the ${plural(chain.length, 'adapter')} on ${cable.number}`;
  return {
    name,
    change: { type: 'updateCable', id: cable.id, set: { adapters: { ...cable.adapters, [end]: [...chain] } } },
  };
}

/** The lead with one core more, so that a stereo jack gets a stereo plug. */
export function stereoLead(station: Station, cable: Cable): Fix | undefined {
  const own = station.cableKinds[cable.kind];
  if (!own) return undefined;
  const ends = (['a', 'b'] as const).map((end) => portOf(station, cable[end]).port.connector);
  const fits = (plugs: { a: string; b: string }) =>
    (['a', 'b'] as const).every((end, i) => fitOf(station.connectors, plugs[end], ends[i] ?? '').fit === 'mates');
  const readyMade = own.plugs
    ? cableKinds.find(({ kind }) => kind.class === own.class && kind.plugs !== undefined && fits(kind.plugs))
    : cableKinds.find(
        ({ kind }) => kind.class === own.class && kind.plugs === undefined && kind.screen && kind.cores === 2,
      );
  if (!readyMade) return undefined;
  const mates = ends.flatMap((id) => station.connectors[id]?.mates[0] ?? []);
  const plugs = Object.values(readyMade.kind.plugs ?? {});
  return {
    name: `Exchange ${cable.number} for a stereo one: ${readyMade.kind.name}`,
    change: {
      type: 'updateCable',
      id: cable.id,
      set: { kind: readyMade.id, plugs: undefined, wiring: undefined },
      carried: {
        cableKinds: { [readyMade.id]: readyMade.kind },
        connectors: connectorsById([...mates, ...plugs]),
      },
    },
  };
}

/** Two cables changed over at one unit. */
export function swapAt(unit: string, one: Cable, two: Cable): Fix | undefined {
  const endOf = (cable: Cable): CableEnd | null => (cable.a.unit === unit ? 'a' : cable.b.unit === unit ? 'b' : null);
  const [a, b] = [endOf(one), endOf(two)];
  if (a === null || b === null) return undefined;
  return {
    name: `Swap ${one.number} and ${two.number}`,
    change: {
      type: 'all',
      name: 'Swap cables',
      changes: [
        { type: 'updateCable', id: one.id, set: { [a]: two[b] } },
        { type: 'updateCable', id: two.id, set: { [b]: one[a] } },
      ],
    },
  };
}
