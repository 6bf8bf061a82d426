import { type ActorStates, type Circuit, isOpenGate, type RfEdge, type RfLoad } from '../circuit/circuit.ts';
import { add, type Complex, complex, magnitude } from '../quantity/complex.ts';
import { wattsFromDbm } from '../quantity/decibel.ts';
import { remember } from '../station/remember.ts';
import type { Chain, ChainEnd, ChainPort, ChainStep } from './chain.ts';
import { ohmsInto, parallel, siemensOf, voltsBehind } from './chain-step.ts';
import { type LoadOhms, loadOhms } from './load-ohms.ts';
import { openEnd, reflectionCoefficient, swrOfReflection } from './reflection.ts';
import type { RfField } from './rf-solution.ts';
import { systemOhms } from './system-ohms.ts';

const one = complex(1);

/** `solveChain` at the source's own level, worked out once for each state of a region. */
export const chainOf = (circuit: Circuit, on: ActorStates, field: RfField): Chain => chainsOf(circuit)(field, on);

const chainsOf = remember((circuit: Circuit) => {
  const known = new WeakMap<RfField, Chain>();
  return (field: RfField, on: ActorStates): Chain => {
    const chain = known.get(field) ?? solveChain(circuit, on, field);
    known.set(field, chain);
    return chain;
  };
});

/**
 * The way of an active source's power: impedances from where it ends back to the source, then volts and watts from the
 * source on. A coax is a lossy line; what only attenuates is a pad that is matched to 50 Ω; an amplifier shows 50 Ω
 * and starts anew with what it makes; a tuner brings a load inside its range to 50 Ω and is a pad for any other. The
 * source gives `dbm` into 50 Ω (its own level if not given), from 50 Ω: 100 W into an open end are 100 W reflected.
 */
export function solveChain(circuit: Circuit, on: ActorStates, field: RfField, dbm?: number): Chain {
  const source = circuit.rf.sources[field.source];
  if (!source) throw new Error(`no source ${field.source}`);
  return new Walk(circuit, on, field, source.port).from(field.source, wattsFromDbm(dbm ?? source.spec.dbm));
}

/** What hangs on each port, in any state. */
const loadsAt = remember((circuit: Circuit): ReadonlyMap<number, readonly RfLoad[]> => {
  const loads = new Map<number, RfLoad[]>();
  for (const load of circuit.rf.loads) push(loads, load.port, load);
  return loads;
});

/** A step onward from a port. */
interface Onward {
  readonly edge: RfEdge;
  readonly to: number;
}

/** What hangs on a port, in the state that is looked at. */
type Hanging = { readonly load: RfLoad } & LoadOhms;

/** Steps are taken from lists, not by functions that call themselves: a way may have thousands. */
class Walk {
  private readonly onward = new Map<number, Onward[]>();
  private readonly hanging = new Map<number, Hanging[]>();
  /** Ohms looking from a port away from the source. */
  private readonly ohms = new Map<number, Complex>();
  private readonly ports: ChainPort[] = [];
  private readonly steps: ChainStep[] = [];
  private readonly ends: ChainEnd[] = [];

  constructor(
    private readonly circuit: Circuit,
    on: ActorStates,
    field: RfField,
    private readonly start: number,
  ) {
    const { edges, hertz } = circuit.rf;
    for (const [to, { from, edge }] of field.selected) {
      const step = edge === null ? undefined : edges[edge];
      if (from !== null && step) push(this.onward, from, { edge: step, to });
      for (const load of loadsAt(circuit).get(to) ?? []) {
        // A transceiver's own receiver is not what it sends into.
        const isOwn = to === start && load.spec.role === 'receiver';
        if (!isOwn && isOpenGate(load.gate, on)) push(this.hanging, to, { load, ...loadOhms(load.spec, hertz) });
      }
    }
  }

  from(source: number, watts: number): Chain {
    const order = this.outward();
    // From where power ends back to the source: all that hangs on a port, in parallel.
    for (const port of order.toReversed()) this.ohms.set(port, this.allAt(port));
    const rho = reflectionCoefficient(this.ohmsAt(this.start), systemOhms);
    const volts = new Map([[this.start, Math.sqrt(systemOhms * watts) * magnitude(add(one, rho))]]);
    const came = new Map<number, ChainStep>();
    for (const port of order) {
      const step = came.get(port);
      if (step) this.steps.push(step);
      const here = volts.get(port) ?? 0;
      this.arrive(port, here);
      for (const onward of this.onward.get(port) ?? []) {
        const { step: next, after } = this.step(port, here, onward);
        came.set(onward.to, next);
        volts.set(onward.to, after);
      }
    }
    return { source, sourceWatts: watts, ports: this.ports, steps: this.steps, ends: this.ends };
  }

  /** The ports in the order in which power comes to them, one way to its end before the next. */
  private outward(): number[] {
    const order: number[] = [];
    const open = [this.start];
    for (let port = open.pop(); port !== undefined; port = open.pop()) {
      order.push(port);
      for (const { to } of this.onward.get(port)?.toReversed() ?? []) open.push(to);
    }
    return order;
  }

  private ohmsAt(port: number): Complex {
    return this.ohms.get(port) ?? openEnd;
  }

  private allAt(port: number): Complex {
    const { hertz } = this.circuit.rf;
    const loads = (this.hanging.get(port) ?? []).map(({ ohms }) => ohms);
    return parallel([
      ...loads,
      ...(this.onward.get(port) ?? []).map(({ edge, to }) => ohmsInto(edge, this.ohmsAt(to), hertz)),
    ]);
  }

  /** Takes in that so many volts rms stand at a port. */
  private arrive(port: number, volts: number) {
    const ohms = this.ohmsAt(port);
    const siemens = siemensOf(ohms);
    const rho = reflectionCoefficient(ohms, systemOhms);
    const wave = volts / Math.max(magnitude(add(one, rho)), 1e-9);
    this.ports.push({
      port,
      ohms,
      swr: swrOfReflection(magnitude(rho)),
      forwardWatts: wave ** 2 / systemOhms,
      reflectedWatts: (wave * magnitude(rho)) ** 2 / systemOhms,
      netWatts: volts ** 2 * siemens.re,
      peakVolts: volts * Math.SQRT2,
    });
    for (const end of this.hanging.get(port) ?? [])
      this.ends.push({ ...end, watts: volts ** 2 * siemensOf(end.ohms).re });
  }

  /** A step from a port with so many volts, and the volts behind it. */
  private step(from: number, volts: number, { edge, to }: Onward): { step: ChainStep; after: number } {
    const { hertz } = this.circuit.rf;
    const behind = this.ohmsAt(to);
    const inWatts = volts ** 2 * siemensOf(ohmsInto(edge, behind, hertz)).re;
    const { after, peakVolts, match } = voltsBehind(edge, volts, behind, hertz);
    const outWatts = after ** 2 * siemensOf(behind).re;
    const lossDb = inWatts > 0 && outWatts > 0 ? 10 * Math.log10(inWatts / outWatts) : edge.lossDb;
    return { step: { edge, from, to, lossDb, matchedLossDb: edge.lossDb, peakVolts, match }, after };
  }
}

function push<T>(lists: Map<number, T[]>, key: number, item: T) {
  const list = lists.get(key);
  if (list) list.push(item);
  else lists.set(key, [item]);
}
