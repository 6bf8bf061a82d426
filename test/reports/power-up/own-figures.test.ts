import { describe, expect, it } from 'vitest';
import { figureOfReading, takeAsFigure } from '../../../core/reports/power-up/own-figures.ts';
import { changeName, edit } from '../../../core/station/edit.ts';
import { recordChange, startHistory, undo } from '../../../core/station/history.ts';
import { sample } from '../../stations/samples.ts';
import { stepsToRead } from './read-steps.ts';

const hut = sample('hut');
const stepIn = (station: typeof hut, id: string) => {
  const step = stepsToRead(station).find((s) => s.id === id);
  if (!step) throw new Error(`no step ${id}`);
  return step;
};

describe('a reading becomes the unit’s own figure', () => {
  it.each([
    ['supply/supply.output/volts', 13.65, 'supply', 'output.volts', 13.65],
    ['unit/receiver/amps', 0.097, 'receiver', 'draw.amount', 0.097],
    // 0.126 A with the receiver's 85 mA and the changeover's nothing: the transmitter draws 41 mA.
    ['unit/transmitter/amps', 0.126, 'transmitter', 'draw.amount', 0.041],
    // Half the power is 3 dB less.
    ['dummy/transmitter/meter.transmitter/watts', Number.NaN, 'transmitter', 'output.dbm', 34.8 - 10 * Math.log10(2)],
  ])('%s', (id, value, unit, key, own) => {
    const step = stepIn(hut, id);
    const read = Number.isNaN(value) ? (step.expected.value ?? 0) / 2 : value;
    const change = takeAsFigure(hut, step, read);
    expect(change && changeName(change)).toBe('Take a reading as own figure');
    const after = edit(hut, change as NonNullable<typeof change>);
    expect(after.units.find((u) => u.id === unit)?.overrides?.[key]).toBeCloseTo(own, 4);
    // The sheet then expects what was read.
    expect(stepIn(after, id).expected.value).toBeCloseTo(read, 4);
  });
  it('sending: what the supply gives then is put down to the transmitter', () => {
    const step = stepIn(hut, 'dummy/transmitter/supply.output/amps');
    const change = takeAsFigure(hut, step, 0.9);
    const after = edit(hut, change as NonNullable<typeof change>);
    expect(stepIn(after, step.id).expected.value).toBeCloseTo(0.9, 3);
  });
  it('is one step, and undone as one', () => {
    const change = takeAsFigure(hut, stepIn(hut, 'supply/supply.output/volts'), 13.6);
    const history = recordChange(startHistory(hut), change as NonNullable<typeof change>);
    expect(history.past).toHaveLength(1);
    expect(undo(history).station).toBe(hut);
  });
  it('keeps the other own figures of the unit', () => {
    const first = edit(hut, takeAsFigure(hut, stepIn(hut, 'unit/transmitter/amps'), 0.125) as never);
    const both = edit(first, takeAsFigure(first, stepIn(first, 'dummy/transmitter/supply.output/amps'), 0.8) as never);
    expect(Object.keys(both.units.find((u) => u.id === 'transmitter')?.overrides ?? {})).toHaveLength(2);
  });
  it('a draw of less than nothing is no figure', () => {
    expect(figureOfReading(stepIn(hut, 'unit/transmitter/amps'), 0.02)).toBeNull();
    expect(takeAsFigure(hut, stepIn(hut, 'unit/transmitter/amps'), 0.02)).toBeNull();
  });
  it('volts at a load are nobody’s figure', () =>
    expect(figureOfReading(stepIn(hut, 'unit/receiver/volts'), 13)).toBeNull());
});
