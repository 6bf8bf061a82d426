import {
  type ActorStates,
  type Circuit,
  type CircuitPart,
  emptyCircuit,
  isOpenGate,
  type Resistor,
  type SupplyPart,
} from '../circuit/circuit.ts';
import { metalGroups } from '../circuit/metal-groups.ts';
import { remember } from '../station/remember.ts';
import { type AudioNet, audioNetsOf, isChassis } from './audio-nets.ts';
import { DcSolver } from './dc-solver.ts';

/** What one output makes at one input. Indices into `Signals`. */
export interface AudioLevel {
  readonly source: number;
  readonly load: number;
  /** Rms, at the most that the output gives. */
  readonly volts: number;
}

/** What an output sees, and the most that it gives. */
export interface AudioDrive {
  readonly source: number;
  /** Ohms of all that hangs on it; endless where nothing does. */
  readonly ohms: number;
  /** Rms volts with nothing connected: less than its own most where what it passes on is less. */
  readonly openVolts: number;
}

export interface AudioLevels {
  readonly levels: readonly AudioLevel[];
  readonly drives: readonly AudioDrive[];
}

/** One output after another passes a level on at most so many times. */
const mostStages = 8;
const origin = { type: 'element', unit: '', element: '' } as const;

/**
 * The audio level that each output makes at each input with some actors on, for several states one after the other; of
 * each state only the nets that no earlier one had so. Every impedance a resistance, bias resistors and contacts that plugs
 * join among them, each output alone with the others silent. An output that follows an input gives what comes there times
 * its gain, up to its most.
 *
 * 1 V behind 600 Ω into 600 Ω is 0.5 V: the divider R / (R + Rs).
 */
export function solveAudioInTurn(circuit: Circuit, states: readonly ActorStates[]): AudioLevels[] {
  const met = new Set<readonly Solved[]>();
  // What passes a level on has to see all that comes to it.
  const passesOn = circuit.signals.sources.some(({ spec }) => spec.follows);
  return states.map((on) => {
    const fresh = audioNetsOf(circuit)
      .map((net) => netIn(circuit, on, net))
      .filter((solved) => passesOn || !met.has(solved));
    for (const solved of fresh) met.add(solved);
    return levelsOf(circuit, fresh.flat());
  });
}

function levelsOf(circuit: Circuit, solved: readonly Solved[]): AudioLevels {
  const { sources } = circuit.signals;
  const open = sources.map(({ spec }) => (spec.follows ? 0 : spec.volts));
  const following = sources.flatMap(({ spec, unit }, i) =>
    spec.follows ? [{ i, spec, unit, follows: spec.follows }] : [],
  );
  for (let stage = 0; stage < mostStages && following.length > 0; stage++) {
    for (const { i, spec, unit, follows } of following) {
      const heard = solved
        .flatMap((s) => s.shares.map(({ load, share }) => ({ load, volts: share * (open[s.source] ?? 0) })))
        .filter(({ load }) => {
          const end = circuit.signals.loads[load];
          return end?.unit === unit && end.spec.id === follows.load;
        });
      const volts = Math.max(0, ...heard.map((h) => h.volts)) * 10 ** (follows.gainDb / 20);
      open[i] = Math.min(spec.volts, volts);
    }
  }
  return {
    levels: solved.flatMap(({ source, shares }) =>
      shares.map(({ load, share }) => ({ source, load, volts: share * (open[source] ?? 0) })),
    ),
    drives: solved.map(({ source, ohms }) => ({ source, ohms, openVolts: open[source] ?? 0 })),
  };
}

interface Solved {
  readonly source: number;
  readonly ohms: number;
  /** Volts at each input for one volt of the source. */
  readonly shares: readonly { readonly load: number; readonly share: number }[];
}

const statesOf = remember((_: AudioNet) => new Map<string, readonly Solved[]>());

/** The net with these actors on, solved once for each state of the actors that it depends on. */
function netIn(circuit: Circuit, on: ActorStates, net: AudioNet): readonly Solved[] {
  const known = statesOf(net);
  const key = net.actors.map((actor) => on[actor]).join('');
  const solved = known.get(key) ?? solveNet(circuit, on, net);
  known.set(key, solved);
  return solved;
}

function solveNet(circuit: Circuit, on: ActorStates, net: AudioNet): Solved[] {
  const { sources, loads } = circuit.signals;
  const active = net.sources.filter((s) => isOpenGate(sources[s]?.gate ?? [], on));
  const own = new Map(net.nodes.map((node, i) => [node, i]));
  const groupOf = metalGroups(circuit);
  const place = (node: number) => {
    // Grounds are numbered below zero, apart from the net's own nodes.
    const name = isChassis(circuit, node) ? -1 - groupOf(node) : node;
    const known = own.get(name) ?? own.size;
    own.set(name, known);
    return known;
  };
  const passive = net.parts.flatMap((i): Resistor[] => {
    const part = circuit.parts[i];
    if (!part || !isOpenGate(part.gate, on)) return [];
    if (part.kind === 'pullUp') return [resistor(place(part.node), place(part.reference), part.spec.ohms)];
    return part.kind === 'resistor' && !part.lumped ? [resistor(place(part.a), place(part.b), part.ohms)] : [];
  });
  const inputs = net.loads.flatMap((load) => {
    const end = loads[load];
    if (!end || !isOpenGate(end.gate, on)) return [];
    return [{ load, a: place(end.node), b: place(end.reference), ohms: end.spec.ohms }];
  });
  const outputs = active.flatMap((source) => {
    const end = sources[source];
    return end ? [{ source, a: place(end.node), b: place(end.reference), ohms: end.spec.ohms }] : [];
  });
  return outputs.map(({ source, a, b, ohms }) => {
    const others = [...outputs.filter((o) => o.source !== source), ...inputs].map((e) => resistor(e.a, e.b, e.ohms));
    const parts: CircuitPart[] = [oneVolt(a, b, ohms), ...others, ...passive];
    const nodes = Array.from({ length: own.size }, (_, i) => `${i}`);
    const dc = new DcSolver({ ...emptyCircuit, nodes, parts }).solve(new Uint8Array(0));
    const amps = dc.ampsIn(0);
    return {
      source,
      ohms: amps > 1e-12 ? 1 / amps - ohms : Number.POSITIVE_INFINITY,
      shares: inputs.map((e) => ({ load: e.load, share: Math.abs(dc.between(e.a, e.b) ?? 0) })),
    };
  });
}

const resistor = (a: number, b: number, ohms: number): Resistor => ({
  kind: 'resistor',
  a,
  b,
  ohms: Math.max(ohms, 1e-4),
  gate: [],
  origin,
});

const oneVolt = (plus: number, minus: number, sourceOhms: number): SupplyPart => ({
  kind: 'supply',
  plus,
  minus,
  spec: {
    id: '',
    type: 'supply',
    plus: '',
    minus: '',
    volts: 1,
    sourceOhms: Math.max(sourceOhms, 1e-3),
    amps: 1e6,
    peakAmps: 1e6,
    beyond: 'sags',
  },
  sinks: true,
  gate: [],
  origin,
});
