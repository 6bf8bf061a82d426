import { type Problem, placeInFile } from '../problem.ts';

const forbidden = '__proto__';

/**
 * Takes the key that the language gives a meaning of its own out of a value read from JSON, wherever it is, and gives the
 * places where it was: a list by id that had it would seem to hold what nobody wrote.
 */
export const takeOutForbiddenKeys = (value: unknown): Problem[] =>
  takeOut(value).map((path) => ({ place: placeInFile(path), message: `“${forbidden}” can’t be a name.` }));

function takeOut(value: unknown): PropertyKey[][] {
  if (typeof value !== 'object' || value === null) return [];
  const paths: PropertyKey[][] = Object.hasOwn(value, forbidden) ? [[forbidden]] : [];
  Reflect.deleteProperty(value, forbidden);
  for (const [key, inner] of Object.entries(value)) {
    for (const path of takeOut(inner)) paths.push([Array.isArray(value) ? Number(key) : key, ...path]);
  }
  return paths;
}
