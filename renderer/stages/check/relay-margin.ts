import { formatMs, type KeydownReport } from '../../../core/index.ts';

export interface RelayMargin {
  readonly fromMs: number;
  readonly toMs: number;
  readonly safe: boolean;
  /** `relay over 7 ms before RF` */
  readonly words: string;
}

/** The time between the changeover being over and RF, whichever comes first; null where there is not both. */
export function relayMargin({ lanes, rf }: KeydownReport): RelayMargin | null {
  const overs = lanes.filter((l) => l.kind === 'changesOver').flatMap((l) => l.spans.slice(0, 1).map(([from]) => from));
  if (!rf || overs.length === 0) return null;
  const over = Math.max(...overs);
  const safe = over <= rf.fromMs;
  const gap = formatMs(Math.abs(rf.fromMs - over));
  return {
    fromMs: Math.min(over, rf.fromMs),
    toMs: Math.max(over, rf.fromMs),
    safe,
    words: safe ? `relay over ${gap} before RF` : `RF ${gap} before the relay is over`,
  };
}
