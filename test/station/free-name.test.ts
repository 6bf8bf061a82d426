import { describe, expect, it } from 'vitest';
import { freeName } from '../../core/station/free-name.ts';

describe('a name that is free', () => {
  const digits = '9'.repeat(17);

  it.each([
    ['Receiver', ' ', [], 'Receiver'],
    ['Receiver', ' ', ['Receiver'], 'Receiver 2'],
    ['Receiver 2', ' ', ['Receiver 2', 'Receiver 3'], 'Receiver 4'],
    ['D4', '', ['D4'], 'D5'],
    ['7', '', ['7'], '8'],
    // 2^53 + 1 is 2^53: a number with so many digits is a name.
    [`Receiver ${digits}`, ' ', [`Receiver ${digits}`], `Receiver ${digits} 2`],
    [digits, '', [digits, `${digits}2`], `${digits}3`],
    ['two\nlines 3', ' ', ['two\nlines 3'], 'two\nlines 4'],
  ])('%j among others', (wanted, join, taken, free) => {
    expect(freeName(wanted, join, (name) => (taken as string[]).includes(name))).toBe(free);
  });

  it('is no longer than it may be', () => {
    const long = 'x'.repeat(80);
    const taken = new Set([long]);
    for (let i = 0; i < 12; i++) {
      const found = freeName(long, '-', (name) => taken.has(name), 80);
      expect(found.length).toBeLessThanOrEqual(80);
      expect(taken).not.toContain(found);
      taken.add(found);
    }
    expect(taken).toContain(`${'x'.repeat(77)}-13`);
  });

  it('is not cut through a character', () => {
    const wanted = `${'x'.repeat(7)}🛰️`;
    expect(freeName(wanted, ' ', (name) => name === wanted, 10)).toBe(`${'x'.repeat(7)} 2`);
  });
});
