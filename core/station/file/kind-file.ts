import { z } from 'zod';
import { type Connector, connectorSchema } from '../schema/connector.ts';
import { id } from '../schema/numbers.ts';
import { type UnitKind, unitKindSchema } from '../schema/unit-kind.ts';
import type { FileFormat } from './versions.ts';
import { writeSorted } from './write-station.ts';

/** The head of a file with one unit kind. */
export const kindFormat: FileFormat = { name: 'stationwright-unit', version: 1, what: 'unit kind', migrations: {} };

export const kindFileSchema = z.strictObject({
  format: z.literal(kindFormat.name),
  version: z.literal(kindFormat.version),
  kind: unitKindSchema,
  connectors: z.record(id, connectorSchema),
});

/** A unit kind with the connectors that its ports name, so that it needs nothing else. */
export interface WholeKind {
  readonly kind: UnitKind;
  readonly connectors: Readonly<Record<string, Connector>>;
}

/** The text of a unit kind's file, with the connectors that it uses and no others. */
export function writeKind({ kind, connectors }: WholeKind): string {
  const used = new Set(kind.ports.map((port) => port.connector));
  const own = Object.fromEntries(Object.entries(connectors).filter(([name]) => used.has(name)));
  return writeSorted({ format: kindFormat.name, version: kindFormat.version, kind, connectors: own });
}
