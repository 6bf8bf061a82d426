import type { Finding } from '../../rules/finding.ts';

/** Whether a finding is more than doubt, and nobody has accepted it. */
export const isHarm = ({ severity, accepted }: Finding): boolean =>
  accepted === undefined && (severity === 'danger' || severity === 'fault');

/** What a change of a station does to its findings. */
export interface Difference {
  readonly gone: readonly Finding[];
  readonly come: readonly Finding[];
}

/** The findings that only one of two surveys has. */
export function difference(before: readonly Finding[], after: readonly Finding[]): Difference {
  const [was, is] = [new Set(before.map((f) => f.id)), new Set(after.map((f) => f.id))];
  return { gone: before.filter((f) => !is.has(f.id)), come: after.filter((f) => !was.has(f.id)) };
}
