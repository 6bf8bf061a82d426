import { z } from 'zod';
import { amps, figures, id, line, ohms, share, text, volts } from './numbers.ts';
import { portClasses } from './unit-kind.ts';

/** Copper by gauge or by area; ohms per metre and the protective limit follow from the wire tables unless given. */
export const wireSchema = z.strictObject({
  awg: figures.awg.optional(),
  mm2: figures.mm2.optional(),
  ohmsPerM: ohms.optional(),
  ampacityA: amps.optional(),
  /** The temperature that its insulation is marked for; 60 °C if it bears no mark. */
  insulationCelsius: figures.insulationCelsius.optional(),
});

const coax = z.strictObject({
  z0: ohms,
  velocityFactor: figures.velocityFactor,
  /** `[MHz, dB per 100 m]`, rising in frequency; log-log between points. */
  points: z.array(z.tuple([figures.coaxMHz, figures.coaxDb])).min(1),
  tolerance: share.optional(),
  maxVolts: volts.optional(),
});

/** A kind of cable: cores, a screen if it has one, and its line figures if it is coax. */
export const cableKindSchema = z.strictObject({
  name: line,
  class: z.enum(portClasses),
  cores: figures.cores,
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
