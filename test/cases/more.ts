import type { Station } from '../../core/station/schema.ts';
import type { UnitElement } from '../../core/station/unit-kind.ts';
import { tripped } from '../rules/keying/trip-station.ts';
import { load, made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';
import type { Trouble } from './case.ts';
import { correctStations, guardedSdr, openWire, restsOnSend } from './correct.ts';
import { lead, ptt, radio, supply } from './parts.ts';
import { antenna, shack, transmitter } from './rf-stations.ts';

/** A changeover that lets the transmitter go when its line is pulled, or only when its own relay has moved. */
const interlock = (byRelay: boolean): Station =>
  drawStation({
    units: {
      supply: supply(13.8, 10),
      key: 'footswitch',
      over: {
        made: made(
          {
            power: ['dc', 'stud-pair'],
            line: ['control', 'mono-35-jack'],
            key: ['control', 'mono-35-jack'],
            antenna: ['rf', 'uhf-jack'],
            transmitter: ['rf', 'uhf-jack'],
            receiver: ['rf', 'n-jack'],
          },
          [
            { ...load('power.plus', 'power.minus', 0.05), minV: 10 },
            { id: 'bias', type: 'pullUp', contact: 'line.tip', volts: 5, ohms: 4700 },
            {
              id: 'send',
              type: 'rfPath',
              a: 'transmitter',
              b: 'antenna',
              lossDb: 0.1,
              isolationDb: 80,
              when: { on: ['relay'] },
            },
            {
              id: 'hear',
              type: 'rfPath',
              a: 'receiver',
              b: 'antenna',
              lossDb: 0.1,
              isolationDb: 80,
              when: { off: ['relay'] },
            },
            {
              id: 'key-contact',
              type: 'contactPair',
              from: 'key.tip',
              to: 'key.sleeve',
              device: 'relay',
              onOhms: 0.1,
              maxVolts: 30,
              maxAmps: 1,
              when: { on: ['keyOut'] },
            },
          ],
          {
            actors: [
              {
                id: 'relay',
                label: 'Relay',
                feels: { type: 'voltageBelow', contact: 'line.tip', volts: 1 },
                operateMs: 8,
                releaseMs: 15,
                does: 'changesOver',
              },
              {
                id: 'keyOut',
                label: 'Key out',
                feels: byRelay
                  ? { type: 'actor', actor: 'guard' }
                  : { type: 'voltageBelow', contact: 'line.tip', volts: 1 },
                operateMs: byRelay ? 4 : 12,
                releaseMs: 0,
                does: 'keys',
              },
              // Both the line and the relay: it goes off with the line, before the relay.
              ...(byRelay
                ? [
                    {
                      id: 'guard',
                      label: 'Relay has moved',
                      feels: { type: 'voltageBelow', contact: '@proof', volts: 1, reference: 'line.sleeve' } as const,
                      operateMs: 0,
                      releaseMs: 0,
                    },
                  ]
                : []),
            ],
          },
        ),
      },
      tx: {
        made: made(
          { line: ['control', 'mono-35-jack'], antenna: ['rf', 'uhf-jack'] },
          [
            { id: 'bias', type: 'pullUp', contact: 'line.tip', volts: 5, ohms: 4700 },
            { id: 'output', type: 'rfSource', port: 'antenna', dbm: 44, when: { on: ['rf'] } },
          ],
          {
            actors: [
              {
                id: 'rf',
                label: 'RF',
                feels: { type: 'voltageBelow', contact: 'line.tip', volts: 1 },
                operateMs: 5,
                releaseMs: 2,
                does: 'sends',
              },
            ],
          },
        ),
      },
      receiver: {
        made: made({ antenna: ['rf', 'n-jack'] }, [
          { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm: 10, overloadDbm: 0 },
        ]),
      },
      dipole: 'dipole',
    },
    cables: [
      ['supply.out > over.power', lead(20, 1, 1)],
      'key.plug > over.line',
      'over.key > tx.line',
      'tx.antenna > over.transmitter',
      'receiver.antenna > over.receiver',
      'over.antenna > dipole.feed',
    ],
    plan: { frequencyHz: 14_060_000, mode: 'voice', duty: 0.2 },
  });

/** The same with a second contact of the relay in the proof line: it closes only when the relay has moved and the line is low. */
const proven = (): Station => {
  const station = interlock(true);
  const [kind] = Object.values(station.kinds).filter((k) => k.elements.some((e) => e.id === 'key-contact'));
  kind?.elements.push(
    { id: 'proof-bias', type: 'pullUp', contact: '@proof', volts: 5, ohms: 4700 } as UnitElement,
    {
      id: 'proof-contact',
      type: 'contactPair',
      from: '@proof',
      to: 'line.tip',
      device: 'relay',
      onOhms: 0.1,
      maxVolts: 30,
      maxAmps: 1,
      when: { on: ['relay'] },
    } as UnitElement,
  );
  return station;
};

/** The antenna relay of `restsOnSend`, but one that has to pull in to send. */
const pullsToSend = (): Station => {
  const station = structuredClone(restsOnSend());
  for (const kind of Object.values(station.kinds)) {
    const [actor] = (kind.actors ?? []).filter((a) => a.id === 'listen');
    if (!actor) continue;
    Object.assign(actor, { feels: { type: 'voltageBelow', contact: 'line.centre', volts: 2 } });
    for (const element of kind.elements) {
      if (element.id === 'send') Object.assign(element, { when: { on: ['listen'] } });
      if (element.id === 'listen') Object.assign(element, { when: { off: ['listen'] } });
    }
  }
  return station;
};

const without = (station: Station, from: string): Station => ({
  ...station,
  cables: station.cables.filter((c) => `${c.a.unit}.${c.a.port}` !== from),
});

/** The open-wire line of the correct station, made of something that stands little. */
const thinLadder = (): Station => {
  const station = openWire();
  const line = station.cableKinds['open-wire'];
  if (!line?.coax) throw new Error('no line');
  return {
    ...station,
    cableKinds: { ...station.cableKinds, 'open-wire': { ...line, coax: { ...line.coax, maxVolts: 400 } } },
  };
};

const capsule = (padOhms: number | null, dcOhms = 6000): Station =>
  drawStation({
    units: {
      headset: {
        made: made({ out: ['audio', 'mono-35-jack'] }, [
          {
            id: 'capsule',
            type: 'audioSource',
            contact: 'out.tip',
            volts: 0.02,
            ohms: 2200,
            dcOhms,
            maxDcVolts: 10,
            minDcVolts: 1.5,
          },
        ]),
      },
      rig: {
        made: made({ in: ['audio', 'mono-35-jack'] }, [
          { id: 'input', type: 'audioLoad', contact: 'in.tip', ohms: 10_000 },
          { id: 'bias', type: 'pullUp', contact: 'in.tip', volts: 3, ohms: 2100 },
          ...(padOhms === null
            ? []
            : [{ id: 'pad', type: 'conductor', from: 'in.tip', to: 'in.sleeve', ohms: padOhms } as UnitElement]),
        ]),
      },
    },
    cables: ['headset.out > rig.in'],
  });

/** A packet radio’s data jack (1 audio in, 5 audio out) and a modem whose output lands on the one or the other. */
const dataJack = (pin: string): Station =>
  drawStation({
    units: {
      modem: {
        made: made({ out: ['audio', 'mono-35-jack'] }, [
          { id: 'transmit', type: 'audioSource', contact: 'out.tip', volts: 0.1, ohms: 600 },
        ]),
      },
      radio: {
        made: made({ data: ['audio', 'mini-din-6-jack'] }, [
          { id: 'input', type: 'audioLoad', contact: 'data.pin1', ohms: 10_000, fullVolts: 0.04, overloadVolts: 1 },
          { id: 'received', type: 'audioSource', contact: 'data.pin5', volts: 0.3, ohms: 600 },
        ]),
      },
    },
    cables: [
      [
        'modem.out > radio.data',
        {
          wiring: [
            { a: 'tip', b: pin },
            { a: 'sleeve', b: 'pin2' },
          ],
        },
      ],
    ],
  });

const phones = (jack: string): Station =>
  drawStation({
    units: {
      phones: 'headphones',
      rig: {
        made: made(
          { out: ['audio', jack] },
          ['tip', ...(jack.startsWith('stereo') ? ['ring'] : [])].map((contact) => ({
            id: contact,
            type: 'audioSource',
            contact: `out.${contact}`,
            volts: 0.5,
            ohms: 10,
          })),
        ),
      },
    },
    cables: [['rig.out > phones.plug', { kind: 'extension-stereo-635' }]],
  });

/** A 5 W transmitter from a 12 V battery, a silicon diode in its plus or nothing. */
const protectedBy = (diode: boolean): Station => {
  const box = made(
    { in: ['dc', 'stud-pair'], out: ['dc', 'stud-pair'] },
    [
      diode
        ? { id: 'diode', type: 'diode', anode: 'in.plus', cathode: 'out.plus', volts: 0.7, atAmps: 2, ohms: 0.01 }
        : { id: 'plus', type: 'conductor', from: 'in.plus', to: 'out.plus', ohms: 0.01 },
      { id: 'minus', type: 'conductor', from: 'in.minus', to: 'out.minus', ohms: 0.001 },
    ],
    { isolated: 'all' },
  );
  return drawStation({
    units: { supply: supply(12, 5), guard: { made: box }, tx: radio({ receive: 0.1, send: 2, minV: 9 }) },
    cables: [
      ['supply.out > guard.in', lead(16, 0.5, 3)],
      ['guard.out > tx.power', lead(16, 0.5)],
    ],
  });
};

const metered = (first: string, second: string): Station =>
  shack({ meter: 'swr-meter-200w', tuner: 'automatic-tuner', dipole: 'dipole' }, [
    ['supply.out > tuner.power', lead(20, 1, 1)],
    `rig.antenna > ${first}.transmitter`,
    `${first}.antenna > ${second}.transmitter`,
    [`${second}.antenna > dipole.feed`, { kind: 'coax-rg-213' }],
  ]);

const satellite = (lossDb: number): Station => {
  const station = drawStation({
    units: {
      supply: supply(13.8, 30),
      uplink: transmitter(50, 'n-jack', { harmonicsDbc: -60 }),
      up: antenna(50),
      down: antenna(50),
      downlink: {
        made: made({ antenna: ['rf', 'n-jack', { minHz: 430e6, maxHz: 440e6 }] }, [
          { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm: 60, overloadDbm: 65 },
        ]),
      },
    },
    cables: [
      ['supply.out > uplink.power', lead(12, 1, 15)],
      ['uplink.antenna > up.feed', { lengthM: 0, kind: 'coax-rg-213' }],
      ['down.feed > downlink.antenna', { lengthM: 0, kind: 'coax-rg-213' }],
    ],
    plan: { frequencyHz: 145_000_000 },
  });
  const ends = { a: { unit: 'up', port: 'feed' }, b: { unit: 'down', port: 'feed' } };
  return { ...station, couplings: [{ ...ends, lossDb }] };
};

/** 500 W into a tuner whose relays may move at so much. */
const remoteTuner = (maxTuneWatts: number, dbm: number): Station =>
  drawStation({
    units: {
      supply: supply(13.8, 30),
      tx: transmitter(dbm, 'uhf-jack'),
      tuner: {
        made: made({ in: ['rf', 'uhf-jack'], out: ['rf', 'uhf-jack'] }, [
          {
            id: 'match',
            type: 'matcher',
            a: 'in',
            b: 'out',
            lossDb: 0.3,
            minOhms: 8,
            maxOhms: 800,
            maxWatts: 1500,
            maxTuneWatts,
          },
        ]),
      },
      vertical: antenna(60),
    },
    cables: [
      ['supply.out > tx.power', lead(12, 1, 15)],
      ['tx.antenna > tuner.in', { kind: 'coax-rg-213' }],
      ['tuner.out > vertical.feed', { kind: 'coax-rg-213' }],
    ],
    plan: { frequencyHz: 3_650_000 },
  });

/** An antenna relay by a switch of its own, 15 ms, and a radio that makes RF so long after its own. */
const matrix = (afterMs: number): Station => {
  const path = (id: string, b: string, when: object) => ({
    id,
    type: 'rfPath',
    a: 'radio',
    b,
    lossDb: 0.1,
    isolationDb: 60,
    when,
  });
  return drawStation({
    units: {
      supply: supply(13.8, 30),
      tx: transmitter(
        47,
        'uhf-jack',
        {},
        {
          actors: [{ ...ptt, does: 'sends', operateMs: afterMs }],
        },
      ),
      matrix: {
        made: made(
          { radio: ['rf', 'uhf-jack'], one: ['rf', 'n-jack'], two: ['rf', 'n-jack'] },
          [path('to-one', 'one', { off: ['relay'] }), path('to-two', 'two', { on: ['relay'] })] as UnitElement[],
          {
            actors: [
              {
                id: 'relay',
                label: 'Relay',
                feels: { type: 'operator', label: 'Choose the other antenna' },
                operateMs: 15,
                releaseMs: 40,
                unpowered: true,
                does: 'changesOver',
              },
            ],
          },
        ),
      },
      one: antenna(50),
      two: antenna(50),
    },
    cables: [
      ['supply.out > tx.power', lead(12, 1, 15)],
      'tx.antenna > matrix.radio',
      'matrix.one > one.feed',
      'matrix.two > two.feed',
    ],
    plan: { frequencyHz: 14_060_000, mode: 'voice', duty: 0.2 },
  });
};

/** A radio’s PTT on an interface’s data line, or on its PTT transistor. */
const flowControl = (jack: 'data' | 'ptt'): Station =>
  drawStation({
    units: {
      port: {
        made: made(
          { data: ['data', 'mono-35-jack'], ptt: ['control', 'mono-35-jack'] },
          [
            { id: 'rts', type: 'dataEnd', contact: 'data.tip', standard: 'ttl5', role: 'drives' },
            {
              id: 'transistor',
              type: 'contactPair',
              from: 'ptt.tip',
              to: 'ptt.sleeve',
              device: 'transistor',
              onOhms: 1,
              maxVolts: 30,
              maxAmps: 0.1,
              when: { on: ['program'] },
            },
          ],
          {
            actors: [
              {
                id: 'program',
                label: 'Program',
                feels: { type: 'operator', label: 'Send' },
                operateMs: 0,
                releaseMs: 0,
                unpowered: true,
                does: 'keys',
              },
            ],
          },
        ),
      },
      rig: {
        made: made(
          { ptt: ['control', 'mono-35-jack'], antenna: ['rf', 'uhf-jack'] },
          [
            { id: 'bias', type: 'pullUp', contact: 'ptt.tip', volts: 5, ohms: 4700 },
            { id: 'output', type: 'rfSource', port: 'antenna', dbm: 44, when: { on: ['rf'] } },
          ],
          {
            actors: [
              {
                id: 'rf',
                label: 'RF',
                feels: { type: 'voltageBelow', contact: 'ptt.tip', volts: 1 },
                operateMs: 10,
                releaseMs: 5,
                does: 'sends',
              },
            ],
          },
        ),
      },
      load: 'dummy-load-100w',
    },
    cables: [`port.${jack} > rig.ptt`, 'rig.antenna > load.input'],
    plan: { frequencyHz: 14_074_000, mode: 'data', duty: 0.5 },
  });

/** A microphone extension of which the two cores alone are carried through. */
const extension = (set: object): Station => {
  const station = correctStations.find((c) => c.id === 'K23')?.station;
  if (!station) throw new Error('no extension');
  return { ...station, cables: station.cables.map(({ screenAt: _, ...cable }) => ({ ...cable, ...set })) };
};

/** Mistakes that show only when something fails, and what is left. */
export const moreTroubles: Trouble[] = [
  {
    id: 'R11',
    about: 'A receive socket that nothing disconnects while the transceiver sends',
    catch: 'yes',
    wrong: without(guardedSdr(), 'rig.amplifier'),
    right: guardedSdr(),
    finds: [{ rule: 'rf/transmit-into-receiver', at: { unit: 'sdr', port: 'antenna' }, severity: 'danger' }],
  },
  {
    id: 'R14',
    about: 'A changeover whose transmitter is keyed whether or not its relay has moved',
    catch: 'yes',
    wrong: interlock(false),
    right: proven(),
    whenFails: 'off:over.relay',
    finds: [{ rule: 'rf/transmit-into-nothing', at: { unit: 'tx' } }],
  },
  {
    id: 'R24',
    about: 'Where does the SWR meter go: behind the tuner it shows the line',
    catch: 'yes',
    wrong: metered('tuner', 'meter'),
    right: metered('meter', 'tuner'),
    finds: [{ rule: 'rf/meter-after-tuner', at: { unit: 'meter' } }],
  },
  {
    id: 'R36',
    about: 'A satellite station that hears the third harmonic of its own uplink',
    catch: 'yes',
    wrong: satellite(20),
    right: satellite(140),
    // +50 dBm less 80 dB of filter and antennas.
    finds: [
      {
        rule: 'rf/harmonic-in-receiver',
        at: { unit: 'downlink', port: 'antenna' },
        values: { order: '3', level: -30 },
      },
    ],
  },
  {
    id: 'R31',
    about: 'Ladder line melted at a voltage maximum',
    catch: 'partly',
    wrong: thinLadder(),
    right: openWire(),
    finds: [{ rule: 'rf/coax-overpowered', at: { cable: 'r2' } }],
  },
  {
    id: 'C03',
    about: 'An antenna relay that has to pull in to send, and its supply fails',
    catch: 'yes',
    wrong: pullsToSend(),
    right: restsOnSend(),
    whenFails: 'off:over',
    finds: [{ rule: 'rf/transmit-into-nothing', at: { unit: 'rig' } }],
  },
  {
    id: 'C08',
    about: 'An SWR trip that opens the amplifier’s key line under power',
    catch: 'yes',
    wrong: tripped('amp'),
    right: tripped('tx'),
    finds: [{ rule: 'keying/trips-under-power', at: { unit: 'guard' } }],
  },
  {
    id: 'C17',
    about: 'PTT on a serial control line: the radio sends when the computer boots',
    catch: 'partly',
    wrong: flowControl('data'),
    right: flowControl('ptt'),
    finds: [{ rule: 'keying/logic-levels', at: { unit: 'rig' } }],
  },
  {
    id: 'C18',
    about: 'One serial line for flow control and for PTT',
    catch: 'yes',
    wrong: flowControl('data'),
    right: flowControl('ptt'),
    finds: [{ rule: 'keying/logic-levels', at: { unit: 'rig' } }],
  },
  {
    id: 'C28',
    about: 'A microphone extension whose screen is connected at neither end',
    catch: 'yes',
    wrong: extension({}),
    right: extension({ screenAt: 'b' }),
    finds: [{ rule: 'drawing/screen-open', at: { cable: 'a1' } }],
  },
  {
    id: 'E02',
    about: 'The antenna off, the mains still on: what is to be unplugged before a storm',
    catch: 'yes',
    wrong: metered('meter', 'tuner'),
    right: metered('meter', 'tuner'),
    finds: [{ rule: 'drawing/storm', at: { cable: 'r3' }, values: { cables: 'R3' } }],
  },
  {
    id: 'C10',
    about: 'An automatic tuner behind the amplifier, and nothing that breaks the key line while it tunes',
    catch: 'yes',
    wrong: remoteTuner(150, 57),
    right: remoteTuner(1500, 57),
    finds: [{ rule: 'rf/tuner-out-of-reach', at: { unit: 'tuner', port: 'in' }, values: { watts: 500, most: 150 } }],
  },
  {
    id: 'C11',
    about: 'An antenna relay that somebody can move while the radio sends',
    catch: 'yes',
    wrong: matrix(3),
    right: matrix(30),
    finds: [{ rule: 'keying/hot-switched', at: { unit: 'matrix' }, values: { time: 12 } }],
  },
  {
    id: 'A04',
    about: 'Stereo phones in a mono jack: one ear only',
    catch: 'yes',
    wrong: phones('mono-635-jack'),
    right: phones('stereo-635-jack'),
    finds: [{ rule: 'audio/audio-level', at: { unit: 'phones', port: 'plug' }, values: { contact: 'ring' } }],
  },
  {
    id: 'A08',
    about: 'An electret’s bias pulled down by a pad of 100 Ω',
    catch: 'yes',
    wrong: capsule(100),
    right: capsule(null),
    finds: [{ rule: 'audio/dc-on-audio', at: { unit: 'headset', port: 'out' }, values: { volts: 0.14 } }],
  },
  {
    id: 'A09',
    about: 'Bias that collapses when the capsule is connected: reversed, shorted or the wrong part',
    catch: 'partly',
    wrong: capsule(null, 60),
    right: capsule(null),
    finds: [{ rule: 'audio/dc-on-audio', at: { unit: 'headset', port: 'out' } }],
  },
  {
    id: 'A10',
    about: 'The modem’s audio on the data jack’s receive pin',
    catch: 'yes',
    wrong: dataJack('pin5'),
    right: dataJack('pin1'),
    finds: [{ rule: 'audio/two-outputs-joined', at: { unit: 'radio', port: 'data' } }],
  },
  {
    id: 'M08',
    about: 'A silicon diode in the plus of a 12 V station',
    catch: 'yes',
    wrong: protectedBy(true),
    right: protectedBy(false),
    finds: [{ rule: 'power/voltage-drop', at: { unit: 'tx', port: 'power' }, values: { drop: 0.75 }, within: 0.15 }],
  },
];
