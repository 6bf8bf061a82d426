/**
 * The same value as `next`, made of the objects of `before` wherever they are equal: of a document that came as text or
 * from another thread whatever did not change is the same object again. Items of lists are found by their `id`, others
 * by their place.
 */
export function shareEqual<T>(before: unknown, next: T): T {
  if (Object.is(before, next) || !isObject(before) || !isObject(next)) return next;
  if (Array.isArray(before) !== Array.isArray(next)) return next;
  return (
    Array.isArray(next) ? shareItems(before as unknown as readonly unknown[], next) : shareFields(before, next)
  ) as T;
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

function shareItems(before: readonly unknown[], next: readonly unknown[]): readonly unknown[] {
  const byId = new Map(before.map((item) => [idOf(item), item]));
  const items = next.map((item, i) => {
    const id = idOf(item);
    return shareEqual(id === undefined ? before[i] : byId.get(id), item);
  });
  return items.length === before.length && items.every((item, i) => Object.is(item, before[i])) ? before : items;
}

const idOf = (item: unknown): unknown => (isObject(item) ? item.id : undefined);

function shareFields(before: Record<string, unknown>, next: Record<string, unknown>): Record<string, unknown> {
  const names = Object.keys(next);
  const fields = Object.fromEntries(names.map((name) => [name, shareEqual(before[name], next[name])]));
  const isSame =
    names.length === Object.keys(before).length &&
    names.every((name) => Object.hasOwn(before, name) && Object.is(fields[name], before[name]));
  return isSame ? before : fields;
}
