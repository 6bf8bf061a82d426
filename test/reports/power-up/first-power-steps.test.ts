import { describe, expect, it } from 'vitest';
import type { PowerUpStep } from '../../../core/reports/power-up/sheet.ts';
import { acceptFinding } from '../../../core/rules/accept.ts';
import { edit } from '../../../core/station/edit.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { survey } from '../../../core/survey.ts';
import { type CableDrawing, drawStation } from '../../stations/draw.ts';
import { powerUpSheet } from './power-up-sheet.ts';

const hookups = [
  { id: 'dummy', name: 'On the dummy load' },
  { id: 'air', name: 'On the air' },
];

const radio = (rig: string, more: { between?: string; load?: string; own?: Record<string, number> } = {}): Station => {
  const { between, load = 'dummy-load-100w', own = {} } = more;
  const toAntenna: CableDrawing[] = between
    ? [
        ['meter.antenna > between.transmitter', { hookups: ['air'] }],
        ['between.antenna > antenna.feed', { hookups: ['air'] }],
      ]
    : [['meter.antenna > antenna.feed', { hookups: ['air'] }]];
  return drawStation({
    units: {
      supply: 'switch-mode-supply',
      rig: { kind: rig, overrides: own },
      key: 'straight-key',
      meter: 'swr-meter-200w',
      load,
      antenna: 'dipole',
      ...(between ? { between } : {}),
    },
    hookups,
    cables: [
      'supply.out > rig.power',
      'key.out > rig.key',
      'rig.antenna > meter.transmitter',
      ['meter.antenna > load.input', { hookups: ['dummy'] }],
      ...toAntenna,
    ],
  });
};

/** With its findings taken for what they are: what is asked here is the sheet that goes on to the end. */
const accepted = (station: Station): Station =>
  survey(station).findings.reduce((s, finding) => edit(s, acceptFinding(finding, 'for the test')), station);

const stepsOf = (station: Station, part: 'dummy' | 'antenna'): readonly PowerUpStep[] =>
  powerUpSheet(accepted(station)).parts.find(({ id }) => id === part)?.steps ?? [];
const textOf = (steps: readonly PowerUpStep[], id: string) => steps.find((step) => step.id === id)?.text ?? '';

describe('a transmitter that can be turned down', () => {
  const steps = stepsOf(radio('transceiver-100w'), 'dummy');
  const ids = steps.map(({ id }) => id);

  it('sends at its lowest power first, with what the meter shows at it', () => {
    expect(ids.indexOf('dummy/rig/low')).toBeGreaterThan(-1);
    expect(ids.indexOf('dummy/rig/low')).toBeLessThan(ids.indexOf('dummy/rig/hold'));
    expect(textOf(steps, 'dummy/rig/low')).toMatch(
      /^rig at its lowest power, 5\.01 W, on a clear frequency\. Hold key/,
    );
    const swr = steps.find(({ id }) => id === 'dummy/low/rig/meter.transmitter/swr');
    expect(swr?.expected?.value).toBeCloseTo(1, 2);
    expect(ids.indexOf(swr?.id ?? '')).toBeLessThan(ids.indexOf('dummy/rig/hold'));
  });
  it('is held for a carrier: a meter follows neither dits nor speech', () =>
    expect(textOf(steps, 'dummy/rig/low')).toMatch(/steady carrier: key down, .*\(dits and speech read low\)/));
  it('by its key rather than by its own microphone', () =>
    expect(steps.filter(({ text }) => /Hold .*microphone/i.test(text))).toEqual([]));
  it('by its microphone where nothing else keys it', () => {
    const voice = drawStation({
      units: { supply: 'switch-mode-supply', rig: 'transceiver-100w', load: 'dummy-load-100w' },
      cables: ['supply.out > rig.power', 'rig.antenna > load.input'],
    });
    const found = stepsOf(voice, 'dummy');
    expect(textOf(found, 'dummy/rig/low')).toMatch(/Hold the hand microphone of rig with a steady carrier/);
    expect(textOf(found, 'dummy/rig/back')).toMatch(/^Let go of the hand microphone of rig: rig stops/);
  });
  it('watts that would not move the needle are not asked for', () =>
    expect(ids).not.toContain('dummy/low/rig/meter.transmitter/watts'));
  it('of which nobody knows how far, says so, and is read by its SWR alone', () => {
    const station = radio('transceiver-100w');
    const { 'transceiver-100w': kind } = station.kinds;
    if (!kind) throw new Error('no such kind');
    const elements = kind.elements.map((element) => {
      if (element.type !== 'rfSource') return element;
      const { minDbm: _, ...rest } = element;
      return rest;
    });
    const unknown = { ...station, kinds: { ...station.kinds, 'transceiver-100w': { ...kind, elements } } };
    const found = stepsOf(unknown, 'dummy');
    expect(textOf(found, 'dummy/rig/low')).toMatch(/^rig at its lowest power, on a clear frequency/);
    expect(found.map(({ id }) => id)).toContain('dummy/low/rig/meter.transmitter/swr');
  });
  it('that has one power is sent with at once', () => {
    const found = stepsOf(radio('cw-transmitter-5w', { load: 'dummy-load-5w' }), 'dummy');
    expect(found.map(({ id }) => id)).not.toContain('dummy/rig/low');
    expect(textOf(found, 'dummy/rig/hold')).toMatch(/^rig, on a clear frequency\. Hold key with a steady carrier/);
  });
  it('is held no longer than the load stands', () => {
    const found = stepsOf(radio('transceiver-100w', { own: { 'output.dbm': 51.8, 'output.maxDbm': 52 } }), 'dummy');
    expect(textOf(found, 'dummy/rig/hold')).toMatch(/no longer than 60 s: load stands 100 W for good/);
  });
});

