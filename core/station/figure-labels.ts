import type { UnitElement } from './schema/unit-element.ts';

type Field = readonly [field: string, label: string];

/** By type of element, the figures that the user may replace by their own and what each is called, as they are asked for. */
export const figureLabels: Record<UnitElement['type'], readonly Field[]> = {
  conductor: [
    ['fuseAmps', 'Fuse'],
    ['ohms', 'Resistance'],
  ],
  supply: [
    ['volts', 'Voltage'],
    ['maxVolts', 'Highest it can be'],
    ['amps', 'Continuous'],
    ['peakAmps', 'Peak'],
    ['sourceOhms', 'Source'],
  ],
  battery: [
    ['ampHours', 'Capacity, Ah'],
    ['charge', 'Charge'],
    ['maxVolts', 'Highest on charge'],
    ['cutOffV', 'Cut off at'],
    ['amps', 'Continuous'],
    ['peakAmps', 'Peak'],
    ['sourceOhms', 'Source'],
  ],
  diode: [
    ['volts', 'Drop'],
    ['atAmps', 'At'],
    ['maxAmps', 'Stands'],
  ],
  converter: [
    ['minV', 'Works from'],
    ['maxV', 'Works up to'],
    ['absMaxV', 'Stands up to'],
    ['outVolts', 'Gives'],
    ['outAmps', 'Up to'],
    ['efficiency', 'Efficiency'],
    ['idleWatts', 'Idle'],
  ],
  load: [
    ['minV', 'Works from'],
    ['maxV', 'Works up to'],
    ['absMaxV', 'Stands up to'],
    ['absMinV', 'Stands down to'],
    ['dropOutV', 'Off below'],
  ],
  pullUp: [
    ['volts', 'Voltage'],
    ['ohms', 'Through'],
  ],
  contactPair: [
    ['onOhms', 'Closed'],
    ['maxVolts', 'Stands'],
    ['maxAmps', 'Switches'],
  ],
  rfPath: [
    ['lossDb', 'Loss'],
    ['isolationDb', 'Isolation'],
    ['saturationDbm', 'Most it gives'],
    ['maxWatts', 'Stands'],
  ],
  rfSource: [
    ['dbm', 'Power'],
    ['maxDbm', 'Most it can make'],
    ['minDbm', 'Turns down to'],
    ['harmonicsDbc', 'Harmonics'],
  ],
  rfLoad: [
    ['ohms', 'Resistance'],
    ['watts', 'Stands'],
    ['shortWatts', 'For a short time'],
    ['damageDbm', 'Damaged from'],
    ['overloadDbm', 'Overloaded from'],
    ['gainDbi', 'Gain'],
  ],
  matcher: [
    ['minOhms', 'Matches from'],
    ['maxOhms', 'Matches up to'],
    ['lossDb', 'Loss'],
    ['maxWatts', 'Stands'],
  ],
  audioSource: [
    ['volts', 'Level'],
    ['ohms', 'Source'],
    ['leastOhms', 'Drives at least'],
    ['maxDcVolts', 'Stands, DC'],
  ],
  audioLoad: [
    ['ohms', 'Resistance'],
    ['fullVolts', 'Made for'],
    ['overloadVolts', 'Distorts from'],
    ['watts', 'Stands'],
    ['maxDcVolts', 'Stands, DC'],
  ],
  dataEnd: [['standsV', 'Stands']],
};

/** Fields of elements that are no such figures, or are called the same whatever has them. */
const labels: Record<string, string> = {
  from: 'From',
  to: 'To',
  plus: 'Plus at',
  minus: 'Minus at',
  outPlus: 'Output plus at',
  outMinus: 'Output minus at',
  anode: 'Anode at',
  cathode: 'Cathode at',
  contact: 'At',
  reference: 'Against',
  port: 'At port',
  a: 'From port',
  b: 'To port',
  law: 'Takes',
  amount: 'Draws',
  states: 'Draws otherwise',
  measures: 'A meter reads its current',
  fuseFamily: 'Fuse family',
  fuseBreakingAmps: 'Fuse breaks up to',
  faultVolts: 'If its regulator fails',
  beyond: 'Beyond the peak',
  chemistry: 'Chemistry',
  chargeAmps: 'Takes from a charger',
  peukert: 'Peukert’s exponent',
  reverseProtected: 'Stands swapped plus and minus',
  ohms: 'Resistance',
  emission: 'Emission coefficient',
  outOhms: 'Output resistance',
  device: 'Made as',
  oneWay: 'One way only',
  minHz: 'From frequency',
  maxHz: 'Up to frequency',
  scaleWatts: 'Meter’s full scale',
  rejection: 'Stop band',
  harmonicsDbc: 'Harmonics',
  plate: 'Valves',
  warmUpSeconds: 'Heats for, s',
  restingAmps: 'Plate at rest',
  drivenAmps: 'Plate at full drive',
  dcOhms: 'DC resistance',
  role: 'It is',
  reactance: 'Reactance, Ω',
  swr: 'SWR in 50 Ω',
  table: 'Over frequency',
  shortSeconds: 'Short time, s',
  minWatts: 'Tunes from',
  maxTuneWatts: 'May move up to',
  minDcVolts: 'Bias it needs',
  follows: 'Passes on',
  standard: 'Standard',
  fromHz: 'From',
  db: 'Takes',
  hz: 'At',
  load: 'What comes to',
  gainDb: 'Gain',
  when: 'In force',
};

/** What a field of an element is called where it stands by itself: `Works up to`. */
export const fieldLabel = (type: UnitElement['type'], name: string): string =>
  figureLabels[type].find(([field]) => field === name)?.[1] ?? labels[name] ?? name;

/** The units of figures whose limit knows only decibels. */
export const decibelUnits: Readonly<Record<string, string>> = { harmonicsDbc: 'dBc', gainDbi: 'dBi' };
