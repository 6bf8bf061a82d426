import { describe, expect, it } from 'vitest';
import { counted, plural } from '../../core/quantity/counted.ts';

describe('a number of things', () => {
  it.each([
    [0, 'cable', undefined, '0 cables'],
    [1, 'cable', undefined, '1 cable'],
    [2, 'cable', undefined, '2 cables'],
    [1, 'note or zone', 'notes and zones', '1 note or zone'],
    [3, 'note or zone', 'notes and zones', '3 notes and zones'],
  ])('%d %s', (count, one, many, words) => expect(counted(count, one, many)).toBe(words));

  it('the word alone', () => expect([plural(1, 'goes', 'go'), plural(2, 'goes', 'go')]).toEqual(['goes', 'go']));
});
