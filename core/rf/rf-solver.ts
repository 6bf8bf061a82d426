import type { ActorStates, Circuit } from '../circuit/circuit.ts';
import { Groups } from '../circuit/groups.ts';
import { Region } from './region.ts';
import { type RegionSolution, RfSolution } from './rf-solution.ts';

/** Solves the RF of one circuit for any of its states, region by region, each once for every state it is met in. */
export class RfSolver {
  private readonly regions: readonly Region[];
  /** The region of each port. */
  private readonly regionOf: Int32Array;
  /** Of each actor the regions that depend on it. */
  private readonly regionsOfActor: readonly (readonly number[])[];

  /** Regions that are the same in an earlier solver are taken from there. */
  constructor(circuit: Circuit, earlier: RfSolver | null = null) {
    const { ports, edges, sources, loads } = circuit.rf;
    const groups = new Groups(ports.length);
    for (const { a, b } of edges) groups.join(a, b);
    const numbers = new Map<number, number>();
    this.regionOf = Int32Array.from(ports, (_, port) => {
      const root = groups.nameOf(port);
      const number = numbers.get(root) ?? numbers.size;
      numbers.set(root, number);
      return number;
    });
    const members = Array.from(numbers, () => ({ ports: [], edges: [], sources: [], loads: [] }) as Members);
    const at = (port: number) => members[this.regionOf[port] as number] as Members;
    ports.forEach((_, port) => {
      at(port).ports.push(port);
    });
    edges.forEach((edge, e) => {
      at(edge.a).edges.push(e);
    });
    sources.forEach((source, i) => {
      at(source.port).sources.push(i);
    });
    loads.forEach((load, i) => {
      at(load.port).loads.push(i);
    });
    this.regions = members.map((own) => {
      const before = earlier?.regions[earlier.regionOf[own.ports[0] ?? -1] ?? -1];
      return before?.isSameIn(circuit.rf, own) ? before : new Region(circuit.rf, own);
    });
    const regionsOfActor: number[][] = circuit.actors.map(() => []);
    this.regions.forEach(({ actors }, region) => {
      for (const actor of actors) regionsOfActor[actor]?.push(region);
    });
    this.regionsOfActor = regionsOfActor;
  }

  /** The region of a port, the same object where it is the same as in an earlier solver. */
  regionAt(port: number): Region | undefined {
    return this.regions[this.regionOf[port] ?? -1];
  }

  /** The region of this number. */
  region(number: number): Region | undefined {
    return this.regions[number];
  }

  /** The number of a region; -1 where it is none of these. */
  numberOf(region: Region): number {
    return this.regionOf[region.members.ports[0] ?? -1] ?? -1;
  }

  /** A state of which the regions are known: as in `earlier`, but for these. */
  solutionFrom(earlier: RfSolution, changed: ReadonlyMap<number, RegionSolution>): RfSolution {
    return new RfSolution(this.regionOf, earlier.base, changed);
  }

  /** Actors on which the levels at a port depend. */
  actorsAt(port: number): readonly number[] {
    return this.regionAt(port)?.actors ?? [];
  }

  /** The regions that depend on any of these actors. */
  regionsWith(actors: readonly number[]): number[] {
    return [...new Set(actors.flatMap((actor) => this.regionsOfActor[actor] ?? []))];
  }

  /**
   * RF levels from every source that is on, at every port, with the way by which they came. Levels add no phases: the
   * strongest way counts. Levels are in dBm into the system's impedance.
   */
  solve(on: ActorStates): RfSolution {
    return new RfSolution(
      this.regionOf,
      this.regions.map((region) => region.solve(on)),
    );
  }

  /** The same where all is as in an earlier state but for these regions. */
  solveFrom(earlier: RfSolution, regions: readonly number[], on: ActorStates): RfSolution {
    const changed = new Map<number, RegionSolution>();
    for (const r of regions) {
      const solution = (this.regions[r] as Region).solve(on);
      if (solution !== earlier.base[r]) changed.set(r, solution);
    }
    return new RfSolution(this.regionOf, earlier.base, changed);
  }
}

interface Members {
  readonly ports: number[];
  readonly edges: number[];
  readonly sources: number[];
  readonly loads: number[];
}
