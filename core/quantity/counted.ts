/** The word that goes with a number of things: `cable` with 1, `cables` with 0, 2 and all others. */
export const plural = (count: number, one: string, many = `${one}s`): string => (count === 1 ? one : many);

/** `1 cable`, `3 cables`: so many things. */
export const counted = (count: number, one: string, many?: string): string => `${count} ${plural(count, one, many)}`;
