/** The list with one item replaced. */
export const replaced = <T>(items: readonly T[], at: number, item: T): T[] =>
  items.map((old, i) => (i === at ? item : old));

/** The list without one item. */
export const removed = <T>(items: readonly T[], at: number): T[] => items.filter((_, i) => i !== at);

/** The list with one item a place further; the same where it has none to go to. */
export function moved<T>(items: readonly T[], at: number, by: 1 | -1): T[] {
  const list = [...items];
  const [item] = list.splice(at, 1);
  if (item !== undefined) list.splice(Math.max(0, Math.min(list.length, at + by)), 0, item);
  return list;
}
