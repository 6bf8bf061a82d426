import { cableKinds } from '../../core/catalog/cables/cable-kinds.ts';
import { connectors } from '../../core/catalog/connectors.ts';
import { layCable } from '../../core/catalog/laying/lay-cable.ts';
import { placeUnit } from '../../core/catalog/laying/place-unit.ts';
import { createStation } from '../../core/station/create-station.ts';
import { edit } from '../../core/station/edit.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import type { Cable, Hookup, Plan, PortRef, Station, Unit } from '../../core/station/schema/schema.ts';
import type { UnitKind } from '../../core/station/schema/unit-kind.ts';

/** A unit by its shelf kind, or with figures or settings of its own; or a kind made up for the test. */
type UnitDrawing =
  | string
  | (Partial<Pick<Unit, 'overrides' | 'settings' | 'confirmed'>> & ({ kind: string } | { made: UnitKind }));

/** `supply.output > strip.input`, with what differs from the usual cable. */
export type CableDrawing = string | [route: string, set: Partial<Omit<Cable, 'id' | 'a' | 'b'>>];

export interface Drawing {
  /** By id; a unit is named like its id. */
  units: Record<string, UnitDrawing>;
  cables?: CableDrawing[];
  hookups?: Hookup[];
  plan?: Partial<Plan>;
}

/**
 * A station from a short description: units by id, cables by their two ends. It goes through the same edits as one
 * drawn by hand, and through the file format, so that a test can't draw what a file can't hold.
 */
export function drawStation({ units, cables = [], hookups = [], plan = {} }: Drawing): Station {
  let station = edit(createStation('Test'), { type: 'setPlan', set: plan });
  for (const hookup of hookups) station = edit(station, { type: 'addHookup', hookup });
  for (const [id, drawing] of Object.entries(units))
    station = addUnit(station, id, typeof drawing === 'string' ? { kind: drawing } : drawing);
  for (const drawing of cables) station = addCable(station, typeof drawing === 'string' ? [drawing, {}] : drawing);
  const read = readStation(writeStation(station));
  if ('problems' in read) throw new Error(read.problems.map((p) => `${p.place}: ${p.message}`).join('\n'));
  return read.station;
}

function addUnit(station: Station, id: string, drawing: Exclude<UnitDrawing, string>): Station {
  const { overrides, settings, confirmed } = drawing;
  const own = {
    id,
    name: id,
    ...(overrides && { overrides }),
    ...(settings && { settings }),
    ...(confirmed && { confirmed }),
  };
  const position = { x: 0, y: 0 };
  if ('kind' in drawing) {
    const placed = edit(station, placeUnit(station, drawing.kind, position));
    return { ...placed, units: placed.units.map((u, i) => (i === placed.units.length - 1 ? { ...u, ...own } : u)) };
  }
  const { made } = drawing;
  const carried = {
    kinds: { [`${id}-kind`]: made },
    connectors: Object.fromEntries(made.ports.map((p) => [p.connector, connectors[p.connector] as never])),
  };
  return edit(station, { type: 'addUnits', units: [{ kind: `${id}-kind`, position, ...own }], carried });
}

function addCable(station: Station, [route, set]: [string, Partial<Cable>]): Station {
  const [a, b] = route.split('>').map((end) => portRef(end.trim())) as [PortRef, PortRef];
  const laid = edit(station, layCable(station, a, b));
  const cable = laid.cables.at(-1) as Cable;
  const kind = set.kind === undefined ? undefined : cableKinds.find((k) => k.id === set.kind)?.kind;
  // A ready-made lead brings plugs of its own, which the usual cable's plugs must not hide.
  const { plugs, ...bare } = cable;
  const next: Cable = { ...(kind?.plugs ? bare : { ...bare, ...(plugs && { plugs }) }), ...set };
  const used = Object.values(next.plugs ?? kind?.plugs ?? {}).filter((id) => id !== undefined);
  const carried = {
    ...(kind && { cableKinds: { [next.kind]: kind } }),
    connectors: Object.fromEntries(used.map((id) => [id, connectors[id] as never])),
  };
  return edit({ ...laid, cables: laid.cables.slice(0, -1) }, { type: 'addCables', cables: [next], carried });
}

function portRef(text: string): PortRef {
  const [unit = '', port = ''] = text.split('.');
  return { unit, port };
}
