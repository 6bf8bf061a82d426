import type { Circuit } from '../../circuit/circuit.ts';
import type { Trial } from '../../keydown/key-down.ts';
import type { FusePart } from '../../trial/parts.ts';
import { type SuppliedWay, suppliedWays } from './ways/supplied-ways.ts';

/** A place where the current of some loads leaves a unit by a lead, or goes through a fuse inside one. */
export interface BranchGate {
  /** The part of the circuit that carries it. */
  readonly part: number;
  readonly lead: { readonly cable: string; readonly unit: string; readonly port: string } | null;
  /** A fuse in the lead, or the fuse itself. */
  readonly fuses: FusePart[];
  readonly loads: SuppliedWay[];
  readonly behind: BranchGate[];
}

/** The first gates behind each supply of a hook-up, with those behind them. */
export function branchGatesOf(trial: Trial): BranchGate[] {
  const first: BranchGate[] = [];
  const known = new Map<string, BranchGate>();
  for (const way of suppliedWays(trial)) {
    let list = first;
    let lead: BranchGate | null = null;
    let node = way.supply.part.plus;
    for (const index of way.out) {
      const { next, gate: fresh, inLead } = gateAt(trial.circuit, index, node);
      node = next;
      if (inLead) {
        if (lead && !lead.fuses.includes(inLead)) lead.fuses.push(inLead);
        continue;
      }
      if (!fresh) continue;
      const key = `${way.supply.index} ${index}`;
      const gate = known.get(key) ?? fresh;
      if (!known.has(key)) list.push(gate);
      known.set(key, gate);
      gate.loads.push(way);
      if (gate.lead) lead = gate;
      list = gate.behind;
    }
  }
  return first;
}

/** What a part is on a way that comes to it by a node: a gate, a fuse in the lead that it is in, or nothing of note. */
function gateAt({ parts }: Circuit, index: number, node: number) {
  const part = parts[index];
  if (part?.kind === 'diode') return { next: node === part.anode ? part.cathode : part.anode };
  if (part?.kind !== 'resistor') throw new Error('a way leads through metal and diodes');
  const next = node === part.a ? part.b : part.a;
  const gate = { part: index, loads: [], behind: [] };
  const fuse = part.fuse ? (part as FusePart) : null;
  if (fuse && part.origin.type === 'cableFuse') return { next, inLead: fuse };
  if (fuse) return { next, gate: { ...gate, lead: null, fuses: [fuse] } };
  // A joint runs from the plug to the jack: against it one leaves the unit.
  if (part.origin.type !== 'mate' || node !== part.b) return { next };
  const { cable, unit, port } = part.origin;
  return { next, gate: { ...gate, lead: { cable, unit, port }, fuses: [] } };
}
