import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isPressing } from '../../../core/reports/is-pressing.ts';
import { contextOf, fedUnits } from '../../../core/reports/power-up/context.ts';
import { isOff } from '../../../core/reports/power-up/judge-reading.ts';
import { endangersSending } from '../../../core/reports/power-up/parts/sending-steps.ts';
import { type PowerUpStep, powerUpParts } from '../../../core/reports/power-up/sheet.ts';
import { isOutdoor } from '../../../core/station/outdoors.ts';
import { classOf, hookupsOf, kindOf, portOf } from '../../../core/station/parts.ts';
import type { Cable, Station } from '../../../core/station/schema/schema.ts';
import { survey } from '../../../core/survey.ts';
import { correct, troubles } from '../../cases/index.ts';
import { drawStation } from '../../stations/draw.ts';
import { anyStation } from '../../stations/random-station.ts';
import { sample, sampleNames } from '../../stations/samples.ts';
import { powerUpSheet } from './power-up-sheet.ts';

const onAir = { id: 'air', name: 'On the air' };
const onDummy = { id: 'dummy', name: 'On the dummy load' };

/** A radio fed by a battery that a panel on the roof charges. */
const solar = drawStation({
  units: {
    panel: 'solar-panel',
    controller: 'solar-charge-controller',
    battery: 'lifepo4-battery',
    rig: 'transceiver-qrp-10w',
    meter: 'swr-meter',
    wire: 'dipole',
    load: 'dummy-load-100w',
  },
  hookups: [onDummy, onAir],
  cables: [
    'panel.out > controller.panel',
    'controller.battery > battery.out',
    'controller.load > rig.power',
    'rig.antenna > meter.transmitter',
    ['meter.antenna > load.input', { hookups: ['dummy'] }],
    ['meter.antenna > wire.feed', { hookups: ['air'] }],
  ],
});

/** A beam that is turned from the desk. */
const turned = drawStation({
  units: {
    supply: 'switch-mode-supply',
    rig: 'transceiver-100w',
    meter: 'swr-meter-200w',
    beam: 'beam-three-element',
    load: 'dummy-load-100w',
    controller: 'rotator-controller',
    rotator: 'rotator',
  },
  hookups: [onDummy, onAir],
  cables: [
    'supply.out > rig.power',
    'rig.antenna > meter.transmitter',
    ['meter.antenna > load.input', { hookups: ['dummy'] }],
    ['meter.antenna > beam.feed', { hookups: ['air'] }],
    'controller.cable > rotator.cable',
  ],
});

const stations: [string, Station][] = [
  ['solar', solar],
  ['turned', turned],
  ...sampleNames.map((name): [string, Station] => [name, sample(name)]),
  ...correct.map(({ id, station }): [string, Station] => [id, station]),
  ...troubles.map(({ id, right }): [string, Station] => [`${id} put right`, right]),
  ...fc.sample(anyStation, { seed: 200, numRuns: 200 }).map((station, i): [string, Station] => [`drawn ${i}`, station]),
];

const stepsOf = (station: Station): readonly PowerUpStep[] => powerUpSheet(station).parts.flatMap((part) => part.steps);
const textOf = (station: Station, id: string): string => stepsOf(station).find((step) => step.id === id)?.text ?? '';

/** The cables that a step's sentence names. */
const named = (station: Station, { text }: PowerUpStep): Cable[] =>
  station.cables.filter(({ number }) => new RegExp(`(^|[ (])${number}([ ,.:)]|$)`).test(text));
const touchesOutdoors = (station: Station, { a, b }: Cable): boolean =>
  [a, b].some(({ unit }) => isOutdoor(station, unit));
const givesPower = (station: Station, { a, b }: Cable): boolean =>
  [a, b].some(({ unit }) =>
    station.units.some((u) => u.id === unit && kindOf(station, u).elements.some((e) => e.type === 'supply')),
  );

const handsOn = /\b(shake|move|touch|bend|tug|plug in|take out|unplug)/i;
const sends = /\b(SWR|[Ww]atts|[Ss]ends?|sending|lowest power|full power|is held)\b/;
/** A short that the sheet asks for, with the leads that it names for it. */
const shorts =
  /touch [^;.]*centre to shell|^\w+ out of [^,]*, first its centre touched to its shell|plugging [^:]*: touch centre to shell/i;

