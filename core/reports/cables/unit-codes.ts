import type { Station } from '../../station/schema/schema.ts';

/**
 * A short code for each unit, by its id: the initials of its name or, of a single word, as many of its letters as
 * tell it from the units before it; a number where letters don't.
 *
 *     Bench supply: BS, Transmitter: TR, Tuner: TU, Tracker: TRA
 */
export function unitCodes(station: Station): ReadonlyMap<string, string> {
  const codes = new Map<string, string>();
  const taken = new Set<string>();
  for (const { id, name } of station.units) {
    const code = candidates(name).find((candidate) => !taken.has(candidate)) ?? numbered(name, taken);
    taken.add(code);
    codes.set(id, code);
  }
  return codes;
}

function candidates(name: string): string[] {
  const words = wordsOf(name);
  const [first = 'U'] = words;
  const initials = words.map((word) => [...word][0]).join('');
  const letters = [...first];
  const longer = letters.slice(1).map((_, i) => letters.slice(0, i + 2).join(''));
  return (words.length > 1 ? [initials, ...longer] : longer).map((code) => code.toUpperCase());
}

function numbered(name: string, taken: ReadonlySet<string>): string {
  const [first = 'U'] = wordsOf(name);
  let n = 1;
  while (taken.has(`${first}${n}`.toUpperCase())) n++;
  return `${first}${n}`.toUpperCase();
}

const wordsOf = (name: string): string[] => name.split(/[^\p{L}\p{N}]+/u).filter(Boolean);
