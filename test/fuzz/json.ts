/** What JSON can hold; documents are changed in place here, as each case has one of its own. */
export type Json = null | boolean | number | string | Json[] | JsonObject;
export interface JsonObject {
  [key: string]: Json;
}

/** A value in a document by what holds it. */
export interface Spot {
  readonly holder: JsonObject | Json[];
  readonly key: string | number;
}

export const isObject = (value: Json | undefined): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const valueAt = ({ holder, key }: Spot): Json | undefined => (holder as Record<string | number, Json>)[key];

/** Puts a value in a place, under any name: `__proto__` is one like others. */
export function put({ holder, key }: Spot, value: Json): void {
  Object.defineProperty(holder, key, { value, writable: true, enumerable: true, configurable: true });
}

export function take({ holder, key }: Spot): void {
  if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else delete holder[key];
}

/** Every place in a value, what holds before what is held. */
export function spotsOf(value: Json): Spot[] {
  if (Array.isArray(value)) return value.flatMap((item, key) => [{ holder: value, key }, ...spotsOf(item)]);
  if (!isObject(value)) return [];
  return Object.entries(value).flatMap(([key, item]) => [{ holder: value, key }, ...spotsOf(item)]);
}

/** The objects of a list in a document; nothing where it has no such list. */
export const listOf = (holder: JsonObject | undefined, name: string): JsonObject[] => {
  const list = holder?.[name];
  return Array.isArray(list) ? list.filter(isObject) : [];
};

/** What an object holds by its names; nothing where it is not there. */
export const entriesOf = (holder: JsonObject | undefined, name: string): [string, JsonObject][] => {
  const held = holder?.[name];
  if (!isObject(held)) return [];
  return Object.entries(held).filter((entry): entry is [string, JsonObject] => isObject(entry[1]));
};

/** A list of an object, made where there is none. */
export function listIn(holder: JsonObject, name: string): Json[] {
  const list = holder[name];
  if (Array.isArray(list)) return list;
  const made: Json[] = [];
  holder[name] = made;
  return made;
}

/** What an object holds under a name, as an object; made where there is none. */
export function objectIn(holder: JsonObject, name: string): JsonObject {
  const held = Object.hasOwn(holder, name) ? holder[name] : undefined;
  if (isObject(held)) return held;
  const made: JsonObject = {};
  holder[name] = made;
  return made;
}
