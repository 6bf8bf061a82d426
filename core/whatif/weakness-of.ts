import type { Finding } from '../rules/finding.ts';
import type { Failure } from './failure.ts';

/** What kind of weakness a failure lays open. */
export type Weakness = 'hidden return' | 'unsafe without power' | 'stuck relay' | 'supply runaway';

const returns = ['power/return-missing', 'power/return-through-shield', 'power/wire-overloaded'];
const rfDangers = [
  'rf/transmit-into-receiver',
  'rf/preamp-transmitted-into',
  'rf/transmit-into-nothing',
  'rf/transmit-into-transmitter',
  'keying/hot-switched',
];

/**
 * The weakness behind what is found when something fails, or null where it does no more than stop a unit: a minus whose
 * current finds another way, a changeover that without power lets RF where it hurts, a relay that sticks, a supply that
 * goes to its highest voltage.
 */
export function weaknessOf({ kind }: Failure, findings: readonly Finding[]): Weakness | null {
  const hurts = findings.filter((f) => f.severity === 'danger' || f.severity === 'doubt');
  const has = (rules: readonly string[]) => hurts.some((f) => rules.includes(f.rule));
  if (kind === 'opens') return has(returns) ? 'hidden return' : null;
  if (kind === 'losesPower') return has(rfDangers) ? 'unsafe without power' : null;
  if (kind === 'highVolts') return has(['power/over-voltage', 'power/unregulated']) ? 'supply runaway' : null;
  return has(rfDangers) ? 'stuck relay' : null;
}
