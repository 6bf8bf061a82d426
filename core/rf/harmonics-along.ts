import type { RfEdge } from '../circuit/circuit.ts';
import { dbmFromWatts } from '../quantity/decibel.ts';
import type { Chain } from './chain.ts';

/** A harmonic beside its carrier, both as they would be if all were matched. */
export interface ChainHarmonic {
  /** 2 for twice the frequency. */
  readonly order: number;
  readonly dbm: number;
  readonly carrierDbm: number;
}

const orders = [2, 3] as const;

/**
 * The second and third harmonic at the ports of a chain, each as strong as the worst that the source's figure allows:
 * less what cables and filters take from it, or what an amplifier on the way makes of its own. Empty where the source
 * states none. Cable loss grows with the root of frequency; SWR is looked at for neither harmonic nor carrier.
 */
export function harmonicsAlong(
  chain: Chain,
  hertz: number,
  harmonicsDbc: number | undefined,
): ReadonlyMap<number, readonly ChainHarmonic[]> {
  const along = new Map<number, ChainHarmonic[]>();
  const start = chain.ports[0];
  if (!start || harmonicsDbc === undefined) return along;
  const carrierDbm = dbmFromWatts(chain.sourceWatts);
  along.set(
    start.port,
    orders.map((order) => ({ order, carrierDbm, dbm: carrierDbm + harmonicsDbc })),
  );
  for (const { edge, from, to } of chain.steps) {
    const behind = (along.get(from) ?? []).map((harmonic) => stepOn(edge, harmonic, hertz));
    along.set(to, behind);
  }
  return along;
}

function stepOn(edge: RfEdge, { order, dbm, carrierDbm }: ChainHarmonic, hertz: number): ChainHarmonic {
  const { spec } = edge;
  const carrier = Math.min(carrierDbm - edge.lossDb, edge.saturationDbm ?? Number.POSITIVE_INFINITY);
  const own =
    spec?.type === 'rfPath' && spec.harmonicsDbc !== undefined ? carrier + spec.harmonicsDbc : Number.NEGATIVE_INFINITY;
  return { order, carrierDbm: carrier, dbm: Math.max(dbm - lossAt(edge, hertz, order), own) };
}

/** What a step takes from a harmonic. */
function lossAt({ lossDb, line, spec }: RfEdge, hertz: number, order: number): number {
  if (line) return lossDb * Math.sqrt(order);
  const bands = spec?.type === 'rfPath' ? (spec.rejection ?? []) : [];
  const reached = bands.filter(({ fromHz }) => order * hertz >= fromHz).sort((a, b) => b.fromHz - a.fromHz);
  return reached[0]?.db ?? lossDb;
}
