import type { UnitElement } from '../../../core/station/schema/unit-kind.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';

export type Figures = Record<string, unknown>;

export const source = (set: Figures): UnitElement =>
  ({ id: 'signal', type: 'audioSource', contact: 'out.tip', volts: 1, ohms: 100, ...set }) as UnitElement;
export const sink = (set: Figures): UnitElement =>
  ({ id: 'input', type: 'audioLoad', contact: 'in.tip', ohms: 10_000, ...set }) as UnitElement;

/** An output, a lead and an input. */
export const line = (from: Figures, to: Figures, more: UnitElement[] = []) =>
  drawStation({
    units: {
      a: { made: made({ out: ['audio', 'mono-35-jack'] }, [source(from)]) },
      b: { made: made({ in: ['audio', 'mono-35-jack'] }, [sink(to), ...more]) },
    },
    cables: ['a.out > b.in'],
  });
