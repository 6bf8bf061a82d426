import { z } from 'zod';
import { amps, dbm, decibels, figures, hertz, id, line, ohms, share, volts, watts } from './numbers.ts';

/** `port.contact`, the unit's own `chassis`, or `@name` for a joint inside the box. */
export const contactRef = z
  .string()
  .regex(/^(chassis|@[\w-]+|[\w-]+\.[\w-]+)$/, 'a contact is written port.contact, @joint or chassis');

/** When an element is in force: actors of the unit that must be on or off, power, settings. All must hold. */
export const conditionSchema = z.strictObject({
  on: z.array(id).optional(),
  off: z.array(id).optional(),
  powered: z.boolean().optional(),
  settings: z.record(id, line).optional(),
});

const base = { id, when: conditionSchema.optional() };

const conductor = z.strictObject({
  ...base,
  type: z.literal('conductor'),
  from: contactRef,
  to: contactRef,
  ohms,
  /** A meter reads the current in it. */
  measures: z.boolean().optional(),
  /** A fuse holder: rating in amperes. */
  fuseAmps: figures.fuseAmps.optional(),
  fuseFamily: z.enum(['blade', 'glass-fast', 'glass-slow']).optional(),
  /** The largest current that its fuse can break, where its sheet says other than the family's usual one. */
  fuseBreakingAmps: amps.optional(),
});

const supply = z.strictObject({
  ...base,
  type: z.literal('supply'),
  plus: contactRef,
  minus: contactRef,
  volts,
  /** The highest voltage its regulation tolerance lets it reach. */
  maxVolts: volts.optional(),
  /** What comes out if its regulator fails and nothing in it stops that. */
  faultVolts: volts.optional(),
  sourceOhms: ohms,
  amps,
  peakAmps: amps,
  /** What happens beyond the peak: holds the current, switches off, or just sags on. */
  beyond: z.enum(['limits', 'shutsDown', 'sags']),
});

const load = z.strictObject({
  ...base,
  type: z.literal('load'),
  plus: contactRef,
  minus: contactRef,
  law: z.enum(['current', 'power', 'resistance']),
  /** Amperes, watts or ohms, by the law. */
  amount: figures.amount,
  /** Other amounts while a condition holds; the first that holds counts. */
  states: z.array(z.strictObject({ when: conditionSchema, amount: figures.amount })).optional(),
  minV: volts,
  maxV: volts,
  absMinV: volts.optional(),
  absMaxV: volts,
  reverseProtected: z.boolean(),
  /** Below this it is off and its draw fades; half the least working voltage if not given. */
  dropOutV: volts.optional(),
});

/** Passes from anode to cathode with this drop at these amperes. */
const diode = z.strictObject({
  ...base,
  type: z.literal('diode'),
  anode: contactRef,
  cathode: contactRef,
  volts: figures.diodeVolts,
  atAmps: figures.diodeAmps,
  ohms,
  /** 1 for an ideal junction, 1 to 2 for real ones. */
  emission: figures.emission.optional(),
  maxAmps: amps.optional(),
});

/** DC to DC: takes what its output gives, by its efficiency, from its input. */
const converter = z.strictObject({
  ...base,
  type: z.literal('converter'),
  plus: contactRef,
  minus: contactRef,
  outPlus: contactRef,
  outMinus: contactRef,
  minV: volts,
  maxV: volts,
  absMaxV: volts,
  outVolts: volts,
  outOhms: ohms,
  outAmps: amps,
  efficiency: figures.efficiency,
  idleWatts: watts,
});

/** A supply with a state of charge. */
const battery = z.strictObject({
  ...base,
  type: z.literal('battery'),
  plus: contactRef,
  minus: contactRef,
  chemistry: z.enum(['leadAcid', 'agm', 'lifepo4']),
  /** Capacity at the 20-hour rate. */
  ampHours: figures.ampHours,
  /** 1 is full. */
  charge: share,
  sourceOhms: ohms,
  /** The highest voltage while it is charged. */
  maxVolts: volts,
  /** The current that it takes from a charger while it is low. */
  chargeAmps: amps.optional(),
  /** Its protection or its owner stops here. */
  cutOffV: volts,
  amps,
  peakAmps: amps,
  beyond: z.enum(['shutsDown', 'sags']),
  /** Peukert's exponent; the chemistry's usual one if not given. */
  peukert: figures.peukert.optional(),
});

const pullUp = z.strictObject({
  ...base,
  type: z.literal('pullUp'),
  contact: contactRef,
  /** What it pulls against; the chassis if not given. */
  reference: contactRef.optional(),
  volts,
  ohms,
});

const contactPair = z.strictObject({
  ...base,
  type: z.literal('contactPair'),
  from: contactRef,
  to: contactRef,
  device: z.enum(['relay', 'transistor']),
  onOhms: ohms,
  maxVolts: volts,
  maxAmps: amps,
});

