import { emptyCircuit, type RfEdge } from '../../core/circuit/circuit.ts';
import { type Complex, magnitude } from '../../core/quantity/complex.ts';
import { dbmFromWatts } from '../../core/quantity/decibel.ts';
import type { Chain } from '../../core/rf/chain.ts';
import { type Line, matchedLossDb } from '../../core/rf/line.ts';
import { reflectionCoefficient, swrOfReflection } from '../../core/rf/reflection.ts';
import { RfSolver } from '../../core/rf/rf-solver.ts';
import { chainOf } from '../../core/rf/solve-chain.ts';

/** SWR of a load in ohms on a line of `z0` ohms. */
export const swrOfLoad = (load: Complex, z0: number): number =>
  swrOfReflection(magnitude(reflectionCoefficient(load, z0)));

const nothing: Omit<RfEdge, 'a' | 'b' | 'lossDb' | 'origin'> = {
  isolationDb: null,
  oneWay: false,
  saturationDbm: null,
  maxWatts: null,
  gate: [],
};

/** A transmitter, one thing behind it and a load, walked as the program walks a station. */
function walk(step: Omit<RfEdge, 'a' | 'b'>, load: Complex, hertz: number, watts: number): Chain {
  const circuit = {
    ...emptyCircuit,
    rf: {
      hertz,
      ports: ['tx.out', 'end.in'],
      edges: [{ ...step, a: 0, b: 1 }],
      sources: [
        { port: 0, unit: 'tx', gate: [], spec: { id: 'rf', type: 'rfSource', port: 'out', dbm: dbmFromWatts(watts) } },
      ],
      loads: [
        {
          port: 1,
          unit: 'end',
          gate: [],
          spec: { id: 'load', type: 'rfLoad', port: 'in', role: 'termination', ohms: load.re, reactance: load.im },
        },
      ],
    },
  } as const;
  const on = new Uint8Array(0);
  const [field] = new RfSolver(circuit).solve(on).fields;
  if (!field) throw new Error('nothing sends');
  return chainOf(circuit, on, field);
}

/** What the program says of a line before a load of some ohms, behind a transmitter of so many watts. */
export function walkLine(line: Line, watts = 100) {
  const lossDb = matchedLossDb(line);
  const { hertz, load, ...rest } = line;
  const coax = { ...rest, tolerance: 0, maxVolts: null };
  const chain = walk({ ...nothing, lossDb, origin: { type: 'cable', cable: 'r1' }, line: coax }, load, hertz, watts);
  const [near] = chain.ports;
  const [step] = chain.steps;
  if (!near || !step) throw new Error('the line was not walked');
  return { inputOhms: near.ohms, netWatts: near.netWatts, totalLossDb: step.lossDb, peakVolts: step.peakVolts ?? 0 };
}

/** What the program says of a matched pad of so many decibels before a load: watts out, watts of heat, SWR before it. */
export function walkPad(watts: number, db: number, load: Complex = { re: 50, im: 0 }) {
  const origin = { type: 'element', unit: 'pad', element: 'path' } as const;
  const chain = walk({ ...nothing, lossDb: db, origin }, load, 14e6, watts);
  const outWatts = chain.ends[0]?.watts ?? Number.NaN;
  const near = chain.ports[0];
  return { outWatts, heatWatts: (near?.netWatts ?? Number.NaN) - outWatts, swr: near?.swr ?? Number.NaN };
}
