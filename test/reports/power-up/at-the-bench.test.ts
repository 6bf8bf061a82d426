import { describe, expect, it } from 'vitest';
import { formatExpected } from '../../../core/reports/power-up/format-quantity.ts';
import { judgeReading } from '../../../core/reports/power-up/judge-reading.ts';
import { openOhms, type PowerUpStep } from '../../../core/reports/power-up/sheet.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { drawStation } from '../../stations/draw.ts';
import { sample } from '../../stations/samples.ts';
import { powerUpSheet } from './power-up-sheet.ts';

const stepsOf = (station: Station): readonly PowerUpStep[] => powerUpSheet(station).parts.flatMap((part) => part.steps);
const stepOf = (station: Station, id: string) => stepsOf(station).find((step) => step.id === id);
const textOf = (station: Station, id: string): string => stepOf(station, id)?.text ?? '';

const hill = sample('hill-table');
const club = sample('club-hall');

/** A radio whose tuner has power on the air only. */
const tuned = drawStation({
  units: {
    supply: 'switch-mode-supply',
    rig: 'transceiver-100w',
    key: 'straight-key',
    meter: 'swr-meter-200w',
    load: 'dummy-load-100w',
    tuner: 'automatic-tuner',
    wire: 'wire-antenna',
  },
  hookups: [
    { id: 'dummy', name: 'On the dummy load' },
    { id: 'air', name: 'On the air' },
  ],
  cables: [
    ['supply.out > rig.power', { kind: 'lead-awg-10', fuse: { amps: 25, family: 'blade', atM: 0.1 } }],
    ['supply.out > tuner.power', { hookups: ['air'], fuse: { amps: 1, family: 'blade', atM: 0.1 } }],
    'key.out > rig.key',
    'rig.antenna > meter.transmitter',
    ['meter.antenna > load.input', { hookups: ['dummy'] }],
    ['meter.antenna > tuner.transmitter', { hookups: ['air'] }],
    ['tuner.antenna > wire.feed', { hookups: ['air'] }],
  ],
  plan: { frequencyHz: 10_120_000 },
});

describe('before power', () => {
  it('earth wires are on first, and every switch stands as its hook-up says', () => {
    const ids = stepsOf(club).map(({ id }) => id);
    expect(ids.indexOf('earth')).toBeLessThan(ids.findIndex((id) => id.startsWith('lead/')));
    expect(textOf(club, 'earth')).toBe('Earth wires on first, and off last: E1, E2, E3, E4, E5, E6, E7.');
    expect(textOf(club, 'switches')).toMatch(/^Set every switch: Run selector, Position, at “4”; /);
    expect(textOf(hill, 'switches')).toBe('');
  });
  it('a lead that hangs outdoors is measured before it goes up', () => {
    expect(textOf(hill, 'lead/r4/through')).toMatch(/^R4, before it goes up \(once up, leave this out\)/);
    expect(textOf(hill, 'lead/r4/across')).toMatch(/^R4, before it goes up \(once up, leave this out\)/);
    expect(textOf(hill, 'lead/r1/through')).toMatch(/^R1, unplugged/);
  });
  it('a sound core is under 0.5 Ω, and a long thin one under what it has', () => {
    for (const { id, expected } of stepsOf(hill).filter((step) => step.id.endsWith('/through'))) {
      expect(expected?.from, id).toBe(0);
      expect(expected?.to, id).toBeGreaterThanOrEqual(0.5);
      expect(expected?.to, id).toBeGreaterThan(expected?.value ?? 0);
    }
    expect(judgeReading(stepOf(hill, 'lead/d1/through')?.expected ?? never(), 0.3)).toBe('right');
    expect(judgeReading(stepOf(hill, 'lead/d1/through')?.expected ?? never(), 0.8)).toBe('too high');
  });
});

describe('an antenna of which only typical figures are known', () => {
  const expected = stepOf(tuned, 'feeder/r4')?.expected;
  it('may be open or a short for an ohmmeter: it is written down', () => {
    expect(expected && formatExpected(expected)).toBe('to be written down');
    for (const ohms of [0.2, 50, openOhms]) expect(judgeReading(expected ?? never(), ohms)).toBe('right');
  });
  it('once its owner has confirmed them, it is what they say', () => {
    const confirmed = { ...tuned, units: tuned.units.map((u) => (u.id === 'wire' ? { ...u, confirmed: true } : u)) };
    const known = stepOf(confirmed, 'feeder/r4')?.expected;
    expect(known?.value).toBeNull();
    expect(judgeReading(known ?? never(), 0.2)).toBe('too low');
  });
  it('a dummy load is 50 Ω in any case', () => expect(stepOf(tuned, 'feeder/r2')?.expected?.value).toBeCloseTo(50, 0));
});

