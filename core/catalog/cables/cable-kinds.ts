import type { CableKind, Wire } from '../../station/schema/cable-kind.ts';
import { wireName } from '../wire/wire.ts';
import { coaxTypes } from './coax-types.ts';

/** A cable kind as the shelf offers it. */
export interface ShelfCable {
  readonly id: string;
  readonly kind: CableKind;
}

const leadWires: readonly Wire[] = [
  { awg: 24 },
  { awg: 22 },
  { awg: 20 },
  { awg: 18 },
  { awg: 16 },
  { awg: 14 },
  { awg: 12 },
  { awg: 10 },
  { awg: 8 },
  { awg: 6 },
  { awg: 4 },
  { mm2: 1.5 },
  { mm2: 2.5 },
  { mm2: 6 },
  { mm2: 10 },
  { mm2: 16 },
];

/** `lead-awg-14`, `lead-1.5-mm2` */
const leadId = ({ awg, mm2 }: Wire): string => {
  if (awg === undefined) return `lead-${mm2}-mm2`;
  return awg > 0 ? `lead-awg-${awg}` : `lead-awg-${1 - awg}-0`;
};

/** A two-core lead of copper of any size. */
export const leadOf = (core: Wire): ShelfCable => ({
  id: leadId(core),
  kind: {
    name: `two-core lead, ${wireName(core)}`,
    class: 'dc',
    cores: 2,
    core,
    source: core.awg === undefined ? 'IEC 60228 class 5, plain' : 'ASTM B258 and NBS Handbook 100',
  },
});

const leads: readonly ShelfCable[] = leadWires.map(leadOf);

const coaxes: readonly ShelfCable[] = Object.entries(coaxTypes).map(([id, type]) => {
  const { name, centre, outer, source, ...coax } = type;
  return { id: `coax-${id}`, kind: { name, class: 'rf', cores: 1, core: centre, screen: outer, coax, source } };
});

/** Thin stranded cores under a braid: 0.14 mm² by DIN VDE 0295, the braid from memory. */
const thin = {
  core: { mm2: 0.14 },
  screen: { ohmsPerM: 0.05 },
  source: 'common practice: 0.14 mm² cores (DIN VDE 0295); screen resistance from memory',
} satisfies Partial<CableKind>;

const extension = (name: string, cores: number, plug: string, socket: string): CableKind => ({
  ...thin,
  name,
  class: 'audio',
  cores,
  plugs: { a: plug, b: socket },
});

/** Every cable kind of the catalogue, power first. */
export const cableKinds: readonly ShelfCable[] = [
  ...leads,
  ...coaxes,
  { id: 'key-lead', kind: { ...thin, name: 'screened lead, one core, keying', class: 'control', cores: 1 } },
  { id: 'paddle-lead', kind: { ...thin, name: 'screened lead, two cores, keying', class: 'control', cores: 2 } },
  { id: 'audio-lead', kind: { ...thin, name: 'screened lead, one core, audio', class: 'audio', cores: 1 } },
  { id: 'stereo-lead', kind: { ...thin, name: 'screened lead, two cores, audio', class: 'audio', cores: 2 } },
  {
    id: 'extension-mono-635',
    kind: extension('extension lead, 6.35 mm mono', 1, 'mono-635-plug', 'mono-635-socket'),
  },
  {
    id: 'extension-stereo-635',
    kind: extension('extension lead, 6.35 mm stereo', 2, 'stereo-635-plug', 'stereo-635-socket'),
  },
  { id: 'extension-mono-35', kind: extension('extension lead, 3.5 mm mono', 1, 'mono-35-plug', 'mono-35-socket') },
  {
    id: 'extension-stereo-35',
    kind: extension('extension lead, 3.5 mm stereo', 2, 'stereo-35-plug', 'stereo-35-socket'),
  },
  {
    id: 'control-lead-8',
    kind: { ...thin, name: 'screened lead, seven cores', class: 'control', cores: 7 },
  },
  {
    id: 'control-lead-25',
    kind: { ...thin, name: 'screened lead, 25 cores', class: 'control', cores: 25 },
  },
  { id: 'data-lead-9', kind: { ...thin, name: 'screened lead, nine cores, serial', class: 'data', cores: 9 } },
  { id: 'data-lead-25', kind: { ...thin, name: 'screened lead, 25 cores, data', class: 'data', cores: 25 } },
  {
    id: 'usb-lead',
    kind: {
      name: 'USB lead',
      class: 'data',
      cores: 4,
      core: { awg: 24 },
      screen: { ohmsPerM: 0.03 },
      readyMade: true,
      source: 'common practice: power cores of 24 AWG; screen resistance from memory',
    },
  },
  {
    id: 'network-lead',
    kind: { name: 'network lead, four pairs', class: 'data', cores: 8, core: { awg: 24 }, source: 'common practice' },
  },
  {
    id: 'earth-wire',
    kind: {
      name: 'earth wire, 16 mm²',
      class: 'earth',
      cores: 1,
      core: { mm2: 16 },
      source: 'IEC 60228 class 5, plain',
    },
  },
];
