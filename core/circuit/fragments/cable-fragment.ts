import { coaxLossDb } from '../../catalog/cables/coax-loss-db.ts';
import { wiringOf } from '../../catalog/cables/wiring-of.ts';
import { fitOf } from '../../catalog/fit.ts';
import { fuseBreakingAmps, fuseOhms } from '../../catalog/wire/fuses.ts';
import { wireOhmsPerM } from '../../catalog/wire/wire.ts';
import { portOf, unitOf } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import type { Coax } from '../../station/schema/cable-kind.ts';
import type { Cable, CableEnd, PortRef, Station } from '../../station/schema/schema.ts';
import type { Fragment, RfLine } from '../circuit.ts';
import { FragmentDraft } from './fragment-draft.ts';

/** An adapter is two more joints and a short conductor; common practice. */
const adapterOhms = 0.01;

/** What a cable's fragment is made from. */
export const cableSource = (station: Station, cable: Cable): readonly unknown[] => [
  cable,
  station.cableKinds[cable.kind],
  kindAt(station, cable.a),
  kindAt(station, cable.b),
  station.connectors,
  station.settings,
  station.plan,
];

const kindAt = (station: Station, end: PortRef) => station.kinds[unitOf(station, end.unit).kind];

/** A cable: the joints of its plugs with the two ports, its conductors and their fuse, and its line for RF. */
export function cableFragment(station: Station, cable: Cable, from: readonly unknown[]): Fragment {
  const draft = new FragmentDraft(`cable ${cable.id}`, from);
  const joined = { a: addJoints(draft, station, cable, 'a'), b: addJoints(draft, station, cable, 'b') };
  addConductors(draft, station, cable);
  const ends = { a: portOf(station, cable.a), b: portOf(station, cable.b) };
  if (ends.a.port.class !== 'rf' || ends.b.port.class !== 'rf' || !joined.a || !joined.b) return draft;
  const coax = station.cableKinds[cable.kind]?.coax;
  draft.rfEdges.push({
    a: draft.rfPortElsewhere(cable.a.unit, `${cable.a.unit}.${cable.a.port}`),
    b: draft.rfPortElsewhere(cable.b.unit, `${cable.b.unit}.${cable.b.port}`),
    lossDb: coax ? coaxLossDb(coax, cable.lengthM, station.plan.frequencyHz) : 0,
    isolationDb: null,
    oneWay: false,
    saturationDbm: null,
    maxWatts: null,
    gate: [],
    origin: { type: 'cable', cable: cable.id },
    ...(coax && { line: lineOf(coax, cable.lengthM, station.plan.frequencyHz) }),
  });
  return draft;
}

const lineOf = (coax: Coax, lengthM: number, hertz: number): RfLine => ({
  z0: coax.z0,
  velocityFactor: coax.velocityFactor,
  lossDbPer100m: coaxLossDb(coax, 100, hertz),
  lengthM,
  tolerance: coax.tolerance ?? 0,
  // Cables are rated by their rms working voltage.
  maxVolts: coax.maxVolts === undefined ? null : coax.maxVolts * Math.SQRT2,
});

/** Joins the plug of one end to its port; true where the centre or tip makes contact. */
function addJoints(draft: FragmentDraft, station: Station, cable: Cable, end: CableEnd): boolean {
  const plug = plugOf(station, cable, end);
  if (!plug) return false;
  const { unit, port, connector } = portOf(station, cable[end]);
  const { fit, joins } = fitOf(station.connectors, plug.id, port.connector);
  const ohms = Math.max(plug.contactOhms, connector.contactOhms) + (fit === 'adapter' ? adapterOhms : 0);
  for (const [own, other] of joins) {
    const origin = { type: 'mate', cable: cable.id, end, unit: unit.id, port: port.id, contact: other } as const;
    const a = draft.node(`cable ${cable.id}.${end}.${own}`);
    const b = draft.nodeElsewhere(unit.id, `${unit.id}.${port.id}.${other}`);
    draft.parts.push({ kind: 'resistor', a, b, ohms, gate: [], origin });
  }
  const live = plug.contacts.find((c) => c.role === 'live')?.id;
  return joins.some(([own]) => own === live);
}

function addConductors(draft: FragmentDraft, station: Station, cable: Cable) {
  const kind = station.cableKinds[cable.kind];
  if (!kind) return;
  wiringOf(station, cable).forEach(({ a, b, role }, row) => {
    const wire = role === 'return' && kind.screen ? kind.screen : kind.core;
    const ohms = wireOhmsPerM(wire, station.settings.ambientCelsius) * cable.lengthM;
    const from = draft.node(`cable ${cable.id}.a.${a}`);
    const to = draft.node(`cable ${cable.id}.b.${b}`);
    const piece = (lengthM: number) => ({ type: 'wire', cable: cable.id, row, role, lengthM }) as const;
    if (!cable.fuse || role !== 'live') {
      draft.parts.push({ kind: 'resistor', a: from, b: to, ohms, gate: [], origin: piece(cable.lengthM) });
      return;
    }
    const { amps, family, atM, breakingAmps = fuseBreakingAmps(amps, family) } = cable.fuse;
    const before = draft.node(`cable ${cable.id}.fuse in`);
    const after = draft.node(`cable ${cable.id}.fuse out`);
    const share = cable.lengthM > 0 ? Math.min(1, atM / cable.lengthM) : 0;
    const beforeM = Math.min(atM, cable.lengthM);
    draft.parts.push({ kind: 'resistor', a: from, b: before, ohms: ohms * share, gate: [], origin: piece(beforeM) });
    const fuse = { ratedAmps: amps, family, breakingAmps };
    draft.parts.push({
      kind: 'resistor',
      a: before,
      b: after,
      ohms: fuseOhms(amps, family),
      gate: [],
      origin: { type: 'cableFuse', cable: cable.id },
      fuse,
    });
    const origin = piece(cable.lengthM - beforeM);
    draft.parts.push({ kind: 'resistor', a: after, b: to, ohms: ohms * (1 - share), gate: [], origin });
  });
}
