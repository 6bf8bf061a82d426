import type { Hookup, Station } from '../../core/station/schema/schema.ts';
import { survey } from '../../core/survey.ts';
import { isHarm } from '../../core/whatif/acts/harm.ts';
import { congruentialShares } from '../shares.ts';
import { type CableDrawing, drawStation } from '../stations/draw.ts';

interface Choice {
  /** Whether something is there, for a share of the stations. */
  has(share?: number): boolean;
  of<T>(...all: readonly [T, ...T[]]): T;
}

/**
 * Stations of a transceiver with power, keying, sound, and a row of boxes to its antenna, each with what chance put
 * there, in which nothing is wrong; always the same ones for the same number.
 */
export function* drawAtRandom(count: number, seed = 1): Generator<Station> {
  const random = congruentialShares(seed);
  const choice: Choice = {
    has: (share = 0.5) => random() < share,
    of: (...all) => all[Math.floor(random() * all.length)] ?? all[0],
  };
  for (let drawn = 0; drawn < count; ) {
    const station = transceiverStation(choice);
    if (survey(station).findings.some(isHarm)) continue;
    drawn += 1;
    yield station;
  }
}

function transceiverStation(choice: Choice): Station {
  const units: Record<string, string> = {};
  const cables: CableDrawing[] = [];
  const hookups: Hookup[] = [];
  const isSmall = choice.has(0.3);
  units.radio = isSmall ? 'transceiver-qrp-10w' : 'transceiver-100w';
  const outlets = power(choice, isSmall, units, cables);
  keying(choice, units, cables);
  sound(choice, units, cables, outlets);
  antennaWay(choice, { isSmall, units, cables, hookups, outlets });
  const plan = { frequencyHz: choice.of(7_030_000, 14_060_000), mode: 'keying' as const };
  return drawStation({ units, cables, hookups, plan });
}

/** Gives the outlets that are left for other things. */
function power(choice: Choice, isSmall: boolean, units: Record<string, string>, cables: CableDrawing[]): string[] {
  units.supply = isSmall
    ? choice.of('bench-supply', 'lifepo4-battery', 'linear-supply-20a')
    : choice.of('switch-mode-supply', 'linear-supply-20a', 'linear-supply-35a-protected');
  const from = choice.has(0.7) ? 'strip' : 'supply';
  const fuse = (amps: number) => ({ fuse: { amps, family: 'blade' as const, atM: 0.1 } });
  if (from === 'supply') {
    cables.push([
      'supply.out > radio.power',
      { kind: isSmall ? 'lead-awg-16' : 'lead-awg-10', lengthM: 1, ...fuse(isSmall ? 5 : 25) },
    ]);
    return [];
  }
  units.strip = 'fused-strip';
  cables.push([
    'supply.out > strip.input',
    { kind: isSmall ? 'lead-awg-14' : 'lead-awg-10', lengthM: 0.8, ...fuse(isSmall ? 10 : 30) },
  ]);
  if (choice.has(0.8) && isSmall) cables.push(['strip.one > radio.power', { kind: 'lead-awg-16', lengthM: 1 }]);
  else
    cables.push([
      'supply.out > radio.power',
      { kind: isSmall ? 'lead-awg-16' : 'lead-awg-10', lengthM: 1, ...fuse(isSmall ? 5 : 25) },
    ]);
  return ['strip.two', 'strip.three', 'strip.four'];
}

function keying(choice: Choice, units: Record<string, string>, cables: CableDrawing[]) {
  units.key = choice.of('paddle', 'side-swiper', 'memory-keyer-usb', 'hand-microphone');
  if (units.key === 'hand-microphone') cables.push('key.plug > radio.microphone');
  else cables.push('key.out > radio.key');
  if (units.key === 'memory-keyer-usb') {
    units.paddle = 'paddle';
    cables.push('paddle.out > key.paddle');
  }
}

function sound(choice: Choice, units: Record<string, string>, cables: CableDrawing[], outlets: string[]) {
  if (units.radio !== 'transceiver-100w') return;
  const outlet = choice.has(0.5) ? outlets.shift() : undefined;
  if (outlet) {
    units.speaker = 'amplified-speaker';
    cables.push('radio.phones > speaker.input', [`${outlet} > speaker.power`, { kind: 'lead-awg-20', lengthM: 1 }]);
  } else if (choice.has()) {
    units.phones = 'headphones';
    cables.push('phones.plug > radio.phones');
  }
}

interface Way {
  isSmall: boolean;
  units: Record<string, string>;
  cables: CableDrawing[];
  hookups: Hookup[];
  outlets: string[];
}

function antennaWay(choice: Choice, { isSmall, units, cables, hookups, outlets }: Way) {
  let end = 'radio.antenna';
  const through = (id: string, kind: string, into: string, out: string) => {
    units[id] = kind;
    cables.push([`${end} > ${id}.${into}`, { kind: 'coax-rg-58', lengthM: choice.of(0.3, 0.5, 1) }]);
    end = `${id}.${out}`;
  };
  if (choice.has(0.4)) through('filter', 'low-pass-filter', 'transmitter', 'antenna');
  if (choice.has(0.6)) through('meter', isSmall ? 'swr-meter' : 'swr-meter-200w', 'transmitter', 'antenna');
  const isSwitched = choice.has(0.4);
  if (isSwitched) {
    units.load = isSmall ? 'dummy-load-100w' : 'dummy-load-1500w';
    hookups.push({ id: 'load', name: 'Dummy load' }, { id: 'air', name: 'On air' });
    cables.push([`${end} > load.input`, { kind: 'coax-rg-58', lengthM: 0.5, hookups: ['load'] }]);
  }
  const before = cables.length;
  const needsTuner = choice.has(0.6);
  const outlet = needsTuner && !isSmall ? outlets.shift() : undefined;
  if (outlet) {
    through('tuner', 'automatic-tuner', 'transmitter', 'antenna');
    cables.push([`${outlet} > tuner.power`, { kind: 'lead-awg-20', lengthM: 1 }]);
  } else if (needsTuner) through('tuner', isSmall ? 'qrp-tuner' : 'manual-tuner', 'transmitter', 'antenna');
  if (choice.has(0.3)) through('choke', 'common-mode-choke', 'station', 'antenna');
  if (choice.has(0.7)) {
    through('arrestor', 'arrestor', 'station', 'antenna');
    Object.assign(units, { bar: 'earth-bar', rod: 'earth-rod', mains: 'mains-earth' });
    cables.push('arrestor.earth > bar.one', 'bar.two > rod.clamp', 'bar.three > mains.bond');
  }
  units.antenna = needsTuner
    ? choice.of('wire-antenna', 'end-fed-wire')
    : choice.of('dipole', 'beam-three-element', 'vertical-multiband');
  cables.push([`${end} > antenna.feed`, { kind: 'coax-rg-213', lengthM: choice.of(5, 10, 20) }]);
  // The first lead of the way is moved between the load and the antenna.
  const [route, set] = cables[before] as [string, object];
  if (isSwitched) cables[before] = [route, { ...set, hookups: ['air'] }];
}
