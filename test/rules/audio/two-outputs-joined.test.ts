import { twoOutputsJoined } from '../../../core/rules/audio/two-outputs-joined.ts';
import type { UnitElement } from '../../../core/station/schema/unit-kind.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { type Figures, line, source } from './line.ts';

const box = (elements: UnitElement[], isolated?: string[]) =>
  made({ one: ['audio', 'mono-35-jack'], two: ['audio', 'mono-35-jack'] }, elements, isolated && { isolated });
const joined = (left: Figures, right: Figures, joint: number) =>
  drawStation({
    units: {
      left: { made: made({ out: ['audio', 'mono-35-jack'] }, [source(left)]) },
      right: { made: made({ out: ['audio', 'mono-35-jack'] }, [source(right)]) },
      joint: { made: box([{ id: 'joint', type: 'conductor', from: 'one.tip', to: 'two.tip', ohms: joint }]) },
    },
    cables: ['left.out > joint.one', 'right.out > joint.two'],
  });
const bridge = (isolated: string[], reference: string) =>
  drawStation({
    units: {
      amplifier: {
        made: box(
          [{ id: 'signal', type: 'audioSource', contact: 'one.tip', reference, volts: 4, ohms: 0.1, leastOhms: 4 }],
          isolated,
        ),
      },
    },
  });

testRule(twoOutputsJoined, {
  silent: [
    { name: 'through 470 Ω', station: joined({}, {}, 470) },
    { name: 'a bridged output with neither side on metal', station: bridge(['one.sleeve'], 'one.sleeve') },
    { name: 'one output', station: line({}, {}) },
  ],
  reported: [
    {
      name: 'two line outputs in a Y lead',
      station: joined({}, {}, 0.01),
      message: 'joined',
      severity: 'doubt',
      at: { unit: 'right', port: 'out' },
    },
    {
      name: 'a loudspeaker output among them',
      station: joined({ leastOhms: 8 }, {}, 0.01),
      message: 'joined',
      severity: 'danger',
      at: { unit: 'right', port: 'out' },
    },
    {
      name: 'a bridged output with one side on metal',
      station: bridge([], 'one.sleeve'),
      message: 'bridged',
      severity: 'danger',
      at: { unit: 'amplifier', port: 'one' },
    },
  ],
});
