import type {
  CircuitActor,
  CircuitPart,
  Elsewhere,
  Fragment,
  RfEdge,
  RfLoad,
  RfSource,
  SignalEnd,
} from '../circuit.ts';

/** A fragment while it is being put together: names become numbers on first mention. */
export class FragmentDraft implements Fragment {
  readonly nodes: string[] = [];
  readonly nodeOf = new Map<string, number>();
  readonly parts: CircuitPart[] = [];
  readonly actors: CircuitActor[] = [];
  readonly actorOf = new Map<string, number>();
  readonly rfPorts: string[] = [];
  readonly rfPortOf = new Map<string, number>();
  readonly rfEdges: RfEdge[] = [];
  readonly rfSources: RfSource[] = [];
  readonly rfLoads: RfLoad[] = [];
  readonly sources: SignalEnd<'audioSource'>[] = [];
  readonly loads: SignalEnd<'audioLoad'>[] = [];
  readonly data: SignalEnd<'dataEnd'>[] = [];
  readonly nodesElsewhere: Elsewhere[] = [];
  readonly portsElsewhere: Elsewhere[] = [];

  constructor(
    readonly name: string,
    readonly from: readonly unknown[],
  ) {}

  node(name: string): number {
    return numberOf(name, this.nodes, this.nodeOf);
  }

  rfPort(name: string): number {
    return numberOf(name, this.rfPorts, this.rfPortOf);
  }

  /** A contact of a unit that this is not. */
  nodeElsewhere(unit: string, name: string): number {
    return -this.nodesElsewhere.push({ unit, name });
  }

  rfPortElsewhere(unit: string, name: string): number {
    return -this.portsElsewhere.push({ unit, name });
  }
}

function numberOf(name: string, names: string[], known: Map<string, number>): number {
  const present = known.get(name);
  if (present !== undefined) return present;
  known.set(name, names.length);
  names.push(name);
  return names.length - 1;
}
