import type { ActorStates, Circuit, SupplyPart } from '../../circuit/circuit.ts';
import { noteNet } from '../../circuit/find-nets.ts';
import { leastOhms } from '../../quantity/least-ohms.ts';
import { rememberEach } from '../../station/remember.ts';
import { conductorsOf } from '../metal/conductors.ts';
import { NearestFirst } from '../metal/nearest-first.ts';
import { type FusePart, listsOf, type Numbered } from '../parts.ts';

/** What a short just behind a fuse would drive through it. */
export interface ShortThrough {
  /** Of all supplies that reach it together. */
  readonly amps: number;
  /** The strongest of them. */
  readonly from: SupplyPart;
  /** A fuse nearer to the source can break it. */
  readonly backedUp: boolean;
}

/**
 * The current of a supply into a short behind so many ohms: volts over ohms; no more than its peak where electronics
 * limit it or switch it off. A battery gives all it can before any protection of its own has opened.
 */
export function shortAmps({ spec, battery }: SupplyPart, ohms: number): number {
  const amps = spec.volts / Math.max(ohms, leastOhms);
  return spec.beyond === 'sags' || battery ? amps : Math.min(amps, spec.peakAmps);
}

/**
 * The prospective short-circuit current at a fuse (a part) in a plus lead with these actors on: volts over the ohms of
 * the source and of all that lies between it and the fuse, fuses on the way cold. Undefined where no source reaches it.
 */
export function shortThrough(circuit: Circuit, on: ActorStates, fuse: Numbered<FusePart>): ShortThrough | undefined {
  noteNet(circuit, fuse.part.a);
  noteNet(circuit, fuse.part.b);
  return shortsThroughFuses(circuit, on).get(fuse.index);
}

const shortsThroughFuses = rememberEach((circuit: Circuit, on: ActorStates): ReadonlyMap<number, ShortThrough> => {
  const found = new Map<number, ShortThrough & { readonly strongest: number }>();
  for (const supply of listsOf(circuit).supplies) {
    for (const [fuse, { amps, backedUp }] of shortsFrom(circuit, on, supply)) {
      const known = found.get(fuse);
      found.set(fuse, {
        amps: amps + (known?.amps ?? 0),
        backedUp: backedUp && (known?.backedUp ?? true),
        ...(known && known.strongest >= amps
          ? { from: known.from, strongest: known.strongest }
          : { from: supply.part, strongest: amps }),
      });
    }
  }
  return found;
});

/** From one supply: amperes at each fuse that its plus reaches by metal, by the way of least ohms. */
function shortsFrom(circuit: Circuit, on: ActorStates, { part: supply }: Numbered<SupplyPart>) {
  const { at, joins } = conductorsOf(circuit, on);
  const shorts = new Map<number, { ohms: number; amps: number; backedUp: boolean }>();
  const reached = new Map([[supply.plus, { ohms: supply.spec.sourceOhms, backedUp: false }]]);
  const settled = new Set<number>();
  const open = new NearestFirst();
  open.put(supply.plus, supply.spec.sourceOhms);
  for (let next = open.take(); next; next = open.take()) {
    const { node } = next;
    const here = reached.get(node);
    // Whatever the ohms are, each contact is gone on from once.
    if (!here || settled.has(node)) continue;
    settled.add(node);
    for (const [i, other] of at[node] ?? []) {
      const part = circuit.parts[i];
      if (part?.kind !== 'resistor' || !joins(i)) continue;
      let { backedUp } = here;
      if (part.fuse) {
        const amps = shortAmps(supply, here.ohms);
        if (here.ohms < (shorts.get(i)?.ohms ?? Number.POSITIVE_INFINITY)) shorts.set(i, { ...here, amps });
        backedUp ||= part.fuse.breakingAmps >= amps;
      }
      const ohms = here.ohms + part.ohms;
      if (settled.has(other) || !(ohms < (reached.get(other)?.ohms ?? Number.POSITIVE_INFINITY))) continue;
      reached.set(other, { ohms, backedUp });
      open.put(other, ohms);
    }
  }
  return shorts;
}
