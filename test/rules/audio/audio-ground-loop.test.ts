import { audioGroundLoop } from '../../../core/rules/audio/audio-ground-loop.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { line, sink, source } from './line.ts';

/** A radio on a supply with a thin minus, its audio into a computer that has a ground of its own at the supply. */
const loop = (minusM: number, amps: number) =>
  drawStation({
    units: {
      supply: 'bench-supply',
      radio: {
        made: made({ power: ['dc', 'binding-posts'], out: ['audio', 'mono-35-jack'] }, [
          load('power.plus', 'power.minus', amps),
          source({ volts: 0.3 }),
        ]),
      },
      computer: {
        made: made({ power: ['dc', 'binding-posts'], in: ['audio', 'mono-35-jack'] }, [
          load('power.plus', 'power.minus', 0.1),
          sink({ fullVolts: 0.3 }),
        ]),
      },
    },
    cables: [
      ['supply.out > radio.power', { lengthM: minusM, kind: 'lead-awg-16' }],
      ['supply.out > computer.power', { lengthM: 0.3, kind: 'lead-awg-16' }],
      ['radio.out > computer.in', { lengthM: 1 }],
    ],
  });

testRule(audioGroundLoop, {
  silent: [
    { name: 'a radio that takes a tenth of an ampere through a short lead', station: loop(0.2, 0.05) },
    { name: 'no supply at all', station: line({}, { fullVolts: 1 }) },
  ],
  reported: [
    {
      // The radio's minus (5 m of AWG 16 and its joints) beside the screen of the audio lead.
      name: 'two amperes through five metres',
      station: loop(5, 2),
      message: 'loop',
      severity: 'doubt',
      at: { unit: 'computer', port: 'in' },
      values: { volts: 0.05, full: 0.3 },
      within: 0.7,
    },
  ],
});
