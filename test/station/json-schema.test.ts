import { expect, it } from 'vitest';
import { z } from 'zod';
import { stationSchema } from '../../core/station/schema/schema.ts';
import { sample } from '../stations/samples.ts';

// For editors and other programs that read station files. Written anew by `npx vitest -u` when the schema changes.
it('the JSON Schema that ships is the schema of the reader', async () => {
  const schema = z.toJSONSchema(stationSchema, { io: 'input' });
  expect(Object.keys(sample('hut')).sort()).toEqual((schema.required ?? []).toSorted());
  await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot('../../core/station/station.schema.json');
});
