import { describe, expect, it } from 'vitest';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { limits } from '../../core/quantity/limits.ts';
import { type ElementField, elementFields } from '../../core/station/schema/element-fields.ts';

const field = (type: keyof typeof elementFields, name: string) => elementFields[type].find((f) => f.name === name);

describe('the fields of elements', () => {
  it('have the units and bounds of the schema', () => {
    expect(field('load', 'minV')).toEqual({
      name: 'minV',
      optional: false,
      holds: 'number',
      limit: limits.volts,
    });
    expect(field('rfPath', 'saturationDbm')).toMatchObject({ optional: true, holds: 'number', limit: { unit: 'dBm' } });
    expect(field('battery', 'charge')).toMatchObject({ limit: { unit: 'share', least: 0, most: 1 } });
    expect(field('diode', 'emission')).toMatchObject({ limit: { unit: 'number', least: 0.5, most: 4 } });
  });

  it('tell contacts from ports, and know choices, flags, rows and conditions', () => {
    expect(field('load', 'plus')?.holds).toBe('contact');
    expect(field('rfPath', 'a')?.holds).toBe('id');
    expect(field('conductor', 'measures')?.holds).toBe('flag');
    expect(field('supply', 'beyond')).toMatchObject({ holds: 'choice', options: ['limits', 'shutsDown', 'sags'] });
    expect(field('rfLoad', 'table')).toMatchObject({
      holds: 'rows',
      fields: [{ limit: { unit: 'Hz' } }, { limit: { unit: 'ohm' } }, {}],
    });
    expect(elementFields.load.at(-1)).toEqual({ name: 'when', optional: true, holds: 'condition' });
  });

  it.each(shelf)('leave out nothing that $id says', ({ kind }) => {
    for (const { id: _id, type, ...said } of kind.elements) expectKnown(said, elementFields[type]);
  });
});

function expectKnown(said: object, fields: readonly ElementField[]) {
  for (const [name, value] of Object.entries(said)) {
    const known = fields.find((f) => f.name === name);
    expect(known, name).toBeDefined();
    if (known?.holds === 'object') expectKnown(value, known.fields);
    if (known?.holds === 'rows') for (const row of value) expectKnown(row, known.fields);
  }
}
