import { z } from 'zod';
import { amps, id, ohms, text, volts } from './numbers.ts';
import { portClasses } from './unit-kind.ts';

/** Copper by gauge or by area; ohms per metre and the protective limit follow from the wire tables unless given. */
export const wireSchema = z.strictObject({
  awg: z.number().int().min(-3).max(40).optional(),
  mm2: z.number().min(0.01).max(500).optional(),
  ohmsPerM: ohms.optional(),
  ampacityA: amps.optional(),
  /** The temperature that its insulation is marked for; 60 °C if it bears no mark. */
  insulationCelsius: z.number().min(40).max(300).optional(),
});

const coax = z.strictObject({
  z0: ohms,
  velocityFactor: z.number().min(0.1).max(1),
  /** `[MHz, dB per 100 m]`, rising in frequency; log-log between points. */
  points: z.array(z.tuple([z.number().positive().max(100_000), z.number().positive().max(10_000)])).min(1),
  tolerance: z.number().min(0).max(1).optional(),
  maxVolts: volts.optional(),
});

/** A kind of cable: cores, a screen if it has one, and its line figures if it is coax. */
export const cableKindSchema = z.strictObject({
  name: text,
  class: z.enum(portClasses),
  cores: z.number().int().min(1).max(64),
  core: wireSchema,
  screen: wireSchema.optional(),
  coax: coax.optional(),
  /** Plugs that a ready-made lead comes with, when they are not the ports' own mates. */
  plugs: z.strictObject({ a: id, b: id }).optional(),
  /** Bought with its plugs on; so are all that name their plugs. */
  readyMade: z.boolean().optional(),
  source: text,
});

export type Wire = z.infer<typeof wireSchema>;
export type CableKind = z.infer<typeof cableKindSchema>;
export type Coax = NonNullable<CableKind['coax']>;
