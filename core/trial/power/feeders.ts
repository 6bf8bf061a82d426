import type { ActorStates, Circuit, SupplyPart } from '../../circuit/circuit.ts';
import type { Reach } from '../../keydown/key-down.ts';
import { remember } from '../../station/remember.ts';
import { joinedTo, passersOf } from '../metal/conductors.ts';
import { listsOf, type Numbered, unitOfPart } from '../parts.ts';

/** The supplies (parts), the same way in whatever order they were drawn. */
const suppliesByName = remember((circuit: Circuit) =>
  listsOf(circuit).supplies.toSorted((a, b) => nameOf(a).localeCompare(nameOf(b))),
);

/**
 * The supplies (parts) whose plus metal or diodes join to this node; those that share only its ground feed something
 * else.
 */
export function feedersOf(circuit: Circuit, on: ActorStates, node: number): Numbered<SupplyPart>[] {
  return suppliesAmong(circuit, joinedTo(passersOf(circuit, on), node));
}

/** Of the supplies that feed this node the one that gives most, since two may stand side by side. */
export const mainFeederOf = (circuit: Circuit, { on, dc }: Reach, node: number): Numbered<SupplyPart> | undefined =>
  feedersOf(circuit, on, node)
    .map((supply) => ({ supply, amps: dc.ampsIn(supply.index) }))
    .reduce<{ supply: Numbered<SupplyPart>; amps: number } | undefined>(
      (most, next) => (most && most.amps >= next.amps - 1e-9 ? most : next),
      undefined,
    )?.supply;

/** The supplies whose plus is one of these nodes. */
export const suppliesAmong = (circuit: Circuit, nodes: ReadonlySet<number>): Numbered<SupplyPart>[] =>
  suppliesByName(circuit).filter(({ part }) => nodes.has(part.plus));

const nameOf = ({ part }: Numbered<SupplyPart>): string => `${unitOfPart(part)} ${part.spec.id}`;
