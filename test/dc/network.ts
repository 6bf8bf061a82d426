import { type Circuit, type CircuitPart, emptyCircuit, type SupplyPart } from '../../core/circuit/circuit.ts';
import { DcSolver } from '../../core/dc/dc-solver.ts';

const origin = { type: 'element', unit: 'test', element: 'part' } as const;

/** A bare DC network by node names, without a station around it. */
export class Network {
  private readonly nodes: string[] = [];
  private readonly parts: CircuitPart[] = [];

  resistor(a: string, b: string, ohms: number): this {
    return this.add({ kind: 'resistor', a: this.node(a), b: this.node(b), ohms, gate: [], origin });
  }

  supply(
    plus: string,
    minus: string,
    volts: number,
    sourceOhms: number,
    peakAmps = 1000,
    beyond: 'limits' | 'shutsDown' | 'sags' = 'sags',
  ): this {
    const spec = {
      id: 'part',
      type: 'supply',
      plus,
      minus,
      volts,
      sourceOhms,
      amps: peakAmps,
      peakAmps,
      beyond,
    } as const;
    return this.add({
      kind: 'supply',
      plus: this.node(plus),
      minus: this.node(minus),
      spec,
      sinks: false,
      gate: [],
      origin,
    });
  }

  /** A cell behind its ohms, which takes current as readily as it gives it. */
  battery(plus: string, minus: string, volts: number, sourceOhms: number): this {
    this.supply(plus, minus, volts, sourceOhms);
    this.parts.push({ ...(this.parts.pop() as SupplyPart), sinks: true });
    return this;
  }

  /** A junction by its saturation current and emission, with ohms in series. */
  diode(anode: string, cathode: string, saturationAmps: number, emission: number, ohms: number): this {
    const slopeVolts = emission * 0.0258649;
    return this.add({
      kind: 'diode',
      anode: this.node(anode),
      cathode: this.node(cathode),
      saturationAmps,
      slopeVolts,
      ohms,
      gate: [],
      origin,
    });
  }

  /** Two volts-and-amps halves joined by an efficiency. */
  converter(
    plus: string,
    minus: string,
    outPlus: string,
    outMinus: string,
    outVolts: number,
    efficiency: number,
    idleWatts = 0,
  ): this {
    const converter = { name: `${plus}-${outPlus}`, efficiency, idleWatts };
    const load = {
      id: 'in',
      type: 'load',
      plus,
      minus,
      law: 'power',
      amount: idleWatts,
      minV: 9,
      maxV: 30,
      absMaxV: 35,
      reverseProtected: false,
    } as const;
    this.add({
      kind: 'load',
      plus: this.node(plus),
      minus: this.node(minus),
      spec: load,
      states: [],
      dropOutV: 9,
      converter,
      gate: [],
      origin,
    });
    const supply = {
      id: 'out',
      type: 'supply',
      plus: outPlus,
      minus: outMinus,
      volts: outVolts,
      sourceOhms: 0.001,
      amps: 5,
      peakAmps: 5,
      beyond: 'limits',
    } as const;
    return this.add({
      kind: 'supply',
      plus: this.node(outPlus),
      minus: this.node(outMinus),
      spec: supply,
      sinks: false,
      converter,
      gate: [],
      origin,
    });
  }

  load(plus: string, minus: string, law: 'current' | 'power' | 'resistance', amount: number, dropOutV = 6): this {
    const spec = {
      id: 'part',
      type: 'load',
      plus,
      minus,
      law,
      amount,
      minV: 10,
      maxV: 15,
      absMaxV: 16,
      reverseProtected: false,
    } as const;
    return this.add({
      kind: 'load',
      plus: this.node(plus),
      minus: this.node(minus),
      spec,
      states: [],
      dropOutV,
      gate: [],
      origin,
    });
  }

  pullUp(contact: string, reference: string, volts: number, ohms: number, fedFrom: string | null): this {
    const spec = { id: 'part', type: 'pullUp', contact, volts, ohms } as const;
    const fed = fedFrom === null ? null : this.node(fedFrom);
    return this.add({
      kind: 'pullUp',
      node: this.node(contact),
      reference: this.node(reference),
      fedFrom: fed,
      spec,
      gate: [],
      origin,
    });
  }

  solve() {
    const circuit = this.circuit();
    const dc = new DcSolver(circuit).solve(new Uint8Array(0));
    const volts = (a: string, b: string) =>
      (dc.volts[this.node(a)] ?? Number.NaN) - (dc.volts[this.node(b)] ?? Number.NaN);
    return { dc, volts, amps: (part: number) => dc.amps[part] ?? Number.NaN };
  }

  circuit(): Circuit {
    const nodeOf = new Map(this.nodes.map((name, i) => [name, i]));
    return { ...emptyCircuit, nodes: this.nodes, nodeOf, parts: this.parts };
  }

  private add(part: CircuitPart): this {
    this.parts.push(part);
    return this;
  }

  private node(name: string): number {
    const known = this.nodes.indexOf(name);
    if (known >= 0) return known;
    this.nodes.push(name);
    return this.nodes.length - 1;
  }
}
