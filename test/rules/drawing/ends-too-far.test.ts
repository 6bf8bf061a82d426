import { endsTooFar } from '../../../core/rules/drawing/ends-too-far.ts';
import { edit } from '../../../core/station/edit.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

/** Two units 500 units of length apart (3, 4, 5), a cable of so many metres. */
function apart(lengthM: number, metresPerUnit?: number) {
  const station = drawStation({
    units: { supply: 'bench-supply', strip: 'fused-strip' },
    cables: [['supply.out > strip.input', { lengthM }]],
  });
  const moved = edit(station, { type: 'moveUnits', moves: [{ id: 'strip', position: { x: 300, y: 400 } }] });
  return metresPerUnit === undefined
    ? moved
    : edit(moved, { type: 'describe', set: { settings: { ...moved.settings, metresPerUnit } } });
}

testRule(endsTooFar, {
  silent: [
    { name: 'a drawing that is not to scale', station: apart(0.1) },
    { name: '1.2 m for 1 m', station: apart(1.2, 0.002) },
  ],
  reported: [
    {
      name: '0.6 m for 1 m',
      station: apart(0.6, 0.002),
      message: 'short',
      severity: 'doubt',
      at: { cable: 'd1' },
      values: { length: 0.6, distance: 1 },
    },
  ],
});