/** Parts during which somebody presses a control. */
const sending: readonly string[] = ['dummy', 'antenna', 'lines'];
/** Parts with power on. */
const powered: readonly string[] = ['supply', 'distribution', 'units', ...sending];

describe.each(stations)('the sheet of %s', (_, station) => {
  const { parts } = powerUpSheet(station);
  const steps = parts.flatMap((part) => part.steps);
  const ids = steps.map(({ id }) => id);
  const stepsIn = (list: readonly string[]) =>
    parts.filter(({ id }) => list.includes(id)).flatMap((part) => part.steps);
  const pressing = survey(station).findings.filter((finding) => isPressing(finding) && endangersSending(finding));

  it('sends nobody to a lead from outdoors while it sends, and shorts nothing that a source is behind', () => {
    const wrong = stepsIn([...powered, 'eyes']).filter(
      ({ id, text }) => handsOn.test(text) && sends.test(text) && !/\/(change|in|standby|keyed|stop)$/.test(id),
    );
    expect(wrong.filter((step) => named(station, step).some((c) => touchesOutdoors(station, c)))).toEqual([]);
    const places = stepsIn(sending).flatMap(({ at, expected }) => (expected ? at : []));
    expect(places.filter((place) => 'unit' in place && isOutdoor(station, place.unit))).toEqual([]);
    const shorted = steps.flatMap((step) => named(station, { ...step, text: shorts.exec(step.text)?.[0] ?? '' }));
    expect(shorted.filter((c) => classOf(station, c) !== 'rf' || givesPower(station, c))).toEqual([]);
  });

  it('has each step once, each reading right in its own middle, and no tip in a data socket', () => {
    expect(new Set(ids).size).toBe(ids.length);
    for (const { id, expected } of steps)
      if (expected && expected.value !== null) expect(isOff(expected, expected.value), id).toBe(false);
    const touched = steps.flatMap(({ at, expected }) => (expected && expected.quantity !== 'A' ? at : []));
    const ports = touched.flatMap((place) =>
      'unit' in place && place.port ? [{ unit: place.unit, port: place.port }] : [],
    );
    expect(ports.filter((port) => portOf(station, port).port.class === 'data')).toEqual([]);
  });

  it('lets nobody send what the drawing would not stand, and expects no reading that follows from a mistake', () => {
    const held = steps.filter(({ id }) => id.endsWith('/hold'));
    for (const { id } of held) {
      const hookup = id.startsWith('antenna/') ? id.split('/')[1] : undefined;
      // Of an antenna's step its hook-up is known; what is wrong in all is wrong in it.
      const everywhere = pressing.filter((f) => f.hookups.length === hookupsOf(station).length);
      expect(hookup ? pressing.filter((f) => f.hookups.includes(hookup)) : everywhere).toEqual([]);
    }
    // Nobody is told to press, and then to stop.
    for (const part of parts.filter(({ id }) => id === 'dummy')) {
      const own = part.steps.map(({ id }) => id);
      if (own.some((id) => id.endsWith('/stop'))) expect(own.filter((id) => id.endsWith('/hold'))).toEqual([]);
    }
    for (const part of parts.filter(({ id }) => powered.includes(id)))
      expect(part.steps.slice(0, -1).filter(({ warning }) => warning !== null)).toEqual([]);
  });

  it('sends at the lowest power before full power, and into the dummy load before the antenna', () => {
    // Without a test into a dummy load there is no full power after it.
    for (const id of ids.filter((one) => one.endsWith('/hold'))) {
      const low = ids.indexOf(id.replace(/hold$/, 'low'));
      expect(low).toBeLessThan(ids.indexOf(id));
      if (id.startsWith('antenna/')) expect(ids).toContain(`dummy/${id.split('/')[2]}/hold`);
    }
    const order = parts.map(({ id }) => id);
    const given = powerUpParts.filter((id) => order.includes(id));
    expect(order).toEqual(given);
  });

  it('reads each unit that has its power through a plug, in every hook-up that is used', () => {
    const stopped = steps.some(({ id, warning }) => id.endsWith('/stop') || warning !== null);
    if (stopped) return;
    const context = contextOf(survey(station), null);
    const used = context ? [context.base, ...(context.dummy ? [context.dummy] : []), ...context.onAir] : [];
    const fed = used.flatMap((tried) => fedUnits(station, tried));
    const read = ids.filter((id) => id.startsWith('unit/')).map((id) => id.split('/')[1]);
    expect(fed.filter(({ unit }) => !read.includes(unit)).map(({ unit }) => unit)).toEqual([]);
  });

  it('says of a line with more than 60 V that it has them', () => {
    const high = steps.filter(
      ({ id, expected }) => id.endsWith('/rest') && expected?.quantity === 'V' && Math.abs(expected.value ?? 0) > 60,
    );
    for (const { text } of high) expect(text).toMatch(/stands on it/);
  });
});

