import type { Circuit, CircuitPart, Origin, Resistor } from '../circuit/circuit.ts';
import { voltsBetween } from './feel.ts';
import type { PlugReading, Reach, Solvers } from './key-down.ts';

/** A contact of a plug in a jack. */
interface Joint {
  readonly index: number;
  readonly part: Resistor;
  readonly origin: Extract<Origin, { type: 'mate' }>;
}

/** What stands on the plugs of the loads that get less than they need, with each jack's plugs pulled; of several plugs the most reversed. */
export function readPlugs({ parts }: Circuit, { dc }: Solvers, reach: Reach): Map<number, PlugReading> {
  const read = new Map<number, PlugReading>();
  let joints: readonly Joint[] | null = null;
  parts.forEach((load, i) => {
    if (load.kind !== 'load' || (voltsBetween(reach.dc, load.plus, load.minus) ?? 0) >= load.dropOutV) return;
    joints ??= jointsIn(parts);
    const own = joints.filter(({ part }) => part.b === load.plus || part.b === load.minus);
    const blocks = new Set(own.map(({ index }) => reach.dc.blockOf(index)));
    const pulled = dc.solveFrom(reach.dc, [...blocks], reach.on, new Set(own.map(({ index }) => index)));
    for (const { part, origin } of own) {
      if (part.b !== load.plus) continue;
      const isOfPlug = (o: Joint['origin']) => o.cable === origin.cable && o.end === origin.end;
      const minus = own.find((j) => j.part.b === load.minus && isOfPlug(j.origin))?.part.a;
      const volts = minus === undefined ? null : voltsBetween(pulled, part.a, minus);
      if (volts !== null && volts < (read.get(i)?.volts ?? Number.POSITIVE_INFINITY))
        read.set(i, { cable: origin.cable, volts });
    }
  });
  return read;
}

const jointsIn = (parts: readonly CircuitPart[]): Joint[] =>
  parts.flatMap((part, index) =>
    part.kind === 'resistor' && part.origin.type === 'mate' ? [{ index, part, origin: part.origin }] : [],
  );
