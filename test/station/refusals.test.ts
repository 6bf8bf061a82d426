import { describe, expect, it } from 'vitest';
import { readKind } from '../../core/station/file/read-kind.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import { sampleText } from '../stations/samples.ts';

const text = sampleText('hut');
const long = 'x'.repeat(9000);

/** What a file says of itself comes back in its refusal: it must not fill a screen or drive a terminal. */
describe('a refusal can be told', () => {
  it.each([
    ['zeros from a bad disk', text.replace('"title"', '\0\0\0\0"title"')],
    ['an order to a terminal', text.replace('"title"', '\u001b[2J"title"')],
    ['an order in a key', text.replace('"title"', '"\\u009b2J": 1, "title"')],
    ['half a character', text.replace('"title"', '\ud83d"title"')],
    ['half a character where it is cut', text.replace('"title"', `${'y'.repeat(23)}🛰"title"`)],
    ['the encoding of another system', Buffer.from(`\ufeff${text}`, 'utf16le').toString('utf8')],
    ['a key of 9,000 characters', text.replace('"title"', `"${long}": 1, "title"`)],
    ['an id of 9,000 characters', text.replaceAll('"meter"', `"${long}"`)],
    ['a kind’s name of 9,000 characters', text.replaceAll('"swr-meter"', `"${long}"`)],
    ['a thousand problems', text.replace('"hookups": [', `"hookups": [${'{}, '.repeat(1000)}`)],
  ])('%s', (_, given) => {
    for (const read of [readStation(given), readKind(given)]) {
      if (!('problems' in read)) throw new Error('it was read');
      for (const { place, message } of read.problems) {
        expect(place).toMatch(/^[^\p{Cc}\p{Cs}]{1,300}$/u);
        expect(message).toMatch(/^[“A-Z][^\p{Cc}\p{Cs}]{1,600}\.$/u);
      }
    }
  });
  it('its sentences end as they began', () => {
    const read = readStation(text.replace('"title"', `"${long}": 1, "title"`));
    expect('problems' in read && read.problems[0]?.message).toMatch(/^“x{100,}…x+” is not known here\.$/);
  });
});
