import type { Circuit, RfEdge } from '../../circuit/circuit.ts';
import { dbmFromWatts } from '../../quantity/decibel.ts';
import type { Chain, ChainEnd, ChainStep } from '../../rf/chain.ts';
import { findCable, unitName } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import type { RfStair } from './rf-report.ts';

/** Below this nothing is worth a step of its own. */
const leastDb = 0.005;

/**
 * The level from a transmitter to the end that gets most of its power, after each cable and unit. What a mismatch sends
 * back at the transmitter is the first loss; where power parts, what goes the other way counts as lost.
 */
export function rfStaircase(station: Station, circuit: Circuit, chain: Chain): RfStair[] {
  const source = circuit.rf.sources[chain.source];
  const end = chain.ends.reduce<ChainEnd | undefined>(
    (most, e) => (most && most.watts >= e.watts ? most : e),
    undefined,
  );
  const stairs: RfStair[] = [];
  const add = (stair: Pick<RfStair, 'kind' | 'name' | 'at'>, watts: number) => {
    const dbm = dbmFromWatts(watts);
    const before = stairs.at(-1)?.dbm ?? dbm;
    stairs.push({ ...stair, lossDb: before === dbm ? 0 : before - dbm, dbm, watts });
  };
  const unit = source?.unit ?? '';
  add({ kind: 'transmitter', name: unitName(station, unit), at: { unit } }, chain.sourceWatts);
  const wattsAt = new Map(chain.ports.map(({ port, netWatts }) => [port, netWatts]));
  const sent = wattsAt.get(source?.port ?? -1) ?? 0;
  if (dbmFromWatts(chain.sourceWatts) - dbmFromWatts(sent) > leastDb)
    add({ kind: 'mismatch', name: 'Sent back by the mismatch', at: null }, sent);
  for (const { edge, to } of end ? stepsTo(chain, end.load.port) : chain.steps)
    add(nameOf(station, edge), wattsAt.get(to) ?? 0);
  if (end) add({ kind: 'end', name: unitName(station, end.load.unit), at: { unit: end.load.unit } }, end.watts);
  return stairs;
}

/** The steps that lead to a port, the transmitter's first. */
function stepsTo({ steps }: Chain, port: number): ChainStep[] {
  const way: ChainStep[] = [];
  for (let at = port, step = steps.find((s) => s.to === at); step; step = steps.find((s) => s.to === at)) {
    way.unshift(step);
    at = step.from;
  }
  return way;
}

function nameOf(station: Station, { origin }: RfEdge): Pick<RfStair, 'kind' | 'name' | 'at'> {
  switch (origin.type) {
    case 'cable':
      return {
        kind: 'cable',
        name: findCable(station, origin.cable)?.number ?? origin.cable,
        at: { cable: origin.cable },
      };
    case 'element':
      return { kind: 'unit', name: unitName(station, origin.unit), at: { unit: origin.unit } };
    case 'coupling':
      return { kind: 'unit', name: 'Through the air', at: null };
  }
}
