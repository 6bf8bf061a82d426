import { z } from 'zod';
import type { Limit } from '../../quantity/limits.ts';
import { id, limitOf } from './numbers.ts';
import { conditionSchema, contactRef, elementSchema, type UnitElement } from './unit-element.ts';

interface Named {
  readonly name: string;
  readonly optional: boolean;
}

/** What a field of an element holds, as a form has to know it. */
export type ElementField = Named &
  (
    | { readonly holds: 'number'; readonly limit: Limit }
    | { readonly holds: 'choice'; readonly options: readonly string[] }
    | { readonly holds: 'contact' | 'id' | 'flag' | 'condition' }
    | { readonly holds: 'object' | 'rows'; readonly fields: readonly ElementField[] }
  );

const fieldsOf = (schema: z.ZodObject): ElementField[] => fieldsOfEntries(Object.entries(schema.shape));

const fieldsOfEntries = (entries: readonly [name: string, field: z.core.$ZodType][]): ElementField[] =>
  entries.map(([name, field]) => fieldOf(name, field as z.ZodType));

/** Throws for a field of a sort that no form knows, so that none is left out by mistake. */
function fieldOf(name: string, field: z.ZodType): ElementField {
  const optional = field instanceof z.ZodOptional;
  const inner = (optional ? field.unwrap() : field) as z.ZodType;
  const named = { name, optional };
  if (inner === conditionSchema) return { ...named, holds: 'condition' };
  if (inner === contactRef) return { ...named, holds: 'contact' };
  if (inner === id) return { ...named, holds: 'id' };
  if (inner instanceof z.ZodBoolean) return { ...named, holds: 'flag' };
  if (inner instanceof z.ZodEnum) return { ...named, holds: 'choice', options: inner.options.map(String) };
  if (inner instanceof z.ZodObject) return { ...named, holds: 'object', fields: fieldsOf(inner) };
  if (inner instanceof z.ZodArray && inner.element instanceof z.ZodObject)
    return { ...named, holds: 'rows', fields: fieldsOf(inner.element) };
  const row = limitOf.get(inner);
  if (!row) throw new Error(`no form for the field ${name}`);
  return { ...named, holds: 'number', limit: row.limit };
}

/** By type, every field of an element but its id and type, in the order of the schema, the condition last. */
export const elementFields = Object.fromEntries(
  elementSchema.options.map(({ shape }) => {
    const { id: _id, type, when, ...own } = shape;
    return [type.value, [...fieldsOfEntries(Object.entries(own)), fieldOf('when', when)]];
  }),
) as unknown as Record<UnitElement['type'], readonly ElementField[]>;