describe('what comes in from a panel', () => {
  it('is plugged in after the battery, each read at its turn', () => {
    const units = powerUpSheet(solar).parts.find(({ id }) => id === 'units')?.steps ?? [];
    expect(units.slice(0, 4).map(({ id }) => id)).toEqual([
      'unit/line',
      'plug/d2.a',
      'unit/controller/plug',
      'unit/controller/amps',
    ]);
    // 13.4 V of the battery, with nothing else on, read before its plug goes in.
    expect(units[1]?.expected?.value).toBeCloseTo(13.4, 2);
    expect(units[1]?.text).toMatch(
      /^Plug of D2, before it goes into controller · battery.*Then it goes in, before anything else\.$/,
    );
    expect(units[3]?.text).toMatch(/^Cover panel, plug in D1, uncover it/);
  });
  it('is told to be live, never to be shorted or metered; the antenna’s coax is discharged as before', () => {
    expect(textOf(solar, 'eyes/live')).toMatch(/^D1 \(22\.00 V\): .*Never touch its contacts together/);
    expect(textOf(solar, 'eyes/charge')).toBe(
      'Before plugging R3 back in: touch centre to shell, away from your fingers. A line that hung open charges itself up.',
    );
  });
  it('leaves before the battery when a storm comes, and its plug is capped', () => {
    const storm = powerUpSheet(solar).parts.find(({ id }) => id === 'storm')?.steps ?? [];
    expect(storm.map(({ id }) => id)).toEqual(['storm/antennas', 'storm/live', 'storm/batteries', 'storm/earth']);
    expect(storm[0]?.text).toMatch(/R3 at meter · antenna \(in On the air\)/);
    expect(storm[1]?.text).toMatch(/D1 at controller · panel, and cap/);
  });
  it('is out for the ohmmeter, and so is the battery', () => {
    expect(powerUpSheet(solar).parts[0]?.before).toMatch(/panel covered and unplugged/);
    expect(textOf(solar, 'rail/panel.output')).toMatch(/^All plugged in except D1 at panel and every lead of battery:/);
  });
});

describe('a rotator’s line', () => {
  it('is moved unpowered with an ohmmeter, and shorted by nobody', () => {
    expect(textOf(turned, 'eyes/outdoors')).toMatch(/^All off, K1 out at the house: an ohmmeter/);
    expect(textOf(turned, 'eyes/charge')).not.toMatch(/K1/);
    expect(textOf(turned, 'storm/others')).toMatch(/K1 at controller · rotator/);
  });
  it('coax is moved while it sends only indoors, into the dummy load', () => {
    expect(textOf(turned, 'eyes/shake')).toBe(
      'At the lowest power into the dummy load, indoors: move R1, R2 at both plugs. Watts and SWR stay where they are.',
    );
  });
});

it('of a lead that is in no hook-up, whose volts nobody knows, nothing is said', () => {
  const spare: Station = {
    ...turned,
    cables: turned.cables.map((c) => (c.number === 'R3' ? { ...c, hookups: [] } : c)),
  };
  expect(textOf(turned, 'eyes/charge')).toMatch(/R3/);
  expect(textOf(turned, 'storm/antennas')).toMatch(/R3/);
  expect(textOf(spare, 'eyes/charge')).toBe('');
  expect(textOf(spare, 'storm/antennas')).toBe('');
});

