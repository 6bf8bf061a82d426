import type { RfEdge } from '../circuit/circuit.ts';
import { wayTo } from './rf-solution.ts';
import { type LevelAfter, levelAfter, spread, type Ways } from './spread.ts';

/** A way from an amplifier's output back to its input that takes less than the amplifiers on it give. */
export interface AmplifyingRing {
  /** In the order in which RF comes by, from any of them on. */
  readonly stages: readonly RfEdge[];
  readonly gainDb: number;
  readonly lossDb: number;
}

/**
 * The rings in which more comes round than set out, each once: by selected ways and by leaks, one for each amplifier
 * that is in use. The least loss from its output back to its input is looked for with what other amplifiers give on the
 * way, and nothing saturates: a ring that starts from noise is a weak one.
 */
export function amplifyingRings(ways: Ways): AmplifyingRing[] {
  const rings = new Map<string, AmplifyingRing>();
  for (const own of ways.open) {
    const stage = ways.edges[own];
    if (!stage || !(stage.lossDb < 0)) continue;
    for (const [input, output] of stage.oneWay
      ? [[stage.a, stage.b]]
      : [
          [stage.a, stage.b],
          [stage.b, stage.a],
        ]) {
      const back = spread(ways, output as number, 0, aroundBut(own));
      const level = back.get(input as number)?.dbm;
      if (level === undefined || !(level - stage.lossDb > 1e-9)) continue;
      const others = wayTo(back, input as number).edges.filter(
        (i) => ways.open.has(i) && (ways.edges[i]?.lossDb ?? 0) < 0,
      );
      const members = [own, ...others];
      const stages = members.flatMap((i) => ways.edges[i] ?? []);
      const gainDb = stages.reduce((sum, { lossDb }) => sum - lossDb, 0);
      const name = [...members].sort((a, b) => a - b).join(' ');
      if (!rings.has(name)) rings.set(name, { stages, gainDb, lossDb: gainDb - (level - stage.lossDb) });
    }
  }
  return [...rings.values()];
}

const aroundBut =
  (own: number): LevelAfter =>
  (edge, i, isOpen, dbm) =>
    i === own ? null : levelAfter({ ...edge, saturationDbm: null }, i, isOpen, dbm);
