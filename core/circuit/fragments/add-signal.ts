import { portOfRef } from '../../station/parts.ts';
import type { ElementOf } from '../../station/schema/unit-kind.ts';
import type { Gate } from '../circuit.ts';
import type { UnitDraft } from './unit-draft.ts';

type Signal = ElementOf<'audioSource'> | ElementOf<'audioLoad'> | ElementOf<'dataEnd'>;

/** Adds an end of an audio or data line, and the way for DC that it has. */
export function addSignal(draft: UnitDraft, spec: Signal, gate: Gate) {
  const { fragment, unit } = draft;
  const node = draft.node(spec.contact);
  const reference = draft.node(referenceOf(draft, spec));
  const end = { node, reference, unit: unit.id, gate };
  if (spec.type === 'audioSource') fragment.sources.push({ ...end, spec });
  else if (spec.type === 'audioLoad') fragment.loads.push({ ...end, spec });
  else fragment.data.push({ ...end, spec });
  if (spec.type === 'dataEnd' || spec.dcOhms === undefined) return;
  const origin = draft.originOf(spec.id);
  fragment.parts.push({ kind: 'resistor', a: node, b: reference, ohms: spec.dcOhms, gate, origin, lumped: true });
}

/** The sleeve or common of the same port, where no other contact is named; the chassis of a port without one. */
function referenceOf({ station, kind }: UnitDraft, spec: Signal): string {
  if (spec.reference !== undefined) return spec.reference;
  const id = portOfRef(spec.contact);
  const port = kind.ports.find((p) => p.id === id);
  const common = station.connectors[port?.connector ?? '']?.contacts.find((c) => c.role === 'return');
  return common ? `${id}.${common.id}` : 'chassis';
}
