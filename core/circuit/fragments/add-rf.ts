import type { ElementOf } from '../../station/schema/unit-kind.ts';
import { type Gate, never } from '../circuit.ts';
import type { UnitDraft } from './unit-draft.ts';

type Path = ElementOf<'rfPath'> | ElementOf<'matcher'>;

/** Adds what makes, carries or ends RF in a unit, and the way for DC that it has. */
export function addRf(draft: UnitDraft, element: Path | ElementOf<'rfSource'> | ElementOf<'rfLoad'>, gate: Gate) {
  const { fragment, unit } = draft;
  if (element.type === 'rfSource') {
    fragment.rfSources.push({ port: draft.rfPort(element.port), unit: unit.id, gate, spec: element });
  } else if (element.type === 'rfLoad') {
    fragment.rfLoads.push({ port: draft.rfPort(element.port), unit: unit.id, gate, spec: element });
    if (element.dcOhms === undefined) return;
    const ends = { a: draft.node(`${element.port}.centre`), b: draft.node(`${element.port}.shell`) };
    const origin = draft.originOf(element.id);
    fragment.parts.push({ kind: 'resistor', ...ends, ohms: element.dcOhms, gate, origin, lumped: true });
  } else {
    addPath(draft, element, gate);
    joinCentres(draft, element, gate);
  }
}

function addPath(draft: UnitDraft, element: Path, gate: Gate) {
  const path = element.type === 'rfPath' ? element : null;
  draft.fragment.rfEdges.push({
    a: draft.rfPort(element.a),
    b: draft.rfPort(element.b),
    lossDb: element.lossDb,
    isolationDb: path?.isolationDb ?? null,
    oneWay: path?.oneWay ?? false,
    saturationDbm: path?.saturationDbm ?? null,
    maxWatts: element.maxWatts ?? null,
    gate: path && isKeptApart(path, draft.station.plan.frequencyHz) ? never : gate,
    origin: draft.originOf(element.id),
    spec: element,
  });
}

/** A duplexer's other side: outside its band a path that states its isolation is none. */
function isKeptApart(
  { minHz = 0, maxHz = Number.POSITIVE_INFINITY, isolationDb }: ElementOf<'rfPath'>,
  hertz: number,
): boolean {
  return isolationDb !== undefined && (hertz < minHz || hertz > maxHz);
}

/** Joins the centres of a path's ports where it says its ohms; RF connectors all name theirs `centre`. */
function joinCentres(draft: UnitDraft, { id, a, b, dcOhms }: Path, gate: Gate) {
  const { ports } = draft.kind;
  if (dcOhms === undefined || ![a, b].every((end) => ports.some((p) => p.id === end))) return;
  const ends = { a: draft.node(`${a}.centre`), b: draft.node(`${b}.centre`) };
  draft.fragment.parts.push({ kind: 'resistor', ...ends, ohms: dcOhms, gate, origin: draft.originOf(id) });
}
