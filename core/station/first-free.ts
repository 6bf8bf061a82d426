/** The first whole number from 1 that is not taken. */
export function firstFree(isTaken: (n: number) => boolean): number {
  let n = 1;
  while (isTaken(n)) n++;
  return n;
}
