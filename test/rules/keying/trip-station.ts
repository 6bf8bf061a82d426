import type { Station } from '../../../core/station/schema/schema.ts';
import type { UnitElement } from '../../../core/station/schema/unit-kind.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';

const low = { type: 'voltageBelow', contact: 'line.tip', volts: 1 } as const;
const bias: UnitElement = { id: 'bias', type: 'pullUp', contact: 'line.tip', volts: 5, ohms: 4700 };

/** A foot on two lines, an amplifier, and a protection that opens the amplifier’s or the transmitter’s line above so many dBm. */
export function tripped(opens: 'amp' | 'tx', dbm = 60): Station {
  const other = opens === 'amp' ? 'tx' : 'amp';
  const pair = (jack: string): UnitElement => ({
    id: jack,
    type: 'contactPair',
    from: `${jack}.tip`,
    to: `${jack}.sleeve`,
    device: 'relay',
    onOhms: 0.1,
    maxVolts: 50,
    maxAmps: 1,
    when: { on: ['foot'] },
  });
  return drawStation({
    units: {
      foot: {
        made: made({ one: ['control', 'mono-35-jack'], two: ['control', 'mono-35-jack'] }, [pair('one'), pair('two')], {
          isolated: 'all',
          actors: [
            {
              id: 'foot',
              label: 'Foot',
              feels: { type: 'operator', label: 'Press' },
              operateMs: 0,
              releaseMs: 0,
              unpowered: true,
              does: 'keys',
            },
          ],
        }),
      },
      tx: {
        made: made(
          { line: ['control', 'mono-35-jack'], antenna: ['rf', 'uhf-jack'] },
          [bias, { id: 'output', type: 'rfSource', port: 'antenna', dbm: 44, when: { on: ['rf'] } }],
          { actors: [{ id: 'rf', label: 'RF', feels: low, operateMs: 30, releaseMs: 2, does: 'sends' }] },
        ),
      },
      amp: {
        made: made(
          { line: ['control', 'mono-35-jack'], input: ['rf', 'uhf-jack'], output: ['rf', 'uhf-jack'] },
          [
            bias,
            {
              id: 'past',
              type: 'rfPath',
              a: 'input',
              b: 'output',
              lossDb: 0.2,
              isolationDb: 40,
              when: { off: ['relay'] },
            },
            {
              id: 'over',
              type: 'rfPath',
              a: 'input',
              b: 'output',
              lossDb: 0.2,
              isolationDb: 40,
              when: { on: ['relay'] },
            },
          ],
          { actors: [{ id: 'relay', label: 'Relay', feels: low, operateMs: 15, releaseMs: 10, does: 'changesOver' }] },
        ),
      },
      guard: {
        made: made(
          {
            in: ['control', 'mono-35-jack'],
            out: ['control', 'mono-35-jack'],
            near: ['rf', 'uhf-jack'],
            far: ['rf', 'uhf-jack'],
          },
          [
            { id: 'line', type: 'rfPath', a: 'near', b: 'far', lossDb: 0.05 },
            {
              id: 'trip',
              type: 'contactPair',
              from: 'in.tip',
              to: 'out.tip',
              device: 'relay',
              onOhms: 0.1,
              maxVolts: 50,
              maxAmps: 1,
              when: { off: ['over'] },
            },
          ],
          {
            actors: [
              {
                id: 'over',
                label: 'Trip',
                feels: { type: 'rfAbove', port: 'far', dbm },
                operateMs: 5,
                releaseMs: 1000,
              },
            ],
          },
        ),
      },
      load: 'dummy-load-100w',
    },
    cables: [
      'foot.one > guard.in',
      `guard.out > ${opens}.line`,
      `foot.two > ${other}.line`,
      'tx.antenna > amp.input',
      'amp.output > guard.near',
      'guard.far > load.input',
    ],
    plan: { frequencyHz: 14_060_000, mode: 'voice', duty: 0.2 },
  });
}
