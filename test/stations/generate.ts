import { cableKinds } from '../../core/catalog/cables/cable-kinds.ts';
import { connectors } from '../../core/catalog/connectors.ts';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { createStation } from '../../core/station/create-station.ts';
import type { Cable, PortRef, Station, Unit } from '../../core/station/schema/schema.ts';
import { congruentialShares } from '../shares.ts';

/** The units of one operating position, by the last part of their ids. */
const position: Record<string, string> = {
  supply: 'bench-supply',
  strip: 'fused-strip',
  tx: 'cw-transmitter-3w',
  rx: 'receiver-with-mute',
  over: 'changeover-by-line',
  keyer: 'keyer',
  paddle: 'paddle',
  meter: 'swr-meter',
  load: 'dummy-load-5w',
  tuner: 'manual-tuner',
  arrestor: 'arrestor',
  antenna: 'wire-antenna',
};

type Route = [kind: string, a: string, b: string, set?: Partial<Cable>];

const swapped: Partial<Cable> = {
  wiring: [
    { a: 'plus', b: 'shell' },
    { a: 'minus', b: 'centre' },
  ],
};

const routes: Route[] = [
  ['lead-awg-14', 'supply.out', 'strip.input'],
  ['lead-awg-20', 'strip.one', 'tx.power'],
  ['lead-awg-20', 'strip.two', 'over.power'],
  ['lead-awg-20', 'strip.three', 'rx.power', swapped],
  ['coax-rg-58', 'tx.antenna', 'over.transmitter'],
  ['coax-rg-58', 'over.antenna', 'meter.transmitter'],
  ['coax-rg-58', 'over.receiver', 'rx.antenna'],
  ['coax-rg-58', 'meter.antenna', 'load.input', { hookups: ['dummy'] }],
  ['coax-rg-58', 'meter.antenna', 'tuner.transmitter', { hookups: ['air'] }],
  ['coax-rg-58', 'tuner.antenna', 'arrestor.station'],
  ['coax-rg-58', 'arrestor.antenna', 'antenna.feed'],
  ['paddle-lead', 'paddle.out', 'keyer.paddle'],
  ['key-lead', 'keyer.out', 'over.line'],
  ['key-lead', 'over.key', 'tx.key'],
  ['key-lead', 'over.mute', 'rx.mute'],
];

/**
 * A valid station of about so many units and two cables a unit: operating positions side by side, each with two
 * hook-ups, their boxes bonded to one another and to an earth bar, figures and lengths the same for the same number.
 */
export function generateStation(units: number, seed = 1): Station {
  const random = congruentialShares(seed);
  const count = Math.max(1, Math.round(units / (Object.keys(position).length + 0.5)));
  const all: Unit[] = [];
  const cables: Cable[] = [];
  const lay = (kind: string, a: PortRef, b: PortRef, set: Partial<Cable> = {}) => {
    const number = cables.length + 1;
    cables.push({ id: `c${number}`, number: `C${number}`, kind, lengthM: round(0.4 + random() * 1.6), a, b, ...set });
  };
  for (let i = 0; i < count; i++) {
    Object.entries(position).forEach(([name, kind], k) => {
      const at = { x: (k % 6) * 234 + (i % 4) * 1500, y: Math.floor(k / 6) * 216 + Math.floor(i / 4) * 540 };
      all.push({ id: `p${i}-${name}`, kind, name: `${name} ${i + 1}`, position: at, ...ownFigures(name, random) });
    });
    for (const [kind, a, b, set] of routes) {
      // Each hook-up has its own RF and keying leads, short ones on the bench and longer ones to the shelf.
      const own = kind.startsWith('coax') || kind.endsWith('-lead');
      const sets = own && !set?.hookups ? [{ hookups: ['dummy'] }, { hookups: ['air'] }] : [{}];
      for (const hookup of sets) lay(kind, refOf(i, a), refOf(i, b), { ...set, ...hookup });
    }
    if (i % 2 === 0)
      all.push({
        id: `bar${i}`,
        kind: 'earth-bar',
        name: `Earth bar ${i + 1}`,
        position: { x: (i % 4) * 1500, y: Math.floor(i / 4) * 540 + 432 },
      });
    lay('earth-wire', refOf(i, 'arrestor.earth'), { unit: `bar${i - (i % 2)}`, port: i % 2 === 0 ? 'one' : 'two' });
    if (i > 1 && i % 2 === 0)
      lay('earth-wire', { unit: `bar${i - 2}`, port: 'three' }, { unit: `bar${i}`, port: 'four' });
  }
  return {
    ...createStation(`Generated, ${all.length} units`),
    plan: { frequencyHz: 10_120_000, mode: 'keying', speedWpm: 15, duty: 0.4, sendShare: 1 / 3, hoursPerDay: 2 },
    units: all,
    cables,
    hookups: [
      { id: 'dummy', name: 'On the dummy loads' },
      { id: 'air', name: 'On the air' },
    ],
    kinds: Object.fromEntries(
      shelf.filter(({ id }) => all.some((u) => u.kind === id)).map(({ id, kind }) => [id, kind]),
    ),
    cableKinds: Object.fromEntries(
      cableKinds.filter(({ id }) => cables.some((c) => c.kind === id)).map(({ id, kind }) => [id, kind]),
    ),
    connectors,
  };
}

const round = (value: number): number => Math.round(value * 100) / 100;

function refOf(i: number, ref: string): PortRef {
  const [unit = '', port = ''] = ref.split('.');
  return { unit: `p${i}-${unit}`, port };
}

function ownFigures(name: string, random: () => number): Pick<Unit, 'overrides'> {
  if (name === 'strip')
    return { overrides: { 'fuse-one.fuseAmps': 3, 'fuse-two.fuseAmps': 2, 'fuse-three.fuseAmps': 1 } };
  if (name === 'tx') return { overrides: { 'draw.states.0.amount': round(0.4 + random() * 0.4) } };
  return name === 'rx' ? { overrides: { 'draw.amount': round(0.05 + random() * 0.1) } } : {};
}
