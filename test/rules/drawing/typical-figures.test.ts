import { typicalFigures } from '../../../core/rules/drawing/typical-figures.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

/** A key of a kind whose figures are from here. */
function withSource(source: string): Station {
  const station = drawStation({ units: { key: 'straight-key' } });
  const kinds = Object.entries(station.kinds).map(([id, kind]) => [id, { ...kind, source }]);
  return { ...station, kinds: Object.fromEntries(kinds) };
}

testRule(typicalFigures, {
  silent: [
    { name: 'a kind of one’s own', station: withSource('own figures') },
    { name: 'nothing drawn', station: drawStation({ units: {} }) },
    {
      name: 'one confirmed, one with its own figures',
      station: drawStation({
        units: {
          supply: { kind: 'bench-supply', confirmed: true },
          tx: { kind: 'cw-transmitter-3w', overrides: { 'draw.amount': 0.04 } },
        },
      }),
    },
  ],
  reported: [
    {
      name: 'typical with a remark',
      station: withSource('Typical figures; resistance from memory'),
      message: 'one',
      severity: 'note',
      at: { unit: 'key' },
      values: { units: 'key', count: 1 },
    },
    {
      name: 'one of three',
      station: drawStation({
        units: {
          supply: { kind: 'bench-supply', confirmed: true },
          tx: 'cw-transmitter-3w',
          key: { kind: 'straight-key', confirmed: true },
        },
      }),
      message: 'one',
      severity: 'note',
      at: { unit: 'tx' },
      values: { units: 'tx', count: 1 },
    },
    {
      name: 'two of three, in the order of the drawing',
      station: drawStation({
        units: { key: 'straight-key', supply: { kind: 'bench-supply', confirmed: true }, tx: 'cw-transmitter-3w' },
        hookups: [
          { id: 'one', name: 'One' },
          { id: 'two', name: 'Two' },
        ],
      }),
      message: 'several',
      severity: 'note',
      at: { unit: 'key' },
      values: { units: 'key, tx', count: 2 },
      hookups: ['one', 'two'],
    },
  ],
});
