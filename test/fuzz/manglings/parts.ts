import { entriesOf, isObject, type JsonObject, listOf } from '../json.ts';

/** Text under a name of an object; empty where there is none. */
export const textOf = (holder: JsonObject | undefined, name: string): string => {
  const value = holder?.[name];
  return typeof value === 'string' ? value : '';
};

/** The kind of a unit, where the document has it. */
export function kindOf(document: JsonObject, unit: JsonObject): JsonObject | undefined {
  const kinds = document.kinds;
  const name = textOf(unit, 'kind');
  const kind = isObject(kinds) && Object.hasOwn(kinds, name) ? kinds[name] : undefined;
  return isObject(kind) ? kind : undefined;
}

/** Every port of every unit, as a cable names it. */
export const portsOf = (document: JsonObject): { unit: string; port: string }[] =>
  listOf(document, 'units').flatMap((unit) =>
    listOf(kindOf(document, unit), 'ports').map((port) => ({ unit: textOf(unit, 'id'), port: textOf(port, 'id') })),
  );

/** `port.contact` of every contact of a kind, and what else an element can be joined to. */
export function contactsOf(document: JsonObject, kind: JsonObject): string[] {
  const connectors = new Map(entriesOf(document, 'connectors'));
  const own = listOf(kind, 'ports').flatMap((port) =>
    listOf(connectors.get(textOf(port, 'connector')), 'contacts').map(
      (c) => `${textOf(port, 'id')}.${textOf(c, 'id')}`,
    ),
  );
  return [...own, 'chassis', '@joint'];
}
