import { z } from 'zod';
import type { QuantityKind } from '../../quantity/parse.ts';
import { amps, dbm, decibels, hertz, id, ohms, share, volts, watts } from './numbers.ts';
import { conditionSchema, contactRef, elementSchema, type UnitElement } from './unit-element.ts';

interface Named {
  readonly name: string;
  readonly optional: boolean;
}

/** What a field of an element holds, as a form has to know it. */
export type ElementField = Named &
  (
    | { readonly holds: 'number'; readonly unit: QuantityKind | 'share'; readonly least: number; readonly most: number }
    | { readonly holds: 'choice'; readonly options: readonly string[] }
    | { readonly holds: 'contact' | 'id' | 'flag' | 'condition' }
    | { readonly holds: 'object' | 'rows'; readonly fields: readonly ElementField[] }
  );

const units = new Map<z.ZodType, QuantityKind | 'share'>([
  [volts, 'V'],
  [amps, 'A'],
  [ohms, 'ohm'],
  [watts, 'W'],
  [dbm, 'dBm'],
  [decibels, 'dB'],
  [hertz, 'Hz'],
  [share, 'share'],
]);

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
  if (!(inner instanceof z.ZodNumber)) throw new Error(`no form for the field ${name}`);
  const [least, most] = [inner.minValue ?? -1e12, inner.maxValue ?? 1e12];
  return { ...named, holds: 'number', unit: units.get(inner) ?? 'number', least, most };
}

/** By type, every field of an element but its id and type, in the order of the schema, the condition last. */
export const elementFields = Object.fromEntries(
  elementSchema.options.map(({ shape }) => {
    const { id: _id, type, when, ...own } = shape;
    return [type.value, [...fieldsOfEntries(Object.entries(own)), fieldOf('when', when)]];
  }),
) as unknown as Record<UnitElement['type'], readonly ElementField[]>;
