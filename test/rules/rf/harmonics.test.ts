import { harmonics } from '../../../core/rules/rf/harmonics.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { onAntenna } from './on-antenna.ts';

const filter = (db: number) =>
  made({ in: ['rf', 'uhf-jack'], out: ['rf', 'uhf-jack'] }, [
    { id: 'f', type: 'rfPath', a: 'in', b: 'out', lossDb: 0.3, rejection: [{ fromHz: 25_000_000, db }] },
  ]);
const at = (dbc: number) => ({ 'output.harmonicsDbc': dbc });

// 97.307(d): 43 dB below the mean power of the carrier.
testRule(harmonics, {
  silent: [
    { name: '−44 dBc', station: onAntenna({ rig: at(-44) }) },
    { name: '−30 dBc and a filter of 20 dB', station: onAntenna({ rig: at(-30), between: filter(20) }) },
  ],
  reported: [
    {
      name: '−30 dBc of 100 W',
      station: onAntenna({ rig: at(-30) }),
      message: 'over',
      severity: 'doubt',
      at: { unit: 'antenna' },
      values: { level: 20, over: '13.0', transmitter: 'rig' },
    },
    {
      name: '−30 dBc and a filter that takes 5 dB',
      station: onAntenna({ rig: at(-30), between: filter(5) }),
      message: 'over',
      severity: 'doubt',
      at: { unit: 'antenna' },
      // 43 dB less the 30 and less the 4.7 by which the filter takes more from it than from the carrier.
      values: { over: '8.3' },
    },
  ],
});
