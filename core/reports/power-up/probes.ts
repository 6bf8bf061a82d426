import {
  type Circuit,
  type CircuitPart,
  emptyCircuit,
  isOpenGate,
  type PullUpPart,
  type Resistor,
} from '../../circuit/circuit.ts';
import { DcSolver } from '../../dc/dc-solver.ts';
import { voltsBetween } from '../../keydown/feel.ts';
import type { ChainPort } from '../../rf/chain.ts';
import { chainOf } from '../../rf/solve-chain.ts';
import { remember } from '../../station/remember.ts';
import type { Probe, Seen } from './setup.ts';

/** Volts of one contact against another, by the names of their nodes. */
export const voltsAt =
  (plus: string, minus: string): Probe =>
  ({ circuit, dc }) => {
    const [a, b] = [circuit.nodeOf.get(plus), circuit.nodeOf.get(minus)];
    if (!dc || a === undefined || b === undefined) return null;
    // A meter's own ten megohms pull to zero what nothing else holds.
    return voltsBetween(dc, a, b) ?? 0;
  };

/** Amperes out of a supply. */
export const ampsOf =
  (unit: string, element: string): Probe =>
  ({ circuit, dc }) => {
    const index = circuit.parts.findIndex(
      ({ kind, origin }) =>
        kind === 'supply' && origin.type === 'element' && origin.unit === unit && origin.element === element,
    );
    return dc && index >= 0 ? dc.ampsIn(index) : null;
  };

/** What a meter in the line at an RF port shows; nothing where nothing sends through it. */
function lineAt({ circuit, reach }: Seen, name: string): ChainPort | undefined {
  const port = circuit.rf.ports.indexOf(name);
  if (!reach || port < 0) return undefined;
  const chains = reach.rf.fieldsAt(port).map((field) => chainOf(circuit, reach.on, field));
  return chains.flatMap((chain) => chain.ports).find((p) => p.port === port);
}

/** Watts forward at an RF port. */
export const wattsAt =
  (port: string): Probe =>
  (seen) =>
    lineAt(seen, port)?.forwardWatts ?? 0;

/** The SWR there; 1 while nothing sends, as a meter's needle rests. */
export const swrAt =
  (port: string): Probe =>
  (seen) =>
    lineAt(seen, port)?.swr ?? 1;

/** An ohmmeter's own resistance; any would do, as the divider is worked back exactly. */
const meterOhms = 1000;

/** Above this a meter shows an open circuit. */
const mostOhms = 1e8;

/**
 * Ohms between two contacts with all power off: what is metal, or meant to be a resistor, and joined just then; of one
 * cable alone where it lies unplugged on the bench.
 */
export const ohmsBetween =
  (one: string, other: string, cable?: string): Probe =>
  ({ circuit, on, open }) => {
    const [from, to] = [circuit.nodeOf.get(one), circuit.nodeOf.get(other)];
    if (from === undefined || to === undefined) return null;
    const isHere = ({ gate, index }: Passive) => !open.has(index) && isOpenGate(gate, on);
    // Of one cable alone it is quicker to look for its few parts than to sort those of a whole station.
    const at = cable === undefined ? passiveAt(circuit) : sortByNode(passivesOf(circuit, (part) => isOf(part, cable)));
    const metal = metalFrom(at, from, isHere);
    const node = metal.nodeOf.get(from);
    const reference = metal.nodeOf.get(to);
    // No metal leads there.
    if (node === undefined || reference === undefined) return null;
    const meter: PullUpPart = {
      kind: 'pullUp',
      node,
      reference,
      fedFrom: null,
      spec: { id: 'meter', type: 'pullUp', contact: 'meter.probe', volts: 1, ohms: meterOhms },
      gate: [],
      origin: { type: 'element', unit: '', element: 'meter' },
    };
    const nodes = [...metal.nodeOf.keys()].map(String);
    const dc = new DcSolver({ ...emptyCircuit, nodes, parts: [...metal.parts, meter] }).solve(new Uint8Array(0));
    const volts = dc.between(node, reference) ?? 1;
    const ohms = (meterOhms * volts) / Math.max(1e-15, 1 - volts);
    return ohms > mostOhms ? null : ohms;
  };

interface Passive {
  readonly index: number;
  readonly gate: Resistor['gate'];
  readonly part: Resistor;
}

/** All metal that hangs together with a node, with its nodes numbered from 0: a station's other circuits don't matter. */
function metalFrom(at: PassivesAt, start: number, isHere: (passive: Passive) => boolean) {
  const nodeOf = new Map([[start, 0]]);
  const parts = new Map<Passive, Resistor>();
  const number = (node: number): number => {
    const known = nodeOf.get(node) ?? nodeOf.size;
    nodeOf.set(node, known);
    return known;
  };
  // A map goes through what is added to it meanwhile, too.
  for (const node of nodeOf.keys()) {
    for (const passive of at.get(node) ?? []) {
      if (parts.has(passive) || !isHere(passive)) continue;
      parts.set(passive, { ...passive.part, a: number(passive.part.a), b: number(passive.part.b) });
    }
  }
  return { nodeOf, parts: [...parts.values()] };
}

type PassivesAt = ReadonlyMap<number, readonly Passive[]>;

const passiveAt = remember((circuit: Circuit): PassivesAt => sortByNode(passivesOf(circuit, () => true)));

function sortByNode(passives: readonly Passive[]): PassivesAt {
  const at = new Map<number, Passive[]>();
  const put = (node: number, passive: Passive) => {
    const list = at.get(node);
    if (list) list.push(passive);
    else at.set(node, [passive]);
  };
  for (const passive of passives) {
    put(passive.part.a, passive);
    if (passive.part.b !== passive.part.a) put(passive.part.b, passive);
  }
  return at;
}

const isOf = ({ origin }: CircuitPart, cable: string): boolean => 'cable' in origin && origin.cable === cable;

const passivesOf = ({ parts }: Circuit, isAsked: (part: CircuitPart) => boolean): readonly Passive[] =>
  parts.flatMap((part, index) => {
    if (!isAsked(part)) return [];
    const { gate, origin } = part;
    const here = (resistor: Resistor) => [{ index, gate, part: { ...resistor, gate: [] } }];
    if (part.kind === 'resistor') return here(part);
    // A heater or a lamp shows its ohms cold as well.
    if (part.kind !== 'load' || part.spec.law !== 'resistance') return [];
    return here({ kind: 'resistor', a: part.plus, b: part.minus, ohms: part.spec.amount, gate, origin });
  });
