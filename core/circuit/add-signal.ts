import type { Station, Unit } from '../station/schema/schema.ts';
import type { ElementOf, UnitKind } from '../station/schema/unit-kind.ts';
import type { Gate } from './circuit.ts';
import type { FragmentDraft } from './fragment-draft.ts';

type Signal = ElementOf<'audioSource'> | ElementOf<'audioLoad'> | ElementOf<'dataEnd'>;

/** Adds an end of an audio or data line, and the way for DC that it has. */
export function addSignal(
  draft: FragmentDraft,
  station: Station,
  unit: Unit,
  kind: UnitKind,
  spec: Signal,
  gate: Gate,
) {
  const node = draft.node(`${unit.id}.${spec.contact}`);
  const reference = draft.node(`${unit.id}.${referenceOf(station, kind, spec)}`);
  const end = { node, reference, unit: unit.id, gate };
  if (spec.type === 'audioSource') draft.sources.push({ ...end, spec });
  else if (spec.type === 'audioLoad') draft.loads.push({ ...end, spec });
  else draft.data.push({ ...end, spec });
  if (spec.type === 'dataEnd' || spec.dcOhms === undefined) return;
  const origin = { type: 'element', unit: unit.id, element: spec.id } as const;
  draft.parts.push({ kind: 'resistor', a: node, b: reference, ohms: spec.dcOhms, gate, origin, lumped: true });
}

/** The sleeve or common of the same port, where no other contact is named; the chassis of a port without one. */
function referenceOf(station: Station, kind: UnitKind, spec: Signal): string {
  if (spec.reference !== undefined) return spec.reference;
  const [id] = spec.contact.split('.');
  const port = kind.ports.find((p) => p.id === id);
  const common = station.connectors[port?.connector ?? '']?.contacts.find((c) => c.role === 'return');
  return common ? `${id}.${common.id}` : 'chassis';
}
