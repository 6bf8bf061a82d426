import { describe, expect, it } from 'vitest';
import { correct, troubles } from './index.ts';
import { alarmsOfCorrect, alarmsOfRight, fixesThatFail, hasFix, missedBy } from './judge.ts';

describe('mistakes that people make', () => {
  it.each(troubles)('$id is caught: $about', (trouble) => expect(missedBy(trouble)).toEqual([]));
  it.each(troubles)('$id put right is silent', (trouble) => expect(alarmsOfRight(trouble)).toEqual([]));
  it.each(troubles.filter(hasFix))(
    '$id: each fix that is offered takes its finding away and brings none',
    (trouble) => {
      expect(fixesThatFail(trouble)).toEqual([]);
    },
  );
  it('are counted once', () => expect(new Set(troubles.map((t) => t.id)).size).toBe(troubles.length));
});

describe('stations that look odd and are right', () => {
  it.each(correct)('$id is silent: $about', (given) => expect(alarmsOfCorrect(given)).toEqual([]));
});
