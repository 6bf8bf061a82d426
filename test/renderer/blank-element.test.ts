import { describe, expect, it } from 'vitest';
import { checkKind, connectors, type ElementField, elementFields, shelf, type UnitElement } from '../../core/index.ts';
import { blankElement } from '../../renderer/stages/kinds/fields/blank-element.ts';
import { blankValue } from '../../renderer/stages/kinds/fields/blank-value.ts';

const kind = { ...shelf.find((item) => item.id === 'automatic-tuner')!.kind, elements: [] };
const types = Object.keys(elementFields) as UnitElement['type'][];

describe.each(types)('a new part of type %s', (type) => {
  const element = blankElement({ kind, connectors }, type);

  it('can be used as it is, and beside another one', () => {
    const twice = { ...kind, elements: [element] };
    const both = [element, blankElement({ kind: twice, connectors }, type)];
    expect(checkKind({ ...kind, elements: both }, connectors)).toEqual([]);
  });

  const optional = elementFields[type].filter((field) => field.optional && !needsMore(field));
  it.each(optional.map((field) => [field.name, field] as const))('takes the further figure %s', (name, field) => {
    const more = { ...element, [name]: blankValue(field) };
    expect(checkKind({ ...kind, elements: [more] }, connectors)).toEqual([]);
  });
});

/** What names an audio input can only be filled in by the user. */
const needsMore = (field: ElementField) => field.name === 'follows';
