import { screenOpen } from '../../../core/rules/drawing/screen-open.ts';
import type { Cable } from '../../../core/station/schema/schema.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const box = { made: made({ jack: ['audio', 'stereo-35-jack'] }, []) };
const lead = (set: Partial<Cable>) =>
  drawStation({ units: { a: box, b: box }, cables: [['a.jack > b.jack', { kind: 'stereo-lead', ...set }]] });
const cores = [
  { a: 'tip', b: 'tip' },
  { a: 'ring', b: 'ring' },
];

// Common practice: at the radio's end at least.
testRule(screenOpen, {
  silent: [
    { name: 'the usual wiring', station: lead({}) },
    { name: 'its screen at both ends', station: lead({ wiring: [...cores, { a: 'sleeve', b: 'sleeve' }] }) },
    { name: 'its screen at one end', station: lead({ wiring: cores, screenAt: 'b' }) },
  ],
  reported: [
    {
      name: 'its screen nowhere',
      station: lead({ wiring: cores }),
      message: 'open',
      severity: 'doubt',
      at: { cable: 'a1' },
    },
  ],
});
