import { made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';
import { sample } from '../stations/samples.ts';
import type { Trouble } from './case.ts';
import { lead, ptt, radioLoad, supply } from './parts.ts';
import { antenna, beside, injector, listener, onLine, shack, transmitter, way } from './rf-stations.ts';

const hf = 14_060_000;

/** A transceiver with one socket for HF and one for VHF. */
const twoSockets = {
  made: made(
    { power: ['dc', 'stud-pair'], hf: ['rf', 'uhf-jack'], vhf: ['rf', 'uhf-jack', { minHz: 50e6, maxHz: 450e6 }] },
    [
      radioLoad({ receive: 0.5, send: 10 }),
      { id: 'output', type: 'rfSource', port: 'hf', dbm: 50, when: { on: ['ptt'] } },
    ],
    { isolated: 'all', actors: [{ ...ptt, does: 'sends' }] },
  ),
};
const mobile = (socket: string) =>
  drawStation({
    units: { supply: supply(13.8, 20), rig: twoSockets, whip: antenna(50) },
    cables: [
      ['supply.out > rig.power', lead(12, 1, 20)],
      [`rig.${socket} > whip.feed`, { lengthM: 1 }],
    ],
    plan: { frequencyHz: hf },
  });

/** A tuner in the shack or at the dipole, which is far from 50 Ω on this band. */
const tuned = (first: number, second: number) =>
  drawStation({
    units: {
      supply: supply(13.8, 20),
      tx: transmitter(47, 'uhf-jack'),
      tuner: {
        made: made({ in: ['rf', 'uhf-jack'], out: ['rf', 'uhf-jack'] }, [
          { id: 'match', type: 'matcher', a: 'in', b: 'out', lossDb: 0.3, minOhms: 0.5, maxOhms: 5000 },
        ]),
      },
      dipole: antenna(2500),
    },
    cables: [
      ['supply.out > tx.power', lead(12, 1, 20)],
      ['tx.antenna > tuner.in', { lengthM: first }],
      ['tuner.out > dipole.feed', { lengthM: second }],
    ],
    plan: { frequencyHz: hf },
  });

/** What RF meets on its way: sockets, cables, filters, switches, antennas. */
export const rfTroubles: Trouble[] = [
  {
    id: 'R01',
    about: 'A DC injector the wrong way round: 13.8 V into the receiver’s antenna socket',
    catch: 'yes',
    wrong: injector('line', 'rf'),
    right: injector('rf', 'line'),
    finds: [{ rule: 'rf/dc-on-rf', at: { unit: 'receiver', port: 'antenna' }, values: { volts: 13.8 } }],
  },
  {
    id: 'R03',
    about: 'An active antenna in place of a passive one, and nothing that feeds it',
    catch: 'yes',
    wrong: drawStation({
      units: { supply: 'bench-supply', receiver: 'sdr-receiver-hf', whip: 'active-whip' },
      cables: ['supply.out > receiver.power', 'receiver.antenna > whip.feed'],
    }),
    right: injector('rf', 'line'),
    finds: [{ rule: 'power/not-powered', at: { unit: 'whip', port: 'feed' } }],
  },
  {
    id: 'R07',
    about: 'A 100 W transceiver before a transverter for 10 mW, turned down by a setting alone',
    catch: 'yes',
    wrong: shack(
      {
        rig: { kind: 'transceiver-100w', overrides: { 'output.dbm': 10 } },
        transverter: 'transverter-2m',
        load: 'dummy-load-100w',
      },
      [
        ['supply.out > transverter.power', lead(14, 1, 7.5)],
        'rig.amplifier > transverter.key',
        'rig.antenna > transverter.input',
        'transverter.output > load.input',
      ],
      { plan: { frequencyHz: 28_100_000 } },
    ),
    right: shack(
      {
        rig: { kind: 'transceiver-100w', overrides: { 'output.maxDbm': 50 } },
        pad: 'attenuator-40db-100w',
        transverter: 'transverter-2m',
        load: 'dummy-load-100w',
      },
      [
        ['supply.out > transverter.power', lead(14, 1, 7.5)],
        'rig.amplifier > transverter.key',
        'rig.antenna > pad.one',
        'pad.two > transverter.input',
        'transverter.output > load.input',
      ],
      { plan: { frequencyHz: 28_100_000 } },
    ),
    finds: [{ rule: 'rf/safe-only-by-setting', at: { unit: 'transverter', port: 'input' }, values: { limit: 0.01 } }],
  },
  {
    id: 'R08',
    about: 'An SDR receiver for −5 dBm beside an 8 W hand-held',
    catch: 'yes',
    // 39 dBm less 30 dB.
    wrong: beside(39, listener(-5), 30),
    right: beside(39, listener(-5), 95),
    finds: [
      {
        rule: 'rf/transmit-into-receiver',
        at: { unit: 'receiver', port: 'antenna' },
        values: { level: 9 },
        severity: 'danger',
      },
    ],
  },
  {
    id: 'R09',
    about: 'The second station’s antenna less than a tenth of a wavelength from 1.5 kW',
    catch: 'partly',
    wrong: beside(61.76, listener(10), 20),
    right: beside(61.76, listener(10), 110),
    finds: [{ rule: 'rf/transmit-into-receiver', at: { unit: 'receiver', port: 'antenna' }, values: { level: 41.8 } }],
  },
  {
    id: 'R10',
    about: 'The second harmonic of 1.5 kW: what just meets the limit, and what does not',
    catch: 'yes',
    wrong: beside(61.76, listener(10), 110, { harmonicsDbc: -40 }),
    right: beside(61.76, listener(10), 110, { harmonicsDbc: -46 }),
    finds: [{ rule: 'rf/harmonics', at: { unit: 'one' } }],
  },
  {
    id: 'R12',
    about: 'A home-made selector for two radios that isolates too little',
    catch: 'yes',
    wrong: shared(25),
    right: shared(100),
    finds: [{ rule: 'rf/transmit-into-receiver', at: { unit: 'other', port: 'antenna' } }],
  },
  {
    id: 'R16',
    about: 'A changeover that senses RF: its first milliseconds meet the full power',
    catch: 'yes',
    wrong: sensing(),
    right: sample('hut'),
    finds: [{ rule: 'keying/hot-switched', at: { unit: 'over' }, values: { time: 6 } }],
  },
  {
    id: 'R17',
    about: 'The HF antenna on the VHF socket',
    catch: 'yes',
    wrong: mobile('vhf'),
    right: mobile('hf'),
    finds: [{ rule: 'rf/transmit-into-nothing', at: { unit: 'rig' } }],
  },
  {
    id: 'R18',
    about: 'Two metres of 75 Ω cable and an antenna switch with nothing selected',
    catch: 'yes',
    wrong: selected('two', 'coax-rg-6'),
    right: selected('one', 'coax-rg-58'),
    finds: [{ rule: 'rf/transmit-into-nothing', at: { unit: 'rig' } }],
  },
  {
    id: 'R21',
    about: 'A remote tuner that never sees enough power to begin',
    catch: 'partly',
    wrong: automatic(30),
    right: automatic(50),
    finds: [
      { rule: 'rf/tuner-out-of-reach', at: { unit: 'tuner', port: 'transmitter' }, values: { watts: 1, need: 5 } },
    ],
  },
  {
    id: 'R22',
    about: 'A tuner for 10 W in a 100 W line',
    catch: 'yes',
    wrong: shack({ tuner: 'qrp-tuner', dipole: 'dipole' }, [
      'rig.antenna > tuner.transmitter',
      'tuner.antenna > dipole.feed',
    ]),
    right: shack({ tuner: 'manual-tuner', dipole: 'dipole' }, [
      'rig.antenna > tuner.transmitter',
      ['tuner.antenna > dipole.feed', { kind: 'coax-rg-213' }],
    ]),
    finds: [
      { rule: 'rf/load-overpowered', at: { unit: 'tuner', port: 'transmitter' }, values: { watts: 100, limit: 10 } },
    ],
  },
  {
    id: 'R23',
    about: 'A dipole far off its band, tuned in the shack through 15 m of thin coax',
    catch: 'yes',
    wrong: tuned(0.3, 15.24),
    right: tuned(15.24, 0.1),
    // The account counts 7.3 dB at SWR 50.
    finds: [{ rule: 'rf/line-loss', at: { cable: 'r2' }, values: { loss: 7.3 }, within: 0.15 }],
  },
  {
    id: 'R26',
    about: 'Marine VHF: 25 W at the deck, 15 W at the mast',
    catch: 'yes',
    wrong: onLine(44, 160e6, { lengthM: 12.2, kind: 'coax-rg-58' }),
    right: onLine(44, 160e6, { lengthM: 12.2, kind: 'coax-low-loss-10mm' }),
    finds: [{ rule: 'rf/line-loss', at: { cable: 'r1' }, values: { watts: 15, loss: 2.2 }, within: 0.3 }],
  },
  {
    id: 'R27',
    about: 'Five metres of thin coax on 70 cm',
    catch: 'yes',
    wrong: onLine(43, 432e6, { lengthM: 5, kind: 'coax-rg-58' }),
    right: onLine(43, 432e6, { lengthM: 5, kind: 'coax-low-loss-10mm' }),
    finds: [{ rule: 'rf/line-loss', at: { cable: 'r1' }, values: { loss: 1.72 }, within: 0.25 }],
  },
  {
    id: 'R32',
    about: 'An antenna for 200 W on 300 W, for a long transmission',
    catch: 'yes',
    wrong: onLine(54.8, 28.5e6, { lengthM: 2, kind: 'coax-rg-213' }, antenna(50, { watts: 200 })),
    right: onLine(54.8, 28.5e6, { lengthM: 2, kind: 'coax-rg-213' }, antenna(50, { watts: 500 })),
    finds: [{ rule: 'rf/load-overpowered', at: { unit: 'antenna', port: 'feed' }, values: { watts: 300, limit: 200 } }],
  },
  {
    id: 'R35',
    about: 'The wrong low-pass filter selected in the amplifier',
    catch: 'partly',
    wrong: shack({ filter: way({ maxHz: 8e6, maxWatts: 500 }), load: 'dummy-load-100w' }, [
      'rig.antenna > filter.in',
      'filter.out > load.input',
    ]),
    right: shack({ filter: way({ maxHz: 15e6, maxWatts: 500 }), load: 'dummy-load-100w' }, [
      'rig.antenna > filter.in',
      'filter.out > load.input',
    ]),
    finds: [{ rule: 'rf/wrong-band', at: { unit: 'filter' } }],
  },
  {
    id: 'R37',
    about: 'A receive splitter that somebody transmits into',
    catch: 'yes',
    wrong: shack({ splitter: 'splitter', dipole: 'dipole' }, [
      'rig.antenna > splitter.one',
      'splitter.common > dipole.feed',
    ]),
    right: shack({ dipole: 'dipole' }, ['rig.antenna > dipole.feed']),
    finds: [{ rule: 'rf/load-overpowered', at: { unit: 'splitter', port: 'one' }, values: { limit: 0.5 } }],
  },
  {
    id: 'R38',
    about: 'A resistive tuning bridge that stays in the line',
    catch: 'yes',
    wrong: shack({ bridge: way({ lossDb: 6, maxWatts: 10 }), dipole: 'dipole' }, [
      'rig.antenna > bridge.in',
      'bridge.out > dipole.feed',
    ]),
    right: shack({ dipole: 'dipole' }, ['rig.antenna > dipole.feed']),
    finds: [{ rule: 'rf/load-overpowered', at: { unit: 'bridge', port: 'in' }, values: { watts: 100, limit: 10 } }],
  },
  {
    id: 'R41',
    about: 'A masthead preamplifier the wrong way round',
    catch: 'yes',
    wrong: masthead('antenna', 'line'),
    right: masthead('line', 'antenna'),
    finds: [
      { rule: 'rf/dc-on-rf', at: { unit: 'preamplifier', port: 'antenna' } },
      { rule: 'power/not-powered', at: { unit: 'preamplifier', port: 'line' } },
    ],
  },
  {
    id: 'M04',
    about: 'DC on an RF lead that is meant for the next module, into the wrong socket',
    catch: 'yes',
    wrong: module('signal'),
    right: module('next'),
    finds: [{ rule: 'rf/dc-on-rf', at: { unit: 'control', port: 'signal' } }],
  },
  {
    id: 'M05',
    about: 'A transverter whose PTT nobody switches',
    catch: 'yes',
    wrong: driven([]),
    right: driven(['rig.amplifier > amplifier.key']),
    finds: [{ rule: 'keying/amplifier-never-switched', at: { unit: 'amplifier', port: 'key' } }],
  },
];

/** Two radios on one antenna through a selector that isolates so much. */
function shared(isolationDb: number) {
  const position = (id: string, selected: boolean) =>
    ({
      id,
      type: 'rfPath',
      a: 'antenna',
      b: id,
      lossDb: 0.2,
      isolationDb,
      when: { settings: { position: selected ? 'left' : 'right' } },
    }) as const;
  return shack(
    {
      selector: {
        made: made(
          { antenna: ['rf', 'uhf-jack'], left: ['rf', 'uhf-jack'], right: ['rf', 'n-jack'] },
          [position('left', true), position('right', false)],
          {
            settings: [
              {
                id: 'position',
                label: 'Position',
                options: [
                  { id: 'left', label: 'left' },
                  { id: 'right', label: 'right' },
                ],
                initial: 'left',
              },
            ],
          },
        ),
      },
      other: listener(10),
      dipole: 'dipole',
    },
    ['rig.antenna > selector.left', 'other.antenna > selector.right', 'selector.antenna > dipole.feed'],
  );
}

/** The changeover that senses RF, keyed directly. */
function sensing() {
  return drawStation({
    units: {
      supply: 'bench-supply',
      over: 'changeover-sensing-rf',
      tx: 'cw-transmitter-3w',
      key: 'straight-key',
      receiver: 'receiver-without-mute',
      wire: 'wire-antenna',
    },
    cables: [
      'supply.out > over.power',
      'supply.out > tx.power',
      'supply.out > receiver.power',
      'key.out > tx.key',
      'tx.antenna > over.transmitter',
      'receiver.antenna > over.receiver',
      'over.antenna > wire.feed',
    ],
    plan: { frequencyHz: 10_120_000 },
  });
}

function selected(position: string, kind: string) {
  return shack({ switch: { kind: 'coax-switch', settings: { position } }, dipole: 'dipole' }, [
    ['rig.antenna > switch.common', { kind, lengthM: 2 }],
    ['switch.one > dipole.feed', { lengthM: 2 }],
  ]);
}

function automatic(dbm: number) {
  return shack(
    { rig: { kind: 'transceiver-100w', overrides: { 'output.dbm': dbm } }, tuner: 'automatic-tuner', dipole: 'dipole' },
    [
      ['supply.out > tuner.power', lead(18, 1, 1)],
      'rig.antenna > tuner.transmitter',
      ['tuner.antenna > dipole.feed', { kind: 'coax-rg-213' }],
    ],
  );
}

function masthead(below: string, above: string) {
  return drawStation({
    units: {
      supply: 'bench-supply',
      receiver: listener(10),
      injector: 'bias-tee',
      preamplifier: 'masthead-preamplifier',
      yagi: 'yagi-2m',
    },
    cables: [
      ['supply.out > injector.power', { fuse: { amps: 1, family: 'blade', atM: 0.1 } }],
      'receiver.antenna > injector.rf',
      [`injector.line > preamplifier.${below}`, { lengthM: 3 }],
      [`preamplifier.${above} > yagi.feed`, { lengthM: 1 }],
    ],
    plan: { frequencyHz: 144_300_000 },
  });
}

/** A module that feeds the next one over the coax; the control unit has one socket for that and one for signals. */
function module(socket: string) {
  return drawStation({
    units: {
      source: {
        made: made({ coax: ['rf', 'n-jack', { limits: { centre: { maxV: 60 } } }] }, [
          {
            id: 'feed',
            type: 'supply',
            plus: 'coax.centre',
            minus: 'coax.shell',
            volts: 24,
            sourceOhms: 1,
            amps: 1,
            peakAmps: 1.5,
            beyond: 'limits',
          },
        ]),
      },
      control: {
        made: made({ next: ['rf', 'n-jack', { limits: { centre: { maxV: 60 } } }], signal: ['rf', 'n-jack'] }, [
          { id: 'bleed', type: 'conductor', from: 'next.centre', to: 'next.shell', ohms: 1000 },
        ]),
      },
    },
    cables: [`source.coax > control.${socket}`],
  });
}

function driven(keying: string[]) {
  return drawStation({
    units: {
      supply: supply(13.8, 30),
      rig: { kind: 'transceiver-100w', overrides: { 'output.dbm': 34.8, 'output.maxDbm': 34.8 } },
      amplifier: 'amplifier-40w',
      load: 'dummy-load-100w',
    },
    cables: [
      ['supply.out > rig.power', lead(10, 1, 25)],
      ['supply.out > amplifier.power', lead(12, 1, 10)],
      'rig.antenna > amplifier.input',
      'amplifier.output > load.input',
      ...keying,
    ],
    plan: { frequencyHz: hf },
  });
}
