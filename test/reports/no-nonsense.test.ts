import { describe, expect, it } from 'vitest';
import type { Station } from '../../core/station/schema/schema.ts';
import { correct, troubles } from '../cases/index.ts';
import { everyReport, nonsense } from '../stations/every-report.ts';
import { sample } from '../stations/samples.ts';

const names = ['hut-first-draft', 'hut', 'hut-amplifier', 'club-hall', 'hill-table', 'two-metre-mast', 'old-and-new'];
/** Where it is quickly found out what single failures would lead to. */
const small = ['hut-first-draft', 'old-and-new'];

/** The lines in which something stands that is no figure and no word. */
function nonsenseIn(station: Station, options?: { withFailures: boolean }): string[] {
  return [...everyReport(station, options)].flatMap(({ name, text }) =>
    text
      .split('\n')
      .filter((line) => nonsense.test(line))
      .map((line) => `${name}: ${line.trim()}`),
  );
}

// A hall of sixty units has a long power-up sheet, and other work may stand in the way.
describe('no report says what is no figure', () => {
  it.each(names)(
    'of the sample %s',
    (name) => {
      expect(nonsenseIn(sample(name), { withFailures: small.includes(name) })).toEqual([]);
    },
    300_000,
  );
  it.each(troubles)('of the mistake $id, and of what puts it right', ({ wrong, right }) => {
    expect([wrong, right].flatMap((station) => nonsenseIn(station, { withFailures: false }))).toEqual([]);
  });
  it.each(correct)('of the odd station $id', ({ station }) => {
    expect(nonsenseIn(station, { withFailures: false })).toEqual([]);
  });
});
