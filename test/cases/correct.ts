import type { UnitElement } from '../../core/station/schema/unit-kind.ts';
import { load, made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';
import type { Correct } from './case.ts';
import { battery, breaks, lead, ptt, radio, radioLoad, supply } from './parts.ts';
import { antenna, injector, shack, transmitter, way } from './rf-stations.ts';

const hf = 14_060_000;

/** A receiver on a tee at a transceiver’s antenna, which its own relay earths while the line is pulled. */
export const guardedSdr = (): Correct['station'] =>
  shack(
    {
      guard: {
        made: made(
          {
            power: ['dc', 'stud-pair'],
            line: ['control', 'phono-jack'],
            antenna: ['rf', 'uhf-jack'],
            rig: ['rf', 'uhf-jack'],
            receiver: ['rf', 'n-jack'],
          },
          [
            { ...load('power.plus', 'power.minus', 0.05), minV: 10 },
            { id: 'bias', type: 'pullUp', contact: 'line.centre', volts: 5, ohms: 4700 },
            { id: 'main', type: 'rfPath', a: 'rig', b: 'antenna', lossDb: 0.1 },
            {
              id: 'tap',
              type: 'rfPath',
              a: 'antenna',
              b: 'receiver',
              lossDb: 3.2,
              isolationDb: 80,
              when: { off: ['guard'] },
            },
          ],
          {
            actors: [
              {
                id: 'guard',
                label: 'Relay',
                feels: { type: 'voltageBelow', contact: 'line.centre', volts: 1 },
                operateMs: 2,
                releaseMs: 10,
                does: 'changesOver',
              },
            ],
          },
        ),
      },
      sdr: {
        made: made({ antenna: ['rf', 'n-jack'] }, [
          { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm: 10, overloadDbm: 0 },
        ]),
      },
      dipole: 'dipole',
    },
    [
      ['supply.out > guard.power', lead(18, 1, 1)],
      'rig.amplifier > guard.line',
      'rig.antenna > guard.rig',
      'guard.receiver > sdr.antenna',
      'guard.antenna > dipole.feed',
    ],
  );

/** A tuner and open-wire line to a doublet: high SWR, little loss. */
export const openWire = (): Correct['station'] => {
  const station = shack(
    {
      rig: { kind: 'transceiver-100w', overrides: { 'output.maxDbm': 50 } },
      tuner: {
        made: made({ in: ['rf', 'uhf-jack'], out: ['rf', 'n-jack'] }, [
          { id: 'match', type: 'matcher', a: 'in', b: 'out', lossDb: 0.3, minOhms: 5, maxOhms: 6000, maxWatts: 200 },
        ]),
      },
      doublet: antenna(4500),
    },
    ['rig.antenna > tuner.in', ['tuner.out > doublet.feed', { lengthM: 20 }]],
  );
  const line = station.cables.find((c) => c.b.unit === 'doublet');
  const kind = station.cableKinds[line?.kind ?? ''];
  if (!line || !kind) throw new Error('no line');
  const openWireKind = {
    ...kind,
    name: 'open-wire line, 450 Ω',
    coax: {
      z0: 450,
      velocityFactor: 0.92,
      points: [
        [10, 0.3],
        [30, 0.6],
      ] as [number, number][],
      tolerance: 0.2,
      maxVolts: 3000,
    },
  };
  const connectors = { ...station.connectors };
  for (const id of ['n-jack', 'n-plug']) connectors[id] = { ...connectors[id], volts: 5000 } as never;
  return {
    ...station,
    connectors,
    cableKinds: { ...station.cableKinds, 'open-wire': openWireKind },
    cables: station.cables.map((c) => (c === line ? { ...c, kind: 'open-wire' } : c)),
  };
};

/** A selector between battery and supply: the bus is dead while the battery is charged. */
const selector = (): Correct['station'] => {
  const position = (pole: string, side: string): UnitElement => ({
    id: `${side}-${pole}`,
    type: 'conductor',
    from: `${side}.${pole}`,
    to: `out.${pole}`,
    ohms: 0.002,
    when: { settings: { position: side } },
  });
  const box = made(
    { battery: ['dc', 'stud-pair'], out: ['dc', 'stud-pair'] },
    [position('plus', 'battery'), position('minus', 'battery')],
    {
      isolated: 'all',
      settings: [
        {
          id: 'position',
          label: 'Position',
          options: [
            { id: 'battery', label: 'battery' },
            { id: 'off', label: 'off, charging' },
          ],
          initial: 'battery',
        },
      ],
    },
  );
  return drawStation({
    units: {
      battery: battery({ chemistry: 'lifepo4', maxVolts: 14.6, ampHours: 50 }),
      selector: { made: box },
      rig: radio({ receive: 0.5, send: 5, minV: 11 }),
    },
    cables: [
      ['battery.out > selector.battery', lead(12, 0.5, 10)],
      ['selector.out > rig.power', lead(12, 1)],
    ],
    plan: { hoursPerDay: 1 },
  });
};

/** A transmitter, a relay that pulls in to listen, and the battery’s voltage on its coil all evening. */
export const restsOnSend = (): Correct['station'] => {
  const over = made(
    {
      power: ['dc', 'stud-pair'],
      line: ['control', 'phono-jack'],
      antenna: ['rf', 'uhf-jack'],
      transmitter: ['rf', 'uhf-jack'],
      receiver: ['rf', 'n-jack'],
    },
    [
      { ...load('power.plus', 'power.minus', 0.16), minV: 10 },
      { id: 'bias', type: 'pullUp', contact: 'line.centre', volts: 5, ohms: 4700 },
      {
        id: 'send',
        type: 'rfPath',
        a: 'transmitter',
        b: 'antenna',
        lossDb: 0.1,
        isolationDb: 80,
        when: { off: ['listen'] },
      },
      {
        id: 'listen',
        type: 'rfPath',
        a: 'receiver',
        b: 'antenna',
        lossDb: 0.1,
        isolationDb: 80,
        when: { on: ['listen'] },
      },
    ],
    {
      actors: [
        {
          id: 'listen',
          label: 'Listening',
          feels: { type: 'voltageAbove', contact: 'line.centre', volts: 2 },
          operateMs: 10,
          releaseMs: 5,
          does: 'changesOver',
        },
      ],
    },
  );
  return shack(
    {
      over: { made: over },
      receiver: {
        made: made({ antenna: ['rf', 'n-jack'] }, [
          { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm: 20, overloadDbm: 0 },
        ]),
      },
      dipole: 'dipole',
    },
    [
      ['supply.out > over.power', lead(18, 1, 1)],
      'rig.amplifier > over.line',
      'rig.antenna > over.transmitter',
      'receiver.antenna > over.receiver',
      'over.antenna > dipole.feed',
    ],
  );
};

export const correctStations: Correct[] = [
  { id: 'K01', about: 'DC on an RF line to an active antenna, on purpose', station: injector('rf', 'line') },
  {
    id: 'K03',
    about: 'An arrestor that blocks DC, and a bypass feed beside it',
    station: drawStation({
      units: {
        supply: 'bench-supply',
        injector: 'bias-tee',
        receiver: 'sdr-receiver-hf',
        arrestor: {
          made: made(
            {
              station: ['rf', 'bnc-jack', { limits: { centre: { maxV: 30 } } }],
              antenna: ['rf', 'bnc-jack', { limits: { centre: { maxV: 30 } } }],
            },
            [
              { id: 'line', type: 'rfPath', a: 'station', b: 'antenna', lossDb: 0.2 },
              { id: 'bypass', type: 'conductor', from: 'station.centre', to: 'antenna.centre', ohms: 0.3 },
            ],
          ),
        },
        whip: 'active-whip',
      },
      cables: [
        ['supply.out > receiver.power', { fuse: { amps: 1, family: 'blade', atM: 0.1 } }],
        ['supply.out > injector.power', { fuse: { amps: 1, family: 'blade', atM: 0.1 } }],
        'receiver.antenna > injector.rf',
        'injector.line > arrestor.station',
        ['arrestor.antenna > whip.feed', { lengthM: 3 }],
      ],
    }),
  },
  {
    id: 'K05',
    about: 'An SDR on a tap at the transceiver’s antenna, earthed by a relay in sending',
    station: guardedSdr(),
  },
  { id: 'K08', about: 'Open-wire line with a high SWR between tuner and antenna', station: openWire() },
  { id: 'K10', about: 'A battery behind a selector', station: selector() },
  {
    id: 'K11',
    about: 'Back-up by a relay, a charging resistor and a diode',
    station: drawStation({
      units: {
        mains: supply(13.8, 10),
        battery: battery({ chemistry: 'agm', ampHours: 28 }),
        backup: 'backup-changeover',
        rig: radio({ receive: 0.5, send: 5, minV: 11 }),
      },
      cables: [
        ['mains.out > backup.mains', lead(12, 1, 15)],
        ['battery.out > backup.battery', lead(12, 0.5, 15)],
        ['backup.output > rig.power', lead(12, 1)],
      ],
      plan: { hoursPerDay: 1 },
    }),
  },
  {
    id: 'K13',
    about: 'A 13 dB pad in the transmit path, on purpose',
    station: shack({ pad: way({ lossDb: 13, maxWatts: 150 }), dipole: 'dipole' }, [
      'rig.antenna > pad.in',
      'pad.out > dipole.feed',
    ]),
  },
  { id: 'K15', about: 'An antenna relay that is pulled in to listen', station: restsOnSend() },
  {
    id: 'K16',
    about: 'No sequencer: the relay is faster than the radio',
    station: drawStation({
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
        'rig.amplifier > amplifier.key',
      ],
      plan: { frequencyHz: hf },
    }),
  },
  {
    id: 'K18',
    about: 'Two diodes head to head across the receiver’s input',
    station: drawStation({
      units: {
        receiver: {
          made: made({ antenna: ['rf', 'n-jack'] }, [
            { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm: 20 },
            {
              id: 'up',
              type: 'diode',
              anode: 'antenna.centre',
              cathode: 'antenna.shell',
              volts: 0.6,
              atAmps: 0.01,
              ohms: 1,
            },
            {
              id: 'down',
              type: 'diode',
              anode: 'antenna.shell',
              cathode: 'antenna.centre',
              volts: 0.6,
              atAmps: 0.01,
              ohms: 1,
            },
          ]),
        },
        wire: 'wire-antenna',
      },
      cables: ['receiver.antenna > wire.feed'],
    }),
  },
  {
    id: 'K20',
    about: 'HF and VHF on one coax, a duplexer at each end',
    station: drawStation({
      units: {
        supply: supply(13.8, 30),
        hf: transmitter(47, 'uhf-jack'),
        near: 'duplexer',
        far: 'duplexer',
        vhf: {
          made: made({ antenna: ['rf', 'n-jack'] }, [
            { id: 'whip', type: 'rfLoad', port: 'antenna', role: 'antenna', ohms: 50 },
          ]),
        },
        dipole: 'dipole',
      },
      cables: [
        ['supply.out > hf.power', lead(12, 1, 20)],
        'hf.antenna > near.hf',
        ['near.common > far.common', { lengthM: 10, kind: 'coax-rg-213' }],
        'far.hf > dipole.feed',
        'far.vhf > vhf.antenna',
      ],
      plan: { frequencyHz: hf },
    }),
  },
  {
    id: 'K23',
    about: 'A microphone extension with its screen joined at the radio’s end only',
    station: drawStation({
      units: {
        microphone: {
          made: made(
            { lead: ['audio', 'stereo-35-jack'] },
            [
              {
                id: 'capsule',
                type: 'audioSource',
                contact: 'lead.tip',
                reference: 'lead.ring',
                volts: 0.02,
                ohms: 600,
              },
            ],
            { isolated: 'all' },
          ),
        },
        rig: {
          made: made({ microphone: ['audio', 'stereo-35-jack'] }, [
            {
              id: 'input',
              type: 'audioLoad',
              contact: 'microphone.tip',
              reference: 'microphone.ring',
              ohms: 5000,
              fullVolts: 0.02,
            },
            { id: 'ground', type: 'conductor', from: 'microphone.ring', to: 'chassis', ohms: 0.01 },
          ]),
        },
      },
      cables: [
        [
          'microphone.lead > rig.microphone',
          {
            wiring: [
              { a: 'tip', b: 'tip' },
              { a: 'ring', b: 'ring' },
            ],
            screenAt: 'b',
          },
        ],
      ],
    }),
  },
  {
    id: 'K25',
    about: 'No fuse in the minus at home; in the car one in each lead is no mistake either',
    station: drawStation({
      units: {
        supply: supply(13.8, 20),
        rig: {
          made: made({ power: ['dc', 'stud-pair'] }, [radioLoad({ receive: 0.5, send: 10 })], { actors: [ptt] }),
        },
      },
      cables: [['supply.out > rig.power', breaks(lead(12, 1, 15))]],
    }),
  },
];
