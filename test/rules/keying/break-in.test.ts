import { breakIn } from '../../../core/rules/keying/break-in.ts';
import { edit } from '../../../core/station/edit.ts';
import { sample } from '../../stations/samples.ts';
import { testRule } from '../test-rule.ts';

const hut = sample('hut');
const at = (speedWpm: number, set: object = {}) => edit(hut, { type: 'setPlan', set: { speedWpm, ...set } });

// The hut’s receiver is open again 35 ms after the paddle: relay 1 + 4 ms, mute 30 ms after it.
// ITU-R M.1677-1 and the PARIS word: a dit of 1200/WPM ms; 3 dits between letters, 7 between words.
testRule(breakIn, {
  silent: [{ name: 'voice has no dits', station: at(15, { mode: 'voice' }) }],
  reported: [
    {
      name: '15 WPM: 80 ms',
      station: at(15),
      message: 'dit',
      severity: 'note',
      at: { unit: 'receiver' },
      values: { again: 35, dit: 80 },
    },
    {
      name: '60 WPM: 20 ms, 60 ms between letters',
      station: at(60),
      message: 'letter',
      severity: 'note',
      at: { unit: 'receiver' },
      values: { again: 35, dit: 20 },
    },
    {
      name: '100 WPM: 12 ms, 36 ms between letters, 84 ms between words; a mute that hangs on for 50 ms',
      station: slow(at(100), 50),
      message: 'word',
      severity: 'note',
      at: { unit: 'receiver' },
      values: { again: 55, dit: 12 },
    },
    {
      name: 'a mute that hangs on for 200 ms',
      station: slow(at(100), 200),
      message: 'none',
      severity: 'note',
      at: { unit: 'receiver' },
      values: { again: 205, dit: 12 },
    },
  ],
});

function slow(station: typeof hut, releaseMs: number): typeof hut {
  const copy = structuredClone(station);
  const [mute] = copy.kinds['receiver-with-mute']?.actors ?? [];
  if (!mute) throw new Error('the receiver has no mute');
  Object.assign(mute, { releaseMs });
  return copy;
}
