/** `2,335`: a count with its thousands apart. */
export const grouped = (count: number): string => count.toLocaleString('en-GB');
