import { logicLevels } from '../../../core/rules/keying/logic-levels.ts';
import type { ElementOf, UnitElement } from '../../../core/station/schema/unit-kind.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';

type End = Pick<ElementOf<'dataEnd'>, 'standard' | 'role'> & { standsV?: number };

const end = (set: End): UnitElement => ({ id: 'data', type: 'dataEnd', contact: 'jack.tip', ...set });

/** Two units on one data wire. */
const wire = (a: End, b: End, wiring?: [string, string][]) =>
  drawStation({
    units: {
      a: { made: made({ jack: ['data', 'mono-35-jack'] }, [end(a)]) },
      b: { made: made({ jack: ['data', 'mono-35-jack'] }, [end(b)]) },
    },
    cables: [
      [
        'a.jack > b.jack',
        {
          kind: 'key-lead',
          ...(wiring && { wiring: wiring.map(([x, y]) => ({ a: x, b: y })) }),
        },
      ],
    ],
  });

testRule(logicLevels, {
  silent: [
    {
      name: 'RS-232 to RS-232',
      station: wire({ standard: 'rs232', role: 'drives' }, { standard: 'rs232', role: 'listens' }),
    },
    {
      name: 'two on an open-collector bus',
      station: wire({ standard: 'openCollector', role: 'bus' }, { standard: 'openCollector', role: 'bus' }),
    },
    {
      name: '3.3 V into 5 V logic',
      station: wire({ standard: 'ttl3v3', role: 'drives' }, { standard: 'ttl5', role: 'listens' }),
    },
    {
      name: '5 V into a 3.3 V input that stands it',
      station: wire({ standard: 'ttl5', role: 'drives' }, { standard: 'ttl3v3', role: 'listens', standsV: 5.5 }),
    },
    { name: 'USB to USB', station: wire({ standard: 'usb', role: 'bus' }, { standard: 'usb', role: 'bus' }) },
    {
      name: 'two listeners',
      station: wire({ standard: 'ttl5', role: 'listens' }, { standard: 'ttl5', role: 'listens' }),
    },
  ],
  reported: [
    {
      name: 'transmit to transmit',
      station: wire({ standard: 'rs232', role: 'drives' }, { standard: 'rs232', role: 'drives' }),
      message: 'fight',
      severity: 'danger',
      at: { unit: 'b', port: 'jack' },
    },
    {
      name: 'RS-232 into 5 V logic',
      station: wire({ standard: 'rs232', role: 'drives' }, { standard: 'ttl5', role: 'listens' }),
      message: 'overdriven',
      severity: 'danger',
      at: { unit: 'b', port: 'jack' },
      values: { volts: 12, limit: 5.5 },
    },
    {
      name: '5 V into 3.3 V logic',
      station: wire({ standard: 'ttl5', role: 'drives' }, { standard: 'ttl3v3', role: 'listens' }),
      message: 'overdriven',
      severity: 'danger',
      at: { unit: 'b', port: 'jack' },
      values: { volts: 5, limit: 3.6 },
    },
    {
      name: '5 V logic into RS-232',
      station: wire({ standard: 'ttl5', role: 'drives' }, { standard: 'rs232', role: 'listens' }),
      message: 'unread',
      severity: 'fault',
      at: { unit: 'b', port: 'jack' },
      values: { low: 0, high: 5, limit: -3 },
    },
    {
      name: 'a push-pull output on an open-collector bus',
      station: wire({ standard: 'ttl5', role: 'drives' }, { standard: 'openCollector', role: 'bus' }),
      message: 'pushed',
      severity: 'fault',
      at: { unit: 'b', port: 'jack' },
    },
    {
      name: 'USB into a serial port',
      station: wire({ standard: 'usb', role: 'bus' }, { standard: 'ttl5', role: 'listens' }),
      message: 'different',
      severity: 'fault',
      at: { unit: 'b', port: 'jack' },
    },
    {
      name: 'no ground wire',
      station: wire({ standard: 'rs232', role: 'drives' }, { standard: 'rs232', role: 'listens' }, [['tip', 'tip']]),
      message: 'unreferenced',
      severity: 'fault',
      at: { unit: 'b', port: 'jack' },
    },
    {
      name: 'PTT on a serial port’s flow control line',
      station: drawStation({
        units: {
          a: { made: made({ jack: ['data', 'mono-35-jack'] }, [end({ standard: 'ttl5', role: 'drives' })]) },
          b: {
            made: made({ jack: ['control', 'mono-35-jack'] }, [], {
              actors: [
                {
                  id: 'rf',
                  label: 'RF',
                  feels: { type: 'voltageAbove', contact: 'jack.tip', volts: 3 },
                  operateMs: 1,
                  releaseMs: 1,
                  does: 'sends',
                },
              ],
            }),
          },
        },
        cables: ['a.jack > b.jack'],
      }),
      message: 'double',
      severity: 'doubt',
      at: { unit: 'b' },
    },
  ],
});
