import { Reads } from '../circuit/reads.ts';

/** How RF came to a port: over which edge, from which port, by a selected path or by a leak. */
export interface RfArrival {
  readonly dbm: number;
  readonly from: number | null;
  readonly edge: number | null;
  /** Some part of the way is only a leak through something that is not selected. */
  readonly leak: boolean;
}

/** Arrivals by port; none at ports that are not in it. They are a tree: whoever goes from `from` to `from` comes to the source. */
export type RfArrivals = ReadonlyMap<number, RfArrival>;

/** What one active source does in the station. */
export interface RfField {
  /** Index into `RfNet.sources`. */
  readonly source: number;
  /** Best level at each port by any way, leaks included. */
  readonly best: RfArrivals;
  /** Level by selected paths alone. */
  readonly selected: RfArrivals;
}

/** What goes on in a region of ports that some path or cable joins. */
export interface RegionSolution {
  readonly fields: readonly RfField[];
  /** Ports that hang together by selected paths and cables: the group of each port, named by one of them. */
  readonly group: ReadonlyMap<number, number>;
}

const silent: RegionSolution = { fields: [], group: new Map() };

/** RF levels everywhere at one moment. */
export class RfSolution {
  private all: readonly RfField[] | null = null;

  constructor(
    /** The region of each port. */
    private readonly regions: Int32Array,
    /** By region; the same object wherever the region is in the same state. */
    readonly base: readonly RegionSolution[],
    /** Regions that are in another state than in `base`. */
    readonly changed: ReadonlyMap<number, RegionSolution> = new Map(),
    private readonly reads: Reads = new Reads(),
  ) {}

  /** What every active source does. */
  get fields(): readonly RfField[] {
    this.all ??= this.base.flatMap((_, region) => this.at(region).fields);
    return this.all;
  }

  /** The state of a region. */
  at(region: number): RegionSolution {
    this.reads.note('region', region);
    return this.changed.get(region) ?? this.base[region] ?? silent;
  }

  /** The region that a port is in: RF never leaves it. */
  regionOf(port: number): number {
    const region = this.regions[port] ?? -1;
    this.reads.note('region', region);
    return region;
  }

  /** The group of ports that hang together with this one by selected paths and cables, named by one of them. */
  groupOf(port: number): number | undefined {
    return this.at(this.regionOf(port)).group.get(port);
  }

  /** The fields of the sources that are on and can have anything to do with this port. */
  fieldsAt(port: number): readonly RfField[] {
    return this.at(this.regionOf(port)).fields;
  }

  /** The strongest level of any active source at a port; null where none arrives. */
  levelAt(port: number): { dbm: number; field: RfField; leak: boolean } | null {
    let best: { dbm: number; field: RfField; leak: boolean } | null = null;
    for (const field of this.fieldsAt(port)) {
      const arrival = field.best.get(port);
      if (arrival && (!best || arrival.dbm > best.dbm)) best = { dbm: arrival.dbm, field, leak: arrival.leak };
    }
    return best;
  }
}

/** The ports and edges by which RF came to a port, source first. */
export function wayTo(arrivals: RfArrivals, port: number): { ports: number[]; edges: number[] } {
  const ports: number[] = [];
  const edges: number[] = [];
  for (let at: number | null = port; at !== null; ) {
    ports.push(at);
    const arrival = arrivals.get(at);
    if (arrival?.edge !== null && arrival?.edge !== undefined) edges.push(arrival.edge);
    at = arrival?.from ?? null;
  }
  return { ports: ports.reverse(), edges: edges.reverse() };
}