describe('with power', () => {
  it('the plug of an injector straight on the supply is read before it goes in, though nothing else is there to read', () => {
    const injected = drawStation({
      units: { supply: 'bench-supply', tee: 'bias-tee' },
      cables: [['supply.out > tee.power', { fuse: { amps: 1, family: 'blade', atM: 0.1 } }]],
    });
    const step = stepOf(injected, 'plug/d1.b');
    expect(step?.text).toMatch(
      /^Power off, plug in D1 at supply · output, .* before it goes into tee · power: red tip on its centre/,
    );
    expect(step?.expected?.value).toBeCloseTo(13.8, 2);
  });
  it('what is on the mains by itself comes before what it feeds, and last where it feeds nothing', () => {
    const ids = stepsOf(hill).map(({ id }) => id);
    expect(ids.indexOf('unit/computer/own')).toBeGreaterThan(-1);
    expect(ids.indexOf('unit/computer/own')).toBeLessThan(ids.indexOf('unit/interface/in'));
    const of = stepsOf(club).filter(({ id }) => id.startsWith('unit/'));
    expect(of.at(-1)?.text).toMatch(/^Rotator controller: its mains plug in, switch it on/);
  });
  it('no meter’s tip goes into a USB socket: the unit wakes', () => {
    expect(textOf(hill, 'unit/interface/in')).toMatch(/^Plug in C1; Sound interface wakes/);
    const touched = stepsOf(hill).filter(
      ({ expected, at }) => expected && at.some((place) => 'unit' in place && place.unit === 'computer'),
    );
    expect(touched).toEqual([]);
  });
  it('a battery that stands behind a supply is tried: its lead out, and the radio goes on', () => {
    const behind = (source: string) =>
      drawStation({
        units: {
          mains: 'switch-mode-supply',
          other: source,
          change: 'backup-changeover',
          rig: 'transceiver-qrp-10w',
          load: 'dummy-load-100w',
        },
        cables: [
          ['mains.out > change.mains', { kind: 'lead-awg-8', fuse: { amps: 30, family: 'blade', atM: 0.05 } }],
          ['other.out > change.battery', { kind: 'lead-awg-8', fuse: { amps: 5, family: 'blade', atM: 0.05 } }],
          ['change.output > rig.power', { fuse: { amps: 5, family: 'blade', atM: 0.05 } }],
          'rig.antenna > load.input',
        ],
      });
    const step = stepOf(behind('lead-acid-battery'), 'unit/mains/backup');
    expect(step?.text).toMatch(/^Pull D1 out of mains, all else on: rig goes on from the battery/);
    // A rested lead-acid battery is full at 12.7 to 12.9 V (common practice), less a diode or a relay on the way.
    expect(step?.expected?.value).toBeGreaterThan(11.5);
    expect(step?.expected?.value).toBeLessThan(12.9);
    expect(stepOf(behind('bench-supply'), 'unit/mains/backup')).toBeUndefined();
  });
  it('a unit that has power in another hook-up only is plugged in and read there', () => {
    const parts = powerUpSheet(tuned).parts;
    const inUnits = parts.find(({ id }) => id === 'units')?.steps.map(({ id }) => id) ?? [];
    expect(inUnits).not.toContain('unit/tuner/volts');
    const onAir = parts.find(({ id }) => id === 'antenna')?.steps ?? [];
    const volts = onAir.find(({ id }) => id === 'unit/tuner/volts');
    expect(volts?.expected?.value).toBeGreaterThan(13);
    expect(onAir.map(({ id }) => id).indexOf('unit/tuner/volts')).toBeLessThan(
      onAir.map(({ id }) => id).indexOf('antenna/air/rig/low'),
    );
  });
  it('a closed line may show nothing at all, and either sign', () => {
    const closed = stepsOf(club).filter(
      ({ id, expected }) => id.endsWith('/pressed') && expected && Math.abs(expected.value ?? 1) < 0.05,
    );
    expect(closed.length).toBeGreaterThan(3);
    for (const { expected } of closed) {
      expect(judgeReading(expected ?? never(), 0)).toBe('right');
      expect(expected?.from).toBe(-(expected?.to ?? 0));
    }
  });
});

describe('what a drawing can’t tell', () => {
  it('units in the line are tried without their power, where it gets past them', () => {
    const passing = drawStation({
      units: {
        supply: 'switch-mode-supply',
        rig: 'transceiver-100w',
        key: 'straight-key',
        meter: 'swr-meter-200w',
        tuner: 'automatic-tuner',
        load: 'dummy-load-100w',
      },
      cables: [
        ['supply.out > rig.power', { kind: 'lead-awg-10', fuse: { amps: 25, family: 'blade', atM: 0.1 } }],
        ['supply.out > tuner.power', { fuse: { amps: 1, family: 'blade', atM: 0.1 } }],
        'key.out > rig.key',
        'rig.antenna > meter.transmitter',
        'meter.antenna > tuner.transmitter',
        'tuner.antenna > load.input',
      ],
    });
    expect(textOf(passing, 'eyes/unpowered')).toMatch(/one after the other: tuner with D2 out\./);
    expect(textOf(tuned, 'eyes/unpowered')).toBe('');
  });
  it('the sound of a data station comes up from nothing, into the load', () => {
    expect(textOf(hill, 'eyes/sound')).toMatch(/^Sound interface: sound level from zero up, into the dummy load/);
    expect(textOf(club, 'eyes/sound')).toBe('');
  });
  it('plugs that carry more than 5 A are felt after a minute, with power off', () => {
    expect(textOf(tuned, 'eyes/warmth')).toMatch(
      /^After a minute at full power .*: power off, then feel the plugs of D1\./,
    );
    expect(textOf(sample('hut'), 'eyes/warmth')).toBe('');
  });
  it('home-made plugs are measured to their shells, bought ones not', () => {
    expect(textOf(tuned, 'shells')).toMatch(/^Home-made plugs of K1, unplugged: each contact to the plug’s shell/);
    const tested: Station = { ...tuned, cables: tuned.cables.map((cable) => ({ ...cable, status: 'tested' })) };
    expect(textOf(tested, 'shells')).toBe('');
  });
});

function never(): never {
  throw new Error('the sheet has no such step');
}
