import type { Change } from '../../station/edit.ts';
import type { Reading, Station } from '../../station/schema/schema.ts';
import type { PowerUpQuantity, PowerUpStep } from './sheet.ts';

/** What was read at a step, the newest first; `when` is a date as ISO 8601 writes it, which sorts as it reads. */
export const keptReadings = ({ readings }: Pick<Station, 'readings'>, step: string): readonly Reading[] =>
  readings.filter((r) => r.step === step).sort((a, b) => b.when.localeCompare(a.when));

/** The reading that stands in a step's box, and the one that it is compared with. */
export function nowAndBefore(
  station: Pick<Station, 'readings'>,
  step: string,
  since: string,
): { readonly now: Reading | null; readonly before: Reading | null } {
  const kept = keptReadings(station, step);
  const now = kept.find((r) => r.when >= since) ?? null;
  return { now, before: kept.find((r) => r !== now && (now === null || r.when < now.when)) ?? null };
}

const units: Record<PowerUpQuantity, string> = { V: 'V', A: 'A', ohm: 'Ω', W: 'W', swr: '' };

interface Written {
  readonly value: number;
  readonly when: string;
  /** What was read since then is written over; what was read before stays. */
  readonly since: string;
}

/** Writes a reading down in place of the one in its box. */
export function writeReading(station: Station, step: PowerUpStep, { value, when, since }: Written): Change {
  const { now } = nowAndBefore(station, step.id, since);
  const unit = units[step.expected?.quantity ?? 'swr'];
  const add: Change = { type: 'addReading', reading: { step: step.id, value, unit, when } };
  if (!now) return add;
  const strike: Change = { type: 'removeReading', step: now.step, when: now.when };
  return { type: 'all', name: 'Write down a reading', changes: [strike, add] };
}

/** Half a day without a reading ends a round (common practice: a power-up is done in one go). */
const pauseMs = 12 * 3600 * 1000;

/** When the latest round of readings began; empty where there are none. */
export function startOfRound({ readings }: Pick<Station, 'readings'>): string {
  const times = readings.map((r) => r.when).sort();
  let start = times.at(-1) ?? '';
  for (const earlier of times.reverse()) {
    if (Date.parse(start) - Date.parse(earlier) > pauseMs) break;
    start = earlier;
  }
  return start;
}
