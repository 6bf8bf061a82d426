import { expect, it } from 'vitest';
import { whenKept } from '../../renderer/app/document/when-kept.ts';

// In the clock of the machine, as the user reads it.
const now = new Date(2026, 2, 1, 0, 20).getTime();

it.each([
  [new Date(2026, 2, 1, 0, 5), 'today at 00:05'],
  [new Date(2026, 1, 28, 23, 59), 'yesterday at 23:59'],
  [new Date(2026, 1, 27, 9, 30), '27 February 2026 at 09:30'],
  [new Date(2025, 2, 1, 0, 5), '1 March 2025 at 00:05'],
])('%s is %s', (at, words) => expect(whenKept(at.getTime(), now)).toBe(words));

it('says so where nobody knows', () => expect(whenKept(null, now)).toBe('some time ago'));
