import { z } from 'zod';
import { amps, dbm, figures, hertz, id, line, milliseconds, text, volts } from './numbers.ts';
import { contactRef, elementSchema } from './unit-element.ts';

export type { Condition, ElementOf, FuseFamily, UnitElement } from './unit-element.ts';

export const portClasses = ['dc', 'rf', 'audio', 'control', 'data', 'earth'] as const;

export const sideSchema = z.enum(['left', 'right', 'top', 'bottom']);

const contactLimit = z.strictObject({ minV: volts.optional(), maxV: volts.optional(), amps: amps.optional() });

const port = z.strictObject({
  id,
  label: line,
  class: z.enum(portClasses),
  connector: id,
  side: sideSchema,
  needed: z.enum(['always', 'toSend', 'optional']),
  /** What each contact stands, by contact id. */
  limits: z.record(id, contactLimit).optional(),
  minHz: hertz.optional(),
  maxHz: hertz.optional(),
  note: text.optional(),
});

/** What an actor feels; `operator` is a hand, a foot or a program. */
const feels = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('operator'), label: line }),
  z.strictObject({ type: z.literal('voltageBelow'), contact: contactRef, reference: contactRef.optional(), volts }),
  z.strictObject({ type: z.literal('voltageAbove'), contact: contactRef, reference: contactRef.optional(), volts }),
  z.strictObject({ type: z.literal('currentAbove'), element: id, amps }),
  z.strictObject({ type: z.literal('rfAbove'), port: id, dbm }),
  z.strictObject({ type: z.literal('actor'), actor: id }),
]);

const actor = z.strictObject({
  id,
  label: line,
  feels: z.union([feels, z.array(feels).min(1)]),
  operateMs: milliseconds,
  releaseMs: milliseconds,
  bounceMs: milliseconds.optional(),
  /** Stays on for this long after it no longer feels it. */
  hang: z
    .strictObject({
      ms: milliseconds.optional(),
      dits: figures.dits.optional(),
      wordSpaces: figures.wordSpaces.optional(),
    })
    .optional(),
  /** By settings only: with any other setting it never turns on. */
  when: z.strictObject({ settings: z.record(id, line) }).optional(),
  /** Works without its unit's power (a hand key, a latching relay). */
  unpowered: z.boolean().optional(),
  /** What its being on means to the rules: the receiver is silenced, the transmitter sends. */
  does: z.enum(['mutes', 'sends', 'changesOver', 'keys']).optional(),
});

const setting = z.strictObject({
  id,
  label: line,
  options: z.array(z.strictObject({ id, label: line })).min(1),
  initial: id,
});

export const unitGroups = [
  'power',
  'sending',
  'listening',
  'changeover',
  'rf',
  'keying',
  'audio',
  'computer',
  'earth',
] as const;

/** What a kind of box is made of; all computing is done on these declarations. */
export const unitKindSchema = z.strictObject({
  name: line,
  group: z.enum(unitGroups),
  summary: text,
  words: z.array(line).optional(),
  ports: z.array(port).min(1),
  elements: z.array(elementSchema),
  actors: z.array(actor).optional(),
  settings: z.array(setting).optional(),
  /** Contacts that are not joined to the box's metal; `all` for a box without any. */
  isolated: z.union([z.literal('all'), z.array(contactRef)]).optional(),
  outdoor: z.boolean().optional(),
  /** It hangs on the mains. */
  mains: z.boolean().optional(),
  /** It stands in the soil: a rod, the earth of the mains entry. */
  electrode: z.boolean().optional(),
  cautions: z.array(text).optional(),
  source: text,
});

export type UnitKind = z.infer<typeof unitKindSchema>;

/** Whether a kind's figures are the shelf's, not those of one very unit. */
export const hasTypicalFigures = (kind: UnitKind): boolean => /^typical/i.test(kind.source);
export type Port = z.infer<typeof port>;
export type PortClass = Port['class'];
export type Actor = z.infer<typeof actor>;
export type Feel = z.infer<typeof feels>;
export type UnitGroup = UnitKind['group'];
