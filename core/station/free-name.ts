/** More digits than these are part of a name, not a count: beyond 2^53 numbers no longer grow by one. */
const mostDigits = 12;

/**
 * A name that is not taken: `Receiver` where it is free; else `Receiver 2`, `Receiver 3`, with `join` before the number.
 * A name that ends in a number is counted on from there. Never longer than `most` characters.
 */
export function freeName(
  wanted: string,
  join: string,
  isTaken: (name: string) => boolean,
  most = Number.POSITIVE_INFINITY,
): string {
  if (!isTaken(wanted) && wanted.length <= most) return wanted;
  const [, before = wanted, digits = ''] = /^(.*?)[- ]?(\d*)$/s.exec(wanted) ?? [];
  const isCount = digits !== '' && digits.length <= mostDigits;
  const stem = isCount || digits === '' ? before : wanted;
  const named = (count: number) => {
    const tail = `${join}${count}`;
    return `${startOf(stem, most - tail.length)}${tail}`;
  };
  let count = isCount ? Number(digits) + 1 : 2;
  while (isTaken(named(count))) count++;
  return named(count);
}

/** The beginning of a text, no longer than this; a character of two halves stays whole or goes. */
export const startOf = (text: string, most: number): string =>
  text.length <= most ? text : text.slice(0, Math.max(0, most)).replace(/[\uD800-\uDBFF]$/, '');