describe('a box of which the user says where it stands', () => {
  const at = (outdoor?: boolean): Station => ({
    ...turned,
    units: turned.units.map((u) => (u.id === 'meter' && outdoor !== undefined ? { ...u, outdoor } : u)),
  });
  it('is outdoors, and no lead to it is moved while it sends', () => {
    expect(textOf(at(), 'eyes/shake')).toMatch(/move R1, R2 at both plugs/);
    expect(textOf(at(true), 'eyes/shake')).toBe('');
    expect(textOf(at(true), 'storm/antennas')).toMatch(/unplug R1 at rig · antenna/);
  });
  it('an antenna under the roof does not come in', () => {
    const inside = { ...turned, units: turned.units.map((u) => (u.id === 'beam' ? { ...u, outdoor: false } : u)) };
    expect(textOf(inside, 'storm/antennas')).toBe('');
    expect(survey(inside).findings.map(({ rule }) => rule)).not.toContain('rf/antenna-unprotected');
    expect(survey(turned).findings.map(({ rule }) => rule)).toContain('rf/antenna-unprotected');
  });
});

describe('a relay on a mast', () => {
  const mast = sample('two-metre-mast');
  it('is outdoors as the preamplifier behind it is: leads are unplugged at the desk, not up there', () => {
    expect(isOutdoor(mast, 'mast-relay')).toBe(true);
    expect(textOf(mast, 'storm/antennas')).not.toMatch(/Mast relay/);
    expect(textOf(mast, 'eyes/charge')).not.toMatch(/R11|R12/);
  });
  it('and the preamplifier is read indoors, when what feeds it is on', () => {
    const step = stepsOf(mast).find(({ id }) => id === 'unit/preamplifier/volts');
    expect(step?.where).toBe('Receiving arrestor · antenna');
    expect(step?.expected?.value).toBeGreaterThan(11);
    expect(step?.warning).toBeNull();
    expect(textOf(mast, 'unit/preamplifier/plug')).toBe('');
  });
});

it('where no meter shows what a shaken lead does, nobody is told to watch it', () => {
  const bare = drawStation({
    units: { supply: 'switch-mode-supply', rig: 'transceiver-100w', load: 'dummy-load-100w' },
    cables: ['supply.out > rig.power', 'rig.antenna > load.input'],
  });
  expect(stepsOf(bare).length).toBeGreaterThan(5);
  expect(textOf(bare, 'eyes/shake')).toBe('');
});

describe('what the drawing itself would not stand while it sends', () => {
  const radio = (load: string, supply = 'switch-mode-supply') =>
    drawStation({
      units: { supply, rig: 'transceiver-100w', meter: 'swr-meter-200w', load },
      cables: ['supply.out > rig.power', 'rig.antenna > meter.transmitter', 'meter.antenna > load.input'],
    });
  const sending = (station: Station) => stepsOf(station).filter(({ id }) => id.startsWith('dummy/'));

  it('is a step that says why not to press, and nothing after it', () => {
    const [stop, ...more] = sending(radio('dummy-load-5w'));
    expect(stop?.text).toMatch(
      /^Do not press .*: as drawn: load gets 9\d(\.\d)? W and stands 10(\.0)? W\. Put that right/,
    );
    expect(more).toEqual([]);
  });
  it('a supply that gives way is such a reason: no reading of a starved unit is expected', () => {
    const [stop, ...more] = sending(sample('hut-amplifier')).filter(({ id }) => !id.endsWith('/rest'));
    expect(stop?.text).toMatch(/Transmitter gets 3\.\d+ V and works on 11 to 15 V \(and \d more\)/);
    expect(more).toEqual([]);
  });
  it('a radio that does not even wake is told of, not a missing dummy load', () => {
    expect(sending(radio('dummy-load-100w', 'bench-supply')).map(({ text }) => text)).toEqual([
      expect.stringMatching(/^As drawn nothing gets as far as sending/),
    ]);
  });
  it('is nothing where all is strong enough: it is held and read', () => {
    expect(sending(radio('dummy-load-100w')).map(({ id }) => id)).toContain('dummy/rig/hold');
  });
  it('is not that a preamplifier loses its power before it sends', () => {
    const ids = stepsOf(sample('two-metre-mast')).map(({ id }) => id);
    expect(ids.filter((id) => id.endsWith('/stop'))).toEqual([]);
    expect(ids.filter((id) => id.endsWith('/hold')).length).toBeGreaterThan(0);
  });
});
