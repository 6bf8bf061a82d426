/** A name cut to so many letters, with what shows that it goes on. */
export const clip = (name: string, letters: number): string =>
  name.length <= letters ? name : `${name.slice(0, letters - 1).trimEnd()}…`;
