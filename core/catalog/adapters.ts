import type { Connector } from '../station/schema/connector.ts';
import { connectors as catalogue } from './connectors.ts';

/** A part with a connector on each side, its contacts joined by role: live, second, return. */
export interface Adapter {
  readonly name: string;
  readonly a: string;
  readonly b: string;
  readonly amps?: number;
  readonly watts?: number;
  readonly source: string;
}

const source = 'common practice';

const rf = (name: string, a: string, b: string, watts: number): Adapter => ({ name, a, b, watts, source });
const dc = (name: string, a: string, b: string, amps: number): Adapter => ({ name, a, b, amps, source });
const audio = (name: string, a: string, b: string): Adapter => ({ name, a, b, source });

/** Every adapter of the catalogue by its id: `from-to` as it is pushed on a cable's plug and then into a jack. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'phono-to-bnc': rf('phono jack to BNC plug', 'phono-jack', 'bnc-plug', 10),
  'bnc-to-phono': rf('BNC jack to phono plug', 'bnc-jack', 'phono-plug', 10),
  'uhf-to-bnc': rf('SO-239 socket to BNC plug', 'uhf-jack', 'bnc-plug', 100),
  'bnc-to-uhf': rf('BNC jack to PL-259 plug', 'bnc-jack', 'uhf-plug', 100),
  'n-to-bnc': rf('N jack to BNC plug', 'n-jack', 'bnc-plug', 100),
  'bnc-to-n': rf('BNC jack to N plug', 'bnc-jack', 'n-plug', 100),
  'uhf-to-n': rf('SO-239 socket to N plug', 'uhf-jack', 'n-plug', 1500),
  'n-to-uhf': rf('N jack to PL-259 plug', 'n-jack', 'uhf-plug', 1500),
  'sma-to-bnc': rf('SMA jack to BNC plug', 'sma-jack', 'bnc-plug', 100),
  'bnc-to-sma': rf('BNC jack to SMA plug', 'bnc-jack', 'sma-plug', 100),
  'sma-to-uhf': rf('SMA jack to PL-259 plug', 'sma-jack', 'uhf-plug', 100),
  'uhf-to-sma': rf('SO-239 socket to SMA plug', 'uhf-jack', 'sma-plug', 100),
  'sma-to-n': rf('SMA jack to N plug', 'sma-jack', 'n-plug', 100),
  'n-to-sma': rf('N jack to SMA plug', 'n-jack', 'sma-plug', 100),
  'f-to-bnc': rf('F jack to BNC plug', 'f-jack', 'bnc-plug', 5),
  'bnc-to-f': rf('BNC jack to F plug', 'bnc-jack', 'f-plug', 5),
  'f-to-sma': rf('F jack to SMA plug', 'f-jack', 'sma-plug', 5),
  'uhf-joint': rf('SO-239 socket on both sides', 'uhf-jack', 'uhf-jack', 1500),
  'bnc-joint': rf('BNC jack on both sides', 'bnc-jack', 'bnc-jack', 100),
  'barrel-21-to-25': dc('barrel jack 2.1 to barrel plug 2.5', 'barrel-21-jack', 'barrel-25-plug', 3),
  'barrel-25-to-21': dc('barrel jack 2.5 to barrel plug 2.1', 'barrel-25-jack', 'barrel-21-plug', 3),
  'two-pole-to-barrel-21': dc('two-pole to barrel plug 2.1, centre plus', 'two-pole-15', 'barrel-21-plug', 3),
  'two-pole-to-barrel-25': dc('two-pole to barrel plug 2.5, centre plus', 'two-pole-15', 'barrel-25-plug', 3),
  'barrel-21-to-two-pole': dc('barrel jack 2.1, centre plus, to two-pole', 'barrel-21-jack', 'two-pole-15', 3),
  'two-pole-to-ring': dc('two-pole to ring terminals', 'two-pole-30', 'ring-terminals', 30),
  'two-pole-to-banana': dc('two-pole to 4 mm plugs', 'two-pole-30', 'banana-pair', 15),
  'stereo-35-to-635': audio('3.5 mm stereo jack to 6.35 mm stereo plug', 'stereo-35-jack', 'stereo-635-plug'),
  'stereo-635-to-35': audio('6.35 mm stereo jack to 3.5 mm stereo plug', 'stereo-635-jack', 'stereo-35-plug'),
  'mono-35-to-635': audio('3.5 mm mono jack to 6.35 mm mono plug', 'mono-35-jack', 'mono-635-plug'),
  'mono-635-to-35': audio('6.35 mm mono jack to 3.5 mm mono plug', 'mono-635-jack', 'mono-35-plug'),
  'phono-to-mono-35': audio('phono jack to 3.5 mm mono plug', 'phono-jack', 'mono-35-plug'),
  'mono-35-to-phono': audio('3.5 mm mono jack to phono plug', 'mono-35-jack', 'phono-plug'),
  'phono-to-mono-635': audio('phono jack to 6.35 mm mono plug', 'phono-jack', 'mono-635-plug'),
  'mono-635-to-phono': audio('6.35 mm mono jack to phono plug', 'mono-635-jack', 'phono-plug'),
};

type Connectors = Readonly<Record<string, Connector>>;

/** True where the two halves are made for each other. */
export const matesWith = (connectors: Connectors, one: string, other: string): boolean =>
  (connectors[one]?.mates.includes(other) || connectors[other]?.mates.includes(one)) ?? false;

/**
 * The shortest row of adapters between a plug and a jack that do not mate, by their ids from the plug on; empty where
 * they do mate, null where none of at most `limit` adapters is known. Adapter sides come from the catalogue.
 */
export function adapterChain(connectors: Connectors, plugId: string, jackId: string, limit = 2): string[] | null {
  const all = { ...catalogue, ...connectors };
  let ends: { plug: string; chain: string[] }[] = [{ plug: plugId, chain: [] }];
  const seen = new Set([plugId]);
  for (let used = 0; used <= limit; used++) {
    const found = ends.find((end) => matesWith(all, end.plug, jackId));
    if (found) return found.chain;
    ends = ends.flatMap((end) => longer(all, end, seen));
  }
  return null;
}

function longer(all: Connectors, end: { plug: string; chain: string[] }, seen: Set<string>) {
  const next: { plug: string; chain: string[] }[] = [];
  for (const [id, { a, b }] of Object.entries(adapters)) {
    for (const [near, far] of [
      [a, b],
      [b, a],
    ] as const) {
      if (seen.has(far) || !matesWith(all, end.plug, near)) continue;
      seen.add(far);
      next.push({ plug: far, chain: [...end.chain, id] });
    }
  }
  return next;
}
