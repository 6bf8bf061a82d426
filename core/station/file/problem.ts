import { harmless } from '../schema/text-problem.ts';

/** Something wrong in a file: where it is and what is wrong with it, in a sentence. */
export interface Problem {
  /** `units[3].ports[1].connector`, `line 12, column 5`, or `file`. */
  readonly place: string;
  readonly message: string;
}

/** A path of keys as it is written in code: `['units', 3, 'name']` gives `units[3].name`. */
export function placeInFile(path: readonly PropertyKey[]): string {
  if (path.length === 0) return 'file';
  return path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`;
    const name = String(key);
    if (!/^[A-Za-z_]\w*$/.test(name)) return `${text}["${name}"]`;
    return text === '' ? name : `${text}.${name}`;
  }, '');
}

const longestPlace = 300;
const longestMessage = 600;

/**
 * The problem as a screen and a terminal can show it. Keys and names in it are a stranger's: what is too long is cut out
 * of the middle, so that the sentence still ends as it should, and nothing in it drives a terminal.
 */
export const tellable = ({ place, message }: Problem): Problem => ({
  place: harmless(cutTo(place, longestPlace)),
  message: harmless(cutTo(message, longestMessage)),
});

function cutTo(text: string, most: number): string {
  if (text.length <= most) return text;
  const tail = Math.floor(most / 3);
  return `${text.slice(0, most - tail - 1)}…${text.slice(-tail)}`;
}
