import { describe, expect, it } from 'vitest';
import { everyReport, nonsense } from '../stations/every-report.ts';
import { sample } from '../stations/samples.ts';

const names = ['hut-first-draft', 'hut', 'hut-amplifier', 'club-hall', 'hill-table', 'two-metre-mast', 'old-and-new'];

describe('no figure that is none, in any report', () => {
  it.each(names)('of the sample %s', (name) => {
    // What fails in a hall of sixty units takes a minute to find out.
    for (const { name: report, text } of everyReport(sample(name), { withFailures: name !== 'club-hall' }))
      expect
        .soft(
          text.split('\n').find((line) => nonsense.test(line)),
          report,
        )
        .toBeUndefined();
  });
});
