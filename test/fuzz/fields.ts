import { readFileSync } from 'node:fs';
import path from 'node:path';
import { isObject, type Json, type JsonObject, type Spot } from './json.ts';

/** A place in a document and what the schema of the file says of it; `value` is undefined where a field is left out. */
export interface Field extends Spot {
  readonly value: Json | undefined;
  readonly schema: JsonObject;
}

/** The schema that ships; `test/station/json-schema.test.ts` holds it to the reader's own. */
const stationSchema = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../../core/station/station.schema.json'), 'utf8'),
) as JsonObject;

/** Every field that a document has or could have, as far as what is there fits the schema. */
export function fieldsOf(document: Json, schema: JsonObject = stationSchema): Field[] {
  const fitting = branchFor(document, schema);
  if (Array.isArray(document)) {
    return document.flatMap((value, key) => {
      const tuple = fitting.prefixItems;
      const inner = Array.isArray(tuple) ? tuple[key] : fitting.items;
      return isObject(inner) ? [{ holder: document, key, value, schema: inner }, ...fieldsOf(value, inner)] : [];
    });
  }
  if (!isObject(document)) return [];
  const known = isObject(fitting.properties) ? fitting.properties : {};
  const further = fitting.additionalProperties;
  return [...new Set([...Object.keys(known), ...Object.keys(document)])].flatMap((key) => {
    const inner = Object.hasOwn(known, key) ? known[key] : further;
    if (!isObject(inner)) return [];
    const value = Object.hasOwn(document, key) ? document[key] : undefined;
    return [{ holder: document, key, value, schema: inner }, ...(value === undefined ? [] : fieldsOf(value, inner))];
  });
}

/** Of several schemas the one that a value was written by: its `type` says so, or it is a list or not. */
function branchFor(value: Json, schema: JsonObject): JsonObject {
  const branches = [schema.oneOf, schema.anyOf].find(Array.isArray)?.filter(isObject);
  if (!branches) return schema;
  const found = branches.find((branch) => {
    if (Array.isArray(value)) return branch.type === 'array';
    if (!isObject(value) || !isObject(branch.properties)) return branch.oneOf !== undefined && isObject(value);
    const type = branch.properties.type;
    return !isObject(type) || type.const === value.type;
  });
  return found ? branchFor(value, found) : {};
}

/** The least and the most that a field takes; null where it takes no numbers. */
export function boundsOf({ schema }: Field): { least: number; most: number; whole: boolean } | null {
  if (schema.type !== 'number' && schema.type !== 'integer') return null;
  const { minimum, exclusiveMinimum, maximum } = schema;
  const least = typeof minimum === 'number' ? minimum : typeof exclusiveMinimum === 'number' ? 1e-300 : -1e300;
  return { least, most: typeof maximum === 'number' ? maximum : 1e300, whole: schema.type === 'integer' };
}
