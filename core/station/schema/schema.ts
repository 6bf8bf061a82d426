import { z } from 'zod';
import { cableKindSchema } from './cable-kind.ts';
import { connectorSchema } from './connector.ts';
import { amps, figures, id, line, metres, share, text } from './numbers.ts';
import { ringCodes } from './ring-colour.ts';
import { sideSchema, unitKindSchema } from './unit-kind.ts';

export const formatName = 'stationwright';
export const currentVersion = 1;

const plan = z.strictObject({
  frequencyHz: figures.planHertz,
  mode: z.enum(['keying', 'voice', 'data']),
  speedWpm: figures.speedWpm,
  /** Share of the sending time with RF on: 0.4 for keying. */
  duty: share,
  /** Share of the operating time spent sending. */
  sendShare: share,
  hoursPerDay: figures.hoursPerDay,
});

const unit = z.strictObject({
  id,
  kind: id,
  name: line.min(1),
  position: z.strictObject({ x: figures.coordinate, y: figures.coordinate }),
  settings: z.record(id, line).optional(),
  /** The user's own figures, by `element.field`. */
  overrides: z.record(line.max(120), z.number()).optional(),
  /** The user has compared the kind's figures with this very unit. */
  confirmed: z.boolean().optional(),
  /** Ports that the user put on another side of the card, by port id. */
  sides: z.record(id, sideSchema).optional(),
  /** Rings of a colour at jacks, each also on the plug that belongs there, by port id. */
  rings: z.record(id, z.enum(ringCodes)).optional(),
  /** Whether it stands outdoors, where the user says so; else its kind does, and what hangs on it. */
  outdoor: z.boolean().optional(),
  /** Stays where it is: it can't be dragged, and tidying leaves it alone. */
  locked: z.boolean().optional(),
  note: text.optional(),
});

/** Something on the paper that is not part of the station: a remark, or a place (desk, wall, mast) around units. */
const mark = z.strictObject({
  id,
  type: z.enum(['note', 'zone']),
  text,
  position: z.strictObject({ x: figures.coordinate, y: figures.coordinate }),
  width: figures.paperSize,
  height: figures.paperSize,
});

const portRef = z.strictObject({ unit: id, port: id });
const twoEnds = z.strictObject({ a: id.optional(), b: id.optional() });

const cable = z.strictObject({
  id,
  number: line.min(1),
  /** Its number stays when the cables are numbered anew. */
  numberLocked: z.boolean().optional(),
  kind: id,
  lengthM: metres,
  a: portRef,
  b: portRef,
  /** Plugs that are not the mates of the two ports. */
  plugs: twoEnds.optional(),
  /** Adapters fitted at an end. */
  adapters: z.strictObject({ a: z.array(id).optional(), b: z.array(id).optional() }).optional(),
  /** Contact of plug a to contact of plug b, where it is not one to one. */
  wiring: z.array(z.strictObject({ a: id, b: id })).optional(),
  /** An in-line fuse in the live core, so far from end a. */
  fuse: z
    .strictObject({
      amps: figures.fuseAmps,
      family: z.enum(['blade', 'glass-fast', 'glass-slow']),
      atM: metres,
      /** The largest current that it can break, where its sheet says other than the family's usual one. */
      breakingAmps: amps.optional(),
    })
    .optional(),
  /** Its screen is joined at this end only. */
  screenAt: z.enum(['a', 'b']).optional(),
  /** In conduit or another sheath all the way, beyond its own jacket. */
  sheathed: z.boolean().optional(),
  /** Hook-ups that it is plugged in for; all if not given. */
  hookups: z.array(id).optional(),
  status: z.enum(['toMake', 'made', 'tested']).optional(),
  note: text.optional(),
});

const hookup = z.strictObject({
  id,
  name: line.min(1),
  /** Settings of units that differ in this hook-up: unit id, setting id, value. */
  settings: z.record(id, z.record(id, line)).optional(),
});

const acceptance = z.strictObject({ finding: line.max(1000), reason: text.min(1), figures: line });

const reading = z.strictObject({
  step: line.max(1000),
  value: figures.reading,
  unit: line,
  when: line,
  note: text.optional(),
});

/** How much less arrives at one antenna of what another one sends. */
const coupling = z.strictObject({ a: portRef, b: portRef, lossDb: figures.couplingDb });

const settings = z.strictObject({
  units: z.enum(['metric', 'feet']).optional(),
  /** Largest voltage drop wanted from supply to load, as a share. */
  maxDrop: share.optional(),
  /** The drawing is to scale: metres for each of its units of length. */
  metresPerUnit: figures.metresPerUnit.optional(),
  /** Largest direct current wanted in a screen. */
  maxScreenAmps: amps.optional(),
  /** Air around the leads: a room at 20 °C if not given. Resistance follows it; above 30 °C a wire stands less. */
  ambientCelsius: figures.celsius.optional(),
  /** Conductors that carry current side by side in the same bundle; 1 if not given. */
  bundled: figures.bundled.optional(),
  /** Cable to buy beyond what is cut, as a share: 0.1 if not given. */
  cableAllowance: share.optional(),
});

/** The whole document, as it is in the file. */
export const stationSchema = z.strictObject({
  format: z.literal(formatName),
  version: z.literal(currentVersion),
  title: line,
  notes: text,
  plan,
  units: z.array(unit).max(5000),
  cables: z.array(cable).max(20_000),
  couplings: z.array(coupling).max(1000).optional(),
  hookups: z.array(hookup).max(200),
  marks: z.array(mark).max(2000).optional(),
  accepted: z.array(acceptance),
  readings: z.array(reading),
  settings,
  kinds: z.record(id, unitKindSchema),
  cableKinds: z.record(id, cableKindSchema),
  connectors: z.record(id, connectorSchema),
});

export type Station = z.infer<typeof stationSchema>;
export type Plan = z.infer<typeof plan>;
export type Unit = z.infer<typeof unit>;
export type Cable = z.infer<typeof cable>;
export type PortRef = z.infer<typeof portRef>;
export type Mark = z.infer<typeof mark>;
export type Hookup = z.infer<typeof hookup>;
export type Acceptance = z.infer<typeof acceptance>;
export type Reading = z.infer<typeof reading>;
export type CableEnd = 'a' | 'b';
