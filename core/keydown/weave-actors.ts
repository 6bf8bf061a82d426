import type { Circuit, CompiledFeel, LoadPart } from '../circuit/circuit.ts';
import { Groups } from '../circuit/groups.ts';
import type { ActorWeb, Solvers, Trial } from './key-down.ts';

/** The web of a circuit; that of an earlier trial where nothing of it has another number. */
export function weaveActors(circuit: Circuit, solvers: Solvers, before: Trial | null): ActorWeb {
  if (before && before.circuit.actors === circuit.actors && hasNumbersOf(solvers, before.solvers)) return before.web;
  const felt = circuit.actors.map(({ feels }) => feltBy(circuit, solvers, feels));
  const acted = circuit.actors.map((_, i) => ({
    blocks: solvers.dc.blocksOf([i]),
    regions: solvers.rf.regionsWith([i]),
  }));
  return {
    blocks: felt.map(({ blocks }, i) => [...blocks, ...(acted[i]?.blocks ?? [])]),
    regions: felt.map(({ regions }, i) => [...regions, ...(acted[i]?.regions ?? [])]),
    group: groupActors(circuit, solvers, felt),
  };
}

/** Whether blocks and regions have the numbers that they have in others. */
export const hasNumbersOf = ({ dc, rf }: Solvers, others: Solvers): boolean =>
  dc.hasLayoutOf(others.dc) && rf.hasNumbersOf(others.rf);

interface Felt {
  readonly blocks: readonly number[];
  readonly regions: readonly number[];
}

function feltBy({ parts }: Circuit, { dc, rf }: Solvers, feels: readonly CompiledFeel[]): Felt {
  const [blocks, regions]: [number[], number[]] = [[], []];
  const add = (numbers: readonly number[]) => {
    for (const number of numbers) blocks.push(number);
  };
  for (const feel of feels) {
    switch (feel.type) {
      case 'voltageBelow':
      case 'voltageAbove':
        add(dc.blocksBetween(feel.node, feel.reference));
        break;
      case 'currentAbove':
        if (feel.part >= 0) blocks.push(dc.blockOf(feel.part));
        break;
      case 'rfAbove':
        regions.push(rf.numberAt(feel.port));
        break;
      case 'powered':
        for (const i of feel.loads) {
          const load = parts[i] as LoadPart;
          add(dc.blocksBetween(load.plus, load.minus));
        }
        break;
      default:
    }
  }
  return { blocks, regions };
}

/** An actor depends on those that shape what it feels. */
function groupActors({ actors }: Circuit, { dc, rf }: Solvers, felt: readonly Felt[]): Int32Array {
  const groups = new Groups(actors.length);
  const join = (actor: number, others: readonly number[]) => {
    for (const other of others) if (other >= 0) groups.join(actor, other);
  };
  actors.forEach(({ feels, power }, i) => {
    for (const block of felt[i]?.blocks ?? []) join(i, dc.actorsIn(block));
    for (const region of felt[i]?.regions ?? []) join(i, rf.region(region)?.actors ?? []);
    for (const feel of feels) if (feel.type === 'actor') join(i, [feel.actor]);
    if (power !== null) join(i, [power]);
  });
  return groups.names();
}
