import { dcOnRf } from '../../../core/rules/rf/dc-on-rf.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

/** Puts DC on its line side only. */
const injector = made(
  {
    rf: ['rf', 'bnc-jack'],
    line: ['rf', 'bnc-jack', { limits: { centre: { maxV: 15 } } }],
    power: ['dc', 'barrel-21-jack'],
  },
  [
    { id: 'path', type: 'rfPath', a: 'rf', b: 'line', lossDb: 0.2 },
    { id: 'choke', type: 'conductor', from: 'power.centre', to: 'line.centre', ohms: 0.1 },
    { id: 'ground', type: 'conductor', from: 'power.shell', to: 'chassis', ohms: 0.005 },
  ],
);
/** A masthead preamplifier fed over its coax, which stands so many volts. */
const preamplifier = (maxV: number) =>
  made(
    { line: ['rf', 'bnc-jack', { limits: { centre: { maxV } } }], antenna: ['rf', 'bnc-jack'] },
    [
      { ...load('line.centre', 'line.shell', 0.1), absMaxV: 30 },
      { id: 'gain', type: 'rfPath', a: 'antenna', b: 'line', oneWay: true, lossDb: -15 },
    ],
    { outdoor: true },
  );
/** A detector that leaves a little DC on its input. */
const detector = (volts: number) =>
  made({ input: ['rf', 'bnc-jack'] }, [{ id: 'bias', type: 'pullUp', contact: 'input.centre', volts, ohms: 1000 }]);
const units = { supply: 'bench-supply', injector: { made: injector }, receiver: 'receiver-without-mute' };

testRule(dcOnRf, {
  silent: [
    {
      name: 'a masthead preamplifier fed through an injector that stands the right way',
      station: drawStation({
        units: { ...units, mast: { made: preamplifier(15) } },
        cables: [
          'supply.out > injector.power',
          'supply.out > receiver.power',
          'injector.rf > receiver.antenna',
          'injector.line > mast.line',
        ],
      }),
    },
    {
      name: 'less than half a volt from a detector',
      station: drawStation({
        units: { detector: { made: detector(0.45) }, receiver: 'receiver-without-mute' },
        cables: ['detector.input > receiver.antenna'],
      }),
    },
    {
      name: 'an injector with nothing on its line',
      station: drawStation({ units, cables: ['supply.out > injector.power', 'injector.rf > receiver.antenna'] }),
    },
  ],
  reported: [
    {
      name: 'the injector the wrong way round',
      station: drawStation({
        units: { ...units, mast: { made: preamplifier(15) } },
        cables: ['supply.out > injector.power', 'receiver.antenna > injector.line', 'mast.line > injector.rf'],
      }),
      message: 'dc',
      severity: 'danger',
      at: { unit: 'receiver', port: 'antenna', contact: 'centre' },
      // Nothing draws: the supply's 13.8 V.
      values: { volts: 13.8, limit: 0 },
      moments: ['receive'],
    },
    {
      name: 'a dummy load in place of the preamplifier, in one of two hook-ups',
      station: drawStation({
        units: { ...units, mast: { made: preamplifier(15) }, load: 'dummy-load-5w' },
        cables: [
          'supply.out > injector.power',
          ['injector.line > mast.line', { hookups: ['air'] }],
          ['injector.line > load.input', { hookups: ['test'] }],
        ],
        hookups: [
          { id: 'air', name: 'On air' },
          { id: 'test', name: 'Test' },
        ],
      }),
      message: 'dc',
      severity: 'danger',
      at: { unit: 'load', port: 'input', contact: 'centre' },
      // 50 Ω of the load, some 0.3 Ω of choke, leads and joints before it.
      values: { volts: (13.8 * 50) / 50.3, limit: 0 },
      within: 0.003,
      hookups: ['test'],
    },
    {
      name: 'a preamplifier for 5 V on 13.8 V',
      station: drawStation({
        units: { ...units, mast: { made: preamplifier(5.5) } },
        cables: ['supply.out > injector.power', 'mast.line > injector.line'],
      }),
      message: 'dc',
      severity: 'danger',
      at: { unit: 'mast', port: 'line', contact: 'centre' },
      // 0.1 A through the same 0.3 Ω.
      values: { volts: 13.8 - 0.1 * 0.3, limit: 5.5 },
      within: 0.002,
    },
    {
      name: 'a 4 mm plug in the centre of a transceiver’s antenna socket',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w' },
        cables: [
          'supply.out > rig.power',
          ['supply.out > rig.antenna', { plugs: { a: 'ring-terminals', b: 'banana-pair' } }],
        ],
      }),
      message: 'dc',
      severity: 'danger',
      at: { unit: 'rig', port: 'antenna', contact: 'centre' },
      values: { volts: 13.8, limit: 0 },
      within: 0.01,
    },
    {
      name: 'minus on the centre is DC too',
      station: drawStation({
        units: { detector: { made: detector(-5) }, receiver: 'receiver-without-mute' },
        cables: ['detector.input > receiver.antenna'],
      }),
      message: 'dc',
      severity: 'danger',
      at: { unit: 'receiver', port: 'antenna', contact: 'centre' },
      values: { volts: -5 },
    },
  ],
});
