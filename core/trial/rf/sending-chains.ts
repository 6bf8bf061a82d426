import type { RfSource } from '../../circuit/circuit.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import type { Chain } from '../../rf/chain.ts';
import { chainOf } from '../../rf/solve-chain.ts';
import { rememberEach } from '../../station/remember.ts';
import { rfPortRef } from '../contact-at.ts';
import { instantsOfRegion } from '../instants.ts';

/** A transmitter that sends, and where its power goes. */
export interface SendingChain {
  readonly source: RfSource;
  readonly reach: Reach;
  readonly chain: Chain;
  /** Units and cables on the way, as findings name what takes part. */
  readonly touches: readonly string[];
}

/** The ways of the transmitters of a region in their sending moments, each once. */
export const chainsIn = rememberEach((trial: Trial, region: number): readonly SendingChain[] => {
  const known = new Set<Chain>();
  return instantsOfRegion(trial, region).flatMap(({ name, reach }) => {
    const fields = name === 'sending' ? reach.rf.at(region).fields : [];
    return fields.flatMap((field): SendingChain[] => {
      const source = trial.circuit.rf.sources[field.source];
      if (!source) return [];
      const chain = chainOf(trial.circuit, reach.on, field);
      if (known.has(chain)) return [];
      known.add(chain);
      return [{ source, reach, chain, touches: touchesOf(trial, chain) }];
    });
  });
});

const touchesOf = ({ circuit }: Trial, { ports, steps }: Chain): string[] => [
  ...ports.map(({ port }) => `unit:${rfPortRef(circuit, port).unit}`),
  ...steps.flatMap(({ edge }) => (edge.origin.type === 'cable' ? [`cable:${edge.origin.cable}`] : [])),
];
