import type { RfEdge, RfLoad, RfSource } from '../../circuit/circuit.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { remember } from '../../station/remember.ts';

/** Ports that some path or cable joins, with what is on them: RF never leaves a region. */
export interface RfRegion {
  readonly number: number;
  /** The first of its ports. */
  readonly firstPort: number;
  readonly sources: readonly RfSource[];
  readonly loads: readonly RfLoad[];
  readonly receivers: readonly RfLoad[];
  readonly edges: readonly RfEdge[];
}

/** The regions that have a source. */
export const regionsOf = remember((trial: Trial): readonly RfRegion[] =>
  everyRegionOf(trial).filter(({ sources }) => sources.length > 0),
);

/** All regions in which RF goes anywhere, those that only receive too. */
export const everyRegionOf = remember((trial: Trial): readonly RfRegion[] => {
  const { ports, sources, loads, edges } = trial.circuit.rf;
  const { rf } = trial.receive;
  const at = <T>(items: readonly T[], port: (item: T) => number) => groupBy(items, (item) => rf.regionOf(port(item)));
  const [sourcesAt, loadsAt, edgesAt] = [at(sources, (s) => s.port), at(loads, (l) => l.port), at(edges, (e) => e.a)];
  const firstPorts = new Map<number, number>();
  ports.forEach((_, port) => {
    const number = rf.regionOf(port);
    if (!firstPorts.has(number)) firstPorts.set(number, port);
  });
  return [...new Set([...sourcesAt.keys(), ...edgesAt.keys()])].map((number) => {
    const here = loadsAt.get(number) ?? [];
    const receivers = here.filter((l) => l.spec.role === 'receiver');
    const firstPort = firstPorts.get(number) ?? -1;
    return {
      number,
      firstPort,
      sources: sourcesAt.get(number) ?? [],
      loads: here,
      receivers,
      edges: edgesAt.get(number) ?? [],
    };
  });
});

function groupBy<T>(items: readonly T[], key: (item: T) => number): Map<number, T[]> {
  const groups = new Map<number, T[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group) group.push(item);
    else groups.set(key(item), [item]);
  }
  return groups;
}
