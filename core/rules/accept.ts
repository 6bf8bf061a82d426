import type { Change } from '../station/edit.ts';
import type { Finding } from './finding.ts';

/** The figures behind a finding as an acceptance keeps them; three digits, so that rounding does not take it back. */
export const figuresOf = (values: Finding['values']): string =>
  Object.entries(values)
    .map(([name, value]) => `${name}=${typeof value === 'number' ? Number(value.toPrecision(3)) : value}`)
    .join(';');

/** The change that accepts a finding for a reason, until the figures behind it change. */
export const acceptFinding = (finding: Finding, reason: string): Change => ({
  type: 'accept',
  acceptance: { finding: finding.id, reason, figures: figuresOf(finding.values) },
});
