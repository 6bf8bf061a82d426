import { describe, expect, it } from 'vitest';
import { isOff } from '../../../core/reports/power-up/judge-reading.ts';
import { causesOf } from '../../../core/reports/power-up/off/causes-of.ts';
import { openOhms } from '../../../core/reports/power-up/sheet.ts';
import { edit } from '../../../core/station/edit.ts';
import type { Cable, Station } from '../../../core/station/schema/schema.ts';
import { listActs } from '../../../core/whatif/acts/list-acts.ts';
import { sample } from '../../stations/samples.ts';
import { draftOf } from './power-up-sheet.ts';
import { readingsOf, stepsToRead, withOwn } from './read-steps.ts';

const hut = sample('hut');
const draft = draftOf(hut);
const steps = stepsToRead(hut);

const setCable = (id: string, set: Partial<Omit<Cable, 'id'>>): Station => edit(hut, { type: 'updateCable', id, set });

/** The hut with what a hand could do wrong done to it. */
function exchanged(words: string): Station {
  const act = listActs(hut).find((one) => one.words === words);
  if (!act) throw new Error(`no act ${words}`);
  return edit(hut, act.change);
}

/** The hut with an element of one of its kinds gone. */
function withoutElement(kind: string, element: string): Station {
  const whole = hut.kinds[kind];
  if (!whole) throw new Error(`no kind ${kind}`);
  return {
    ...hut,
    kinds: { ...hut.kinds, [kind]: { ...whole, elements: whole.elements.filter((e) => e.id !== element) } },
  };
}

/** Worked through from the first step on until a reading is off; what is named there, and the steps that were right. */
function firstOff({ built, skip = () => false, reads = {} }: Planted) {
  const read = new Map([...readingsOf(built), ...Object.entries(reads)]);
  const right: { step: string; value: number }[] = [];
  for (const { id, expected } of steps) {
    const value = read.get(id);
    if (value === undefined || skip(id)) continue;
    if (isOff(expected, value)) return { step: id, causes: causesOf(draft, { step: id, value }, right) };
    right.push({ step: id, value });
  }
  return { step: '', causes: [] };
}

const isUnpowered = (step: string) => /^(lead|line|holder|rail|feeder)\//.test(step);

interface Planted {
  fault: string;
  built: Station;
  /** Steps that are left out, as people do. */
  skip?: (step: string) => boolean;
  /** What a meter shows where the sheet of the station as built has no such step, or words it by other contacts. */
  reads?: Record<string, number>;
  step: string;
  cause: RegExp;
  /** Where something else gives the same readings up to there, it need not be named first. */
  among?: true;
}

const planted: Planted[] = [
  {
    fault: 'the fuse of the receiver’s outlet is open',
    built: withoutElement('fused-strip', 'fuse-three'),
    reads: { 'outlet/strip.three': 0 },
    step: 'outlet/strip.three',
    cause: /^The fuse of Fused strip · 3 opens$/,
  },
  {
    fault: 'the receiver’s lead is centre plus',
    built: setCable('d4', {
      wiring: [
        { a: 'plus', b: 'centre' },
        { a: 'minus', b: 'shell' },
      ],
    }),
    // From plus to the shell, as the sheet asks, there is no way.
    reads: { 'lead/d4/through': openOhms },
    step: 'lead/d4/through',
    among: true,
    cause: /^Plus and minus of D4 are swapped$/,
  },
  {
    fault: 'the same, found at the plug by who has not measured the leads',
    built: setCable('d4', {
      wiring: [
        { a: 'plus', b: 'centre' },
        { a: 'minus', b: 'shell' },
      ],
    }),
    skip: isUnpowered,
    // The sheet of a drawing like that stops before this reading.
    reads: { 'unit/receiver/plug': -13.8 },
    step: 'unit/receiver/plug',
    cause: /^Plus and minus of D4 are swapped$/,
  },
  {
    fault: 'plus of the transmitter’s lead is broken',
    built: setCable('d2', { wiring: [{ a: 'minus', b: 'shell' }] }),
    skip: isUnpowered,
    reads: { 'unit/transmitter/plug': 0 },
    step: 'unit/transmitter/plug',
    cause: /^Plus of D2 opens$/,
  },
  {
    fault: 'the supply is set to 12.6 V',
    built: withOwn(hut, 'supply', { 'output.volts': 12.6 }),
    step: 'supply/supply.output/volts',
    cause: /^Bench supply’s voltage is 12\.60 V, not 13\.80 V/,
  },
  {
    fault: 'the receiver draws 110 mA',
    built: withOwn(hut, 'receiver', { 'draw.amount': 0.11 }),
    step: 'unit/receiver/amps',
    cause: /^Receiver’s draw in receive is 110 mA, not 85\.0 mA/,
  },
  {
    // 36 m of AWG 20 have 1.2 Ω in each core; braids help out the minus core, nothing the plus core.
    fault: '1.2 Ω in the transmitter’s lead',
    built: setCable('d2', { lengthM: 0.8 + 1.2 / (10.15 / 304.8) }),
    skip: isUnpowered,
    step: 'dummy/transmitter/transmitter.draw/volts',
    cause: /of D2 has a bad joint, of about/,
  },
  {
    fault: 'two coax leads are exchanged, and the tuner is not in the line',
    built: exchanged('R6 and R7 exchanged: R6 in Arrestor · antenna, R7 in Tuner · antenna'),
    // The sheet of a drawing like that stops before this reading; its survey says an SWR of 4.3.
    reads: { 'antenna/air/transmitter/meter.transmitter/swr': 4.3 },
    step: 'antenna/air/transmitter/meter.transmitter/swr',
    among: true,
    cause: /^R\d and R\d exchanged/,
  },
];

