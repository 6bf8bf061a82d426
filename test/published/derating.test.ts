import { fuseOhms, hotFuseOhms } from '../../core/catalog/wire/fuses.ts';
import {
  fuseUpperAmps,
  resistanceAt,
  wireLimitAmps,
  wireOhmsPerM,
  wireUpperAmps,
} from '../../core/catalog/wire/wire.ts';
import type { Plan } from '../../core/station/schema/schema.ts';
import { averageOf } from '../../core/trial/power/battery-life.ts';
import { checkRows } from './rows.ts';

const faa = 'FAA AC 43.13-1B, paragraph 11-66';
const coastGuard = '33 CFR 183.425 table 5 and 183.455(c)';

checkRows('copper in the warm', [
  {
    name: '75 °C over 20 °C',
    given: resistanceAt(1, 75),
    printed: '1.21611',
    source: `${faa}: 234.5 °C law (calculation)`,
  },
  // IEC 60228 prints 0.893 for 50 °C: it rounds copper’s 0.00393 per kelvin up to 0.004, which this law does not.
  {
    name: 'AWG 12 at 60 °C, Ω/km',
    given: wireOhmsPerM({ awg: 12 }, 60) * 1000,
    printed: '6.0297',
    tolerance: 6e-4,
    source: 'calculation from NBS Handbook 100 and the 234.5 °C law',
  },
  {
    name: 'a run of 15.5 ft at 20 °C is as good as this at 182 °C, ft',
    given: 15.5 / resistanceAt(1, 182),
    printed: '9.47',
    source: `${faa}d(4), example 2`,
  },
]);

const warm = { awg: 14, insulationCelsius: 105 };
checkRows('what wires and fuses may carry', [
  { name: '14 AWG, 105 °C', given: wireUpperAmps(warm)?.amps ?? 0, printed: '35', source: coastGuard },
  {
    name: 'largest fuse before it',
    given: fuseUpperAmps(warm)?.amps ?? 0,
    printed: '52.5',
    source: coastGuard,
  },
  {
    name: '10 AWG, 60 °C',
    given: wireUpperAmps({ awg: 10, insulationCelsius: 60 })?.amps ?? 0,
    printed: '40',
    source: coastGuard,
  },
  {
    name: '10 AWG, 105 °C',
    given: wireUpperAmps({ awg: 10, insulationCelsius: 105 })?.amps ?? 0,
    printed: '60',
    source: coastGuard,
  },
  {
    name: '8 AWG, 75 °C',
    given: wireUpperAmps({ awg: 8, insulationCelsius: 75 })?.amps ?? 0,
    printed: '65',
    source: coastGuard,
  },
  {
    name: 'an 18 A cord as one of five loaded conductors',
    given: wireLimitAmps({ awg: 14, ampacityA: 18 }, { bundled: 5 })?.amps ?? 0,
    printed: '14.4',
    source: 'NEC 400.5: 80 % for four to six conductors',
  },
]);

const sheet = 'blade fuse data sheets (10 A and 40 A)';
checkRows('a fuse, cold and hot, mV', [
  { name: '10 A at 0.1 A', given: fuseOhms(10, 'blade') * 100, printed: '0.77', source: sheet },
  {
    name: '10 A at 10 A',
    given: hotFuseOhms(10, 10, 'blade') * 10_000,
    printed: '109',
    tolerance: 10.9,
    source: sheet,
  },
  { name: '40 A, cold, at 40 A', given: fuseOhms(40, 'blade') * 40_000, printed: '57.6', source: sheet },
  { name: '40 A at 40 A', given: hotFuseOhms(40, 40, 'blade') * 40_000, printed: '96', tolerance: 9.6, source: sheet },
  {
    name: '2 A quick glass, cold, at 2 A',
    given: fuseOhms(2, 'glass-fast') * 2000,
    printed: '83.2',
    source: '5×20 F data sheet, IEC 60127-2 sheet 2 (calculation)',
  },
]);

const plan = (sendShare: number, duty: number): Plan => ({
  frequencyHz: 14e6,
  mode: 'keying',
  speedWpm: 20,
  duty,
  sendShare,
  hoursPerDay: 2,
});
checkRows('average current and power', [
  {
    name: '22 A sending, 2 A receiving, half and half',
    given: averageOf(plan(0.5, 1), 2, 22),
    printed: '12',
    source: 'a club’s page on batteries in the field',
  },
  {
    name: '1500 W of speech at 20 %, 20 of 30 minutes',
    given: averageOf(plan(20 / 30, 0.2), 0, 1500),
    printed: '200',
    source: 'FCC OET Bulletin 65 Supplement B, table 2 and its example',
  },
  {
    name: '1500 W of Morse at 40 %, 20 of 30 minutes',
    given: averageOf(plan(20 / 30, 0.4), 0, 1500),
    printed: '400',
    source: 'FCC OET Bulletin 65 Supplement B, table 2 and its example',
  },
]);
