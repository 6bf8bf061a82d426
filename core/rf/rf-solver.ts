import type { ActorStates, Circuit, RfEdge } from '../circuit/circuit.ts';
import { Groups } from '../circuit/groups.ts';
import type { Reads } from '../circuit/reads.ts';
import { Region } from './region.ts';
import { type RegionSolution, RfSolution } from './rf-solution.ts';

/** Solves the RF of one circuit for any of its states, region by region, each once for every state it is met in. */
export class RfSolver {
  private readonly regions: readonly Region[];
  private readonly reads: Reads;
  /** The region of each port. */
  private readonly regionOf: Int32Array;
  /** Of each actor the regions that depend on it. */
  private readonly regionsOfActor: readonly (readonly number[])[];

  /** Regions that are the same in an earlier solver are taken from there. */
  constructor(circuit: Circuit, earlier: RfSolver | null = null) {
    this.reads = circuit.reads;
    const { ports, edges, sources, loads } = circuit.rf;
    const regionOf = numberRegions(ports.length, edges);
    const isSame =
      earlier?.regionOf.length === regionOf.length && earlier.regionOf.every((r, port) => r === regionOf[port]);
    this.regionOf = isSame ? earlier.regionOf : regionOf;
    const count = regionOf.reduce((most, region) => Math.max(most, region + 1), 0);
    const members = Array.from({ length: count }, (): Members => ({ ports: [], edges: [], sources: [], loads: [] }));
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

  /** How many regions there are, and the number of that of a port. */
  get count(): number {
    return this.regions.length;
  }

  numberAt(port: number): number {
    return this.regionOf[port] ?? -1;
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
    return new RfSolution(this.regionOf, earlier.base, changed, this.reads);
  }

  /** Whether ports are in regions of the same numbers as in another solver. */
  hasNumbersOf(other: RfSolver): boolean {
    return this.regionOf === other.regionOf;
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
      new Map(),
      this.reads,
    );
  }

  /** The same where all is as in an earlier state but for these regions. */
  solveFrom(earlier: RfSolution, regions: readonly number[], on: ActorStates): RfSolution {
    const changed = new Map<number, RegionSolution>();
    for (const r of regions) {
      const solution = (this.regions[r] as Region).solve(on);
      if (solution !== earlier.base[r]) changed.set(r, solution);
    }
    return new RfSolution(this.regionOf, earlier.base, changed, this.reads);
  }
}

interface Members {
  readonly ports: number[];
  readonly edges: number[];
  readonly sources: number[];
  readonly loads: number[];
}

/** Of each port the number of its region, counted in the order of the ports. */
function numberRegions(ports: number, edges: readonly RfEdge[]): Int32Array {
  const groups = new Groups(ports);
  for (const { a, b } of edges) groups.join(a, b);
  const numbers = new Map<number, number>();
  return new Int32Array(ports).map((_, port) => {
    const root = groups.nameOf(port);
    const number = numbers.get(root) ?? numbers.size;
    numbers.set(root, number);
    return number;
  });
}
