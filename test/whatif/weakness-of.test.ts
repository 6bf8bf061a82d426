import { describe, expect, it } from 'vitest';
import { studyFailures } from '../../core/whatif/study-failures.ts';
import { restsOnSend } from '../cases/correct.ts';
import { troubles } from '../cases/index.ts';
import { sampleFailures } from '../stations/samples.ts';

const weakness = (studies: ReturnType<typeof studyFailures>, id: string) => {
  const study = studies.find(({ failure }) => failure.id === id);
  if (!study) throw new Error(`nothing called ${id} can fail`);
  return study.weakness;
};

describe('the weakness that a failure lays open', () => {
  const hut = sampleFailures('hut');
  it('the transmitter’s minus opens: its current goes back through the coax', () => {
    expect(weakness(hut, 'open:cable d2.return.1')).toBe('hidden return');
  });
  it('its plus opens: it is off, and nothing is hurt', () => {
    expect(weakness(hut, 'open:cable d2.live.0')).toBeNull();
  });
  it('a changeover that has to pull in to send, and loses its power', () => {
    const pulls = troubles.find((t) => t.id === 'C03');
    expect(pulls && weakness(studyFailures(pulls.wrong), 'off:over')).toBe('unsafe without power');
    expect(weakness(studyFailures(restsOnSend()), 'off:over')).toBeNull();
  });
  it('a changeover’s relay that does not move', () => {
    expect(weakness(hut, 'off:changeover.relay')).toBe('stuck relay');
  });
});
