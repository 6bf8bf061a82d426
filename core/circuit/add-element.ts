import { fuseBreakingAmps, fuseOhms } from '../catalog/wire/fuses.ts';
import type { Station, Unit } from '../station/schema/schema.ts';
import type { ElementOf, UnitElement, UnitKind } from '../station/schema/unit-kind.ts';
import { addSignal } from './add-signal.ts';
import { type Gate, never, type Resistor } from './circuit.ts';
import type { FragmentDraft, GateFor } from './fragment-draft.ts';
import { sourceParts } from './source-parts.ts';

/** Adds what an element of a unit is in the circuit; nothing where a setting rules it out. */
export function addElement(
  draft: FragmentDraft,
  station: Station,
  unit: Unit,
  kind: UnitKind,
  element: UnitElement,
  gateFor: GateFor,
) {
  // A path that a setting rules out still leaks: an unselected position of a switch is not an absent one.
  const gate = gateFor(element.when) ?? (element.type === 'rfPath' ? never : null);
  if (!gate) return;
  const node = (ref: string) => draft.node(`${unit.id}.${ref}`);
  const origin = { type: 'element', unit: unit.id, element: element.id } as const;
  switch (element.type) {
    case 'conductor': {
      const fuse = fuseOf(element);
      const ohms = element.ohms + (fuse ? fuseOhms(fuse.ratedAmps, fuse.family) : 0);
      draft.parts.push({
        kind: 'resistor',
        a: node(element.from),
        b: node(element.to),
        ohms,
        gate,
        origin,
        ...(fuse && { fuse }),
      });
      break;
    }
    case 'contactPair':
      draft.parts.push({
        kind: 'resistor',
        a: node(element.from),
        b: node(element.to),
        ohms: element.onOhms,
        gate,
        origin,
      });
      break;
    case 'supply':
    case 'battery':
    case 'converter':
    case 'diode':
      draft.parts.push(...sourceParts(element, node, { gate, origin }));
      break;
    case 'load':
      addLoad(draft, unit, element, gate, gateFor);
      break;
    case 'pullUp': {
      const feed = kind.elements.find((e) => e.type === 'load');
      const fedFrom = feed ? node(feed.plus) : null;
      const reference = node(element.reference ?? 'chassis');
      draft.parts.push({
        kind: 'pullUp',
        node: node(element.contact),
        reference,
        fedFrom,
        spec: element,
        gate,
        origin,
      });
      break;
    }
    case 'audioSource':
    case 'audioLoad':
    case 'dataEnd':
      addSignal(draft, station, unit, kind, element, gate);
      break;
    default:
      addRf(draft, station, unit, kind, element, gate);
  }
}

function fuseOf({ fuseAmps, fuseFamily = 'blade', fuseBreakingAmps: own }: ElementOf<'conductor'>): Resistor['fuse'] {
  if (fuseAmps === undefined) return undefined;
  return { ratedAmps: fuseAmps, family: fuseFamily, breakingAmps: own ?? fuseBreakingAmps(fuseAmps, fuseFamily) };
}

function addLoad(draft: FragmentDraft, unit: Unit, load: ElementOf<'load'>, gate: Gate, gateFor: GateFor) {
  const states = (load.states ?? []).flatMap((state) => {
    const stateGate = gateFor(state.when);
    return stateGate ? [{ gate: stateGate, amount: state.amount }] : [];
  });
  draft.parts.push({
    kind: 'load',
    plus: draft.node(`${unit.id}.${load.plus}`),
    minus: draft.node(`${unit.id}.${load.minus}`),
    spec: load,
    states,
    dropOutV: load.dropOutV ?? load.minV / 2,
    gate,
    origin: { type: 'element', unit: unit.id, element: load.id },
  });
}

function addRf(draft: FragmentDraft, station: Station, unit: Unit, kind: UnitKind, element: UnitElement, gate: Gate) {
  const port = (id: string) => draft.rfPort(`${unit.id}.${id}`);
  const origin = { type: 'element', unit: unit.id, element: element.id } as const;
  if (element.type === 'rfPath' || element.type === 'matcher') {
    const path = element.type === 'rfPath' ? element : null;
    draft.rfEdges.push({
      a: port(element.a),
      b: port(element.b),
      lossDb: element.lossDb,
      isolationDb: path?.isolationDb ?? null,
      oneWay: path?.oneWay ?? false,
      saturationDbm: path?.saturationDbm ?? null,
      maxWatts: element.maxWatts ?? null,
      gate: path && isKeptApart(path, station.plan.frequencyHz) ? never : gate,
      origin,
      spec: element,
    });
    if (element.dcOhms !== undefined)
      joinCentres(draft, unit, kind, element.a, element.b, element.dcOhms, gate, element.id);
  } else if (element.type === 'rfSource') {
    draft.rfSources.push({ port: port(element.port), unit: unit.id, gate, spec: element });
  } else if (element.type === 'rfLoad') {
    draft.rfLoads.push({ port: port(element.port), unit: unit.id, gate, spec: element });
    if (element.dcOhms !== undefined) {
      const a = draft.node(`${unit.id}.${element.port}.centre`);
      const b = draft.node(`${unit.id}.${element.port}.shell`);
      draft.parts.push({ kind: 'resistor', a, b, ohms: element.dcOhms, gate, origin, lumped: true });
    }
  }
}

/** A duplexer's other side: outside its band a path that states its isolation is none. */
function isKeptApart(
  { minHz = 0, maxHz = Number.POSITIVE_INFINITY, isolationDb }: ElementOf<'rfPath'>,
  hertz: number,
): boolean {
  return isolationDb !== undefined && (hertz < minHz || hertz > maxHz);
}

/** RF connectors all name their contacts `centre` and `shell`. */
function joinCentres(
  draft: FragmentDraft,
  unit: Unit,
  kind: UnitKind,
  a: string,
  b: string,
  ohms: number,
  gate: Gate,
  element: string,
) {
  if (!kind.ports.some((p) => p.id === a) || !kind.ports.some((p) => p.id === b)) return;
  const nodeA = draft.node(`${unit.id}.${a}.centre`);
  const nodeB = draft.node(`${unit.id}.${b}.centre`);
  draft.parts.push({
    kind: 'resistor',
    a: nodeA,
    b: nodeB,
    ohms,
    gate,
    origin: { type: 'element', unit: unit.id, element },
  });
}
