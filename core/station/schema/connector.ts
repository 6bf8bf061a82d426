import { z } from 'zod';
import { amps, hertz, id, line, ohms, text, volts, watts } from './numbers.ts';

/** What a contact does by custom: `live` carries plus, signal or RF; `second` is a ring; `return` is minus, shell or sleeve. */
const contact = z.strictObject({ id, name: line, role: z.enum(['live', 'second', 'return']) });

/** A connector that goes in although it should not, and which contacts then touch: `[own, other]` pairs. */
const misfit = z.strictObject({
  with: id,
  joins: z.array(z.tuple([id, id])),
  why: text,
  harmless: z.boolean().optional(),
});

/** One half of a connector pair: a plug, a jack, or a genderless shell. */
export const connectorSchema = z.strictObject({
  name: line,
  family: id,
  gender: z.enum(['plug', 'jack', 'either', 'bare']),
  contacts: z.array(contact).min(1),
  mates: z.array(id),
  misfits: z.array(misfit).optional(),
  contactOhms: ohms,
  amps: amps.optional(),
  volts: volts.optional(),
  maxHz: hertz.optional(),
  watts: watts.optional(),
  face: z.enum([
    'barrel',
    'bnc',
    'uhf',
    'n',
    'sma',
    'phono',
    'mono',
    'stereo',
    'two-pole',
    'posts',
    'ring',
    'wire',
    'earth',
    'multi',
  ]),
  standard: line.optional(),
  source: text,
});

export type Connector = z.infer<typeof connectorSchema>;
export type ContactRole = Connector['contacts'][number]['role'];