const rfPath = z.strictObject({
  ...base,
  type: z.literal('rfPath'),
  a: id,
  b: id,
  oneWay: z.boolean().optional(),
  lossDb: decibels,
  isolationDb: figures.isolationDb.optional(),
  /** Output level that an amplifying path cannot exceed. */
  saturationDbm: dbm.optional(),
  maxWatts: watts.optional(),
  minHz: hertz.optional(),
  maxHz: hertz.optional(),
  /** Of a meter: the watts at full scale. */
  scaleWatts: watts.optional(),
  /** What it takes from frequencies from so many hertz on: a filter's stop band. The highest that is reached counts. */
  rejection: z.array(z.strictObject({ fromHz: hertz, db: figures.isolationDb })).optional(),
  /** The strongest harmonic of an amplifying path, relative to what it puts out (negative). */
  harmonicsDbc: figures.harmonicsDbc.optional(),
  /** Of a valve stage: how long its heater needs, and what its plate meter shows keyed without drive and at full drive. */
  plate: z.strictObject({ warmUpSeconds: figures.seconds, restingAmps: amps, drivenAmps: amps }).optional(),
  /** Ohms between the centre contacts for DC; no value: blocked. */
  dcOhms: ohms.optional(),
});

const rfSource = z.strictObject({
  ...base,
  type: z.literal('rfSource'),
  port: id,
  dbm,
  maxDbm: dbm.optional(),
  /** What it can be turned down to; the same as `dbm` where it has one power; not known if not given. */
  minDbm: dbm.optional(),
  minHz: hertz.optional(),
  maxHz: hertz.optional(),
  harmonicsDbc: figures.harmonicsDbc.optional(),
});

const reactance = figures.reactance.optional();

const rfLoad = z.strictObject({
  ...base,
  type: z.literal('rfLoad'),
  port: id,
  role: z.enum(['antenna', 'termination', 'receiver']),
  ohms,
  reactance,
  /** An antenna of which only the SWR in 50 ohms is known: it goes before `ohms`, whose phase nobody knows then. */
  swr: figures.swr.optional(),
  /** Impedance over frequency, rising; it goes before the rest. */
  table: z
    .array(z.strictObject({ hz: hertz, ohms, reactance }))
    .min(1)
    .optional(),
  watts: watts.optional(),
  shortWatts: watts.optional(),
  shortSeconds: figures.seconds.optional(),
  damageDbm: dbm.optional(),
  overloadDbm: dbm.optional(),
  gainDbi: decibels.optional(),
  minHz: hertz.optional(),
  maxHz: hertz.optional(),
  dcOhms: ohms.optional(),
});

const matcher = z.strictObject({
  ...base,
  type: z.literal('matcher'),
  a: id,
  b: id,
  lossDb: figures.passiveLossDb,
  minOhms: ohms,
  maxOhms: ohms,
  maxWatts: watts.optional(),
  /** The least that it needs to tune by itself, and the most at which its relays may move. */
  minWatts: watts.optional(),
  maxTuneWatts: watts.optional(),
  dcOhms: ohms.optional(),
});

/** What stands on an audio contact besides the signal: a way for DC, and how much of it does no harm. */
const audioDc = {
  /** Ohms for DC between contact and reference; no value: a capacitor blocks it. */
  dcOhms: ohms.optional(),
  maxDcVolts: volts.optional(),
};

const audioSource = z.strictObject({
  ...base,
  type: z.literal('audioSource'),
  contact: contactRef,
  /** The other side of the signal; the common contact of the same port if not given. */
  reference: contactRef.optional(),
  /** The most it gives, rms, with nothing connected. */
  volts,
  ohms,
  /** The least that it can drive. */
  leastOhms: ohms.optional(),
  /** The bias that an electret capsule needs. */
  minDcVolts: volts.optional(),
  /** It passes on what comes to a load of its unit. */
  follows: z.strictObject({ load: id, gainDb: decibels }).optional(),
  ...audioDc,
});

const audioLoad = z.strictObject({
  ...base,
  type: z.literal('audioLoad'),
  contact: contactRef,
  reference: contactRef.optional(),
  ohms,
  /** Rms volts that it is made for. */
  fullVolts: volts.optional(),
  /** Rms volts from which it distorts. */
  overloadVolts: volts.optional(),
  watts: watts.optional(),
  ...audioDc,
});

export const dataStandards = ['rs232', 'ttl5', 'ttl3v3', 'openCollector', 'usb', 'ethernet'] as const;

const dataEnd = z.strictObject({
  ...base,
  type: z.literal('dataEnd'),
  contact: contactRef,
  reference: contactRef.optional(),
  standard: z.enum(dataStandards),
  /** Puts out levels, takes them in, or does both on one bus. */
  role: z.enum(['drives', 'listens', 'bus']),
  /** Volts that it stands where they are more than the standard asks for: a 5 V tolerant input. */
  standsV: volts.optional(),
});

export const elementSchema = z.discriminatedUnion('type', [
  conductor,
  supply,
  battery,
  load,
  diode,
  converter,
  pullUp,
  contactPair,
  rfPath,
  rfSource,
  rfLoad,
  matcher,
  audioSource,
  audioLoad,
  dataEnd,
]);

export type UnitElement = z.infer<typeof elementSchema>;
export type ElementOf<T extends UnitElement['type']> = Extract<UnitElement, { type: T }>;
export type Condition = z.infer<typeof conditionSchema>;
export type FuseFamily = NonNullable<ElementOf<'conductor'>['fuseFamily']>;