describe('on the antenna', () => {
  it('the lowest power comes first again, and of the power supply only what the antenna may change is read', () => {
    const ids = stepsOf(radio('transceiver-100w'), 'antenna').map(({ id }) => id);
    expect(ids.indexOf('antenna/air/rig/low')).toBeGreaterThan(-1);
    expect(ids.indexOf('antenna/air/rig/low')).toBeLessThan(ids.indexOf('antenna/air/rig/hold'));
    expect(ids.filter((id) => id.includes('/drop/'))).toEqual([]);
  });
  it.each(['manual-tuner', 'automatic-tuner'])('%s is tuned at it, not before', (tuner) => {
    const steps = stepsOf(radio('transceiver-100w', { between: tuner }), 'antenna');
    expect(textOf(steps, 'antenna/air/rig/low')).toMatch(/Tune between for the least SWR now/);
    const dummy = stepsOf(radio('transceiver-100w', { between: tuner }), 'dummy');
    expect(dummy.filter(({ text }) => /Tune between/.test(text))).toEqual([]);
  });
});

describe('without a dummy load', () => {
  const untested = (rig: string, antenna: string, frequencyHz: number) =>
    stepsOf(
      drawStation({
        units: { supply: 'switch-mode-supply', rig, key: 'straight-key', antenna },
        cables: ['supply.out > rig.power', 'key.out > rig.key', 'rig.antenna > antenna.feed'],
        plan: { frequencyHz },
      }),
      'antenna',
    ).map(({ id, text }) => `${id.split('/').at(-1)}: ${text}`);

  it('nothing sends on the antenna at more than the lowest power', () => {
    const steps = untested('transceiver-100w', 'dipole', 14_100_000);
    expect(steps.filter((step) => step.startsWith('low: rig at its lowest power, 5.01 W'))).toHaveLength(1);
    expect(steps.at(-1)).toMatch(/^untested: No more power than that: rig has not been tested/);
    expect(steps.filter((step) => step.startsWith('hold:'))).toEqual([]);
  });
  it('what has one power only does not send', () => {
    const steps = untested('cw-transmitter-3w', 'wire-antenna', 10_120_000);
    expect(steps.at(-1)).toMatch(/^untested: Do not press key yet: rig has one power, and has not been tested/);
    expect(steps.filter((step) => /Hold key/.test(step))).toEqual([]);
  });
});

describe('an amplifier with valves', () => {
  const station = drawStation({
    units: {
      supply: 'switch-mode-supply',
      rig: 'transceiver-100w',
      key: 'straight-key',
      amp: 'valve-amplifier-1kw',
      meter: 'swr-meter-2kw',
      load: 'dummy-load-1500w',
    },
    cables: [
      'supply.out > rig.power',
      'key.out > rig.key',
      'rig.amplifier > amp.key',
      'rig.antenna > amp.input',
      'amp.output > meter.transmitter',
      'meter.antenna > load.input',
    ],
  });
  const steps = stepsOf(station, 'dummy');
  const ids = steps.map(({ id }) => id);

  it('is warmed up, then sent past on standby, then driven low, then in full', () => {
    const order = ['dummy/amp/warm', 'dummy/rig/standby', 'dummy/rig/keyed', 'dummy/rig/low', 'dummy/rig/hold'];
    expect(ids.filter((id) => order.includes(id))).toEqual(order);
    expect(textOf(steps, 'dummy/amp/warm')).toMatch(/heat for 3 minutes; its manual goes before/);
    expect(textOf(steps, 'dummy/rig/keyed')).toMatch(/K2 at amp in again, on, and valves warm again\.$/);
    expect(textOf(steps, 'dummy/rig/standby')).toMatch(
      /^Everything off, K2 at amp out, on again: the amplifier stays in standby/,
    );
  });
  it('has its plate current said at each, and its drive', () => {
    expect(textOf(steps, 'dummy/rig/low')).toMatch(/amp draws some 150 mA of plate current/);
    expect(textOf(steps, 'dummy/rig/hold')).toMatch(/no more than 120 W into amp.*650 mA of plate current/);
  });
  it('its 110 V are said where its line is read', () =>
    expect(textOf(steps, 'dummy/k2/rest')).toMatch(
      /110 V stands on it\. amp off and its mains plug out: sleeve back, insulated clips on;/,
    ));
  it('makes ten times the drive when it is keyed', () => {
    const watts = steps.find(({ id }) => id === 'dummy/rig/meter.transmitter/watts')?.expected?.value ?? 0;
    // 100 W and 10 dB, less some tenths of a decibel in the leads and the meter.
    expect(watts).toBeGreaterThan(940);
    expect(watts).toBeLessThan(1000);
  });
});