describe('a planted fault', () => {
  it.each(planted)('$fault: shows at $step, and is named', (fault) => {
    const found = firstOff(fault);
    expect(found.step).toBe(fault.step);
    const named = found.causes.findIndex((c) => fault.cause.test(c.text));
    expect(fault.among ? named >= 0 : named === 0, JSON.stringify(found.causes)).toBe(true);
    expect(found.causes[named]?.fits).toBe(true);
  });
});

describe('single readings', () => {
  it.each([
    ['the receiver is not muted', 'lines/k4/pressed', 5, /^Core of K4 opens/],
    ['the line is down with nobody at the paddle', 'line/k2/ohms', 1.5, /^Keyer \(Keying\) stays on/],
    ['the dummy load’s coax is shorted', 'feeder/r4', 0.1, /^R4 is shorted/],
    ['its core is broken', 'feeder/r4', 1e9, /^Centre of R4 opens/],
    ['it is not plugged in while sending', 'dummy/transmitter/meter.transmitter/swr', 40, /^Centre of R4 opens/],
    ['the paddle is stuck', 'line/k1/ohms', 0.1, /^(Paddle is held down|K1 is shorted)/],
  ])('%s: %s reads %s', (_, step, value, cause) => expect(causesOf(draft, { step, value })[0]?.text).toMatch(cause));

  it('a reading that is right has no cause', () =>
    expect(causesOf(draft, { step: 'unit/receiver/volts', value: 13.75 })).toEqual([]));
  it('a step that is not on the sheet has none', () =>
    expect(causesOf(draft, { step: 'no/such', value: 1 })).toEqual([]));
  it('what would have shown at an earlier reading that was right comes later', () => {
    const dead = { step: 'unit/receiver/volts', value: 0 };
    expect(causesOf(draft, dead).map((c) => c.text)).toContain('The fuse of Fused strip · 3 opens');
    const right = [{ step: 'outlet/strip.three', value: 13.8 }];
    const told = causesOf(draft, dead, right).map((c) => c.text);
    expect(told[0]).toBe('Plus of D4 opens');
    expect(told.join()).not.toMatch(/fuse/);
  });
  it('at most three are told, each with its place', () => {
    const causes = causesOf(draft, { step: 'unit/receiver/volts', value: 0 });
    expect(causes).toHaveLength(3);
    for (const { at } of causes) expect('cable' in at || 'unit' in at).toBe(true);
  });
  it('where nothing gives the very reading, what points the same way is said to do so', () => {
    const causes = causesOf(draft, { step: 'outlet/strip.three', value: 20 });
    for (const { fits } of causes) expect(fits).toBe(false);
  });
});
