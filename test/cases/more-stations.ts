import type { Station } from '../../core/station/schema/schema.ts';
import type { UnitElement } from '../../core/station/schema/unit-kind.ts';
import { load, made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';
import { correctStations, openWire, restsOnSend } from './correct.ts';
import { lead, ptt, radio, supply } from './parts.ts';
import { antenna, shack, transmitter } from './rf-stations.ts';

/** A changeover that lets the transmitter go when its line is pulled, or only when its own relay has moved. */
export const interlock = (byRelay: boolean): Station =>
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
export const proven = (): Station => {
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
export const pullsToSend = (): Station => {
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

export const without = (station: Station, from: string): Station => ({
  ...station,
  cables: station.cables.filter((c) => `${c.a.unit}.${c.a.port}` !== from),
});

/** The open-wire line of the correct station, made of something that stands little. */
export const thinLadder = (): Station => {
  const station = openWire();
  const line = station.cableKinds['open-wire'];
  if (!line?.coax) throw new Error('no line');
  return {
    ...station,
    cableKinds: { ...station.cableKinds, 'open-wire': { ...line, coax: { ...line.coax, maxVolts: 400 } } },
  };
};

export const capsule = (padOhms: number | null, dcOhms = 6000): Station =>
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
export const dataJack = (pin: string): Station =>
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

export const phones = (jack: string): Station =>
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
export const protectedBy = (diode: boolean): Station => {
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

export const metered = (first: string, second: string): Station =>
  shack({ meter: 'swr-meter-200w', tuner: 'automatic-tuner', dipole: 'dipole' }, [
    ['supply.out > tuner.power', lead(20, 1, 1)],
    `rig.antenna > ${first}.transmitter`,
    `${first}.antenna > ${second}.transmitter`,
    [`${second}.antenna > dipole.feed`, { kind: 'coax-rg-213' }],
  ]);

export const satellite = (lossDb: number): Station => {
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
export const remoteTuner = (maxTuneWatts: number, dbm: number): Station =>
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
export const matrix = (afterMs: number): Station => {
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
export const flowControl = (jack: 'data' | 'ptt'): Station =>
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
export const extension = (set: object): Station => {
  const station = correctStations.find((c) => c.id === 'K23')?.station;
  if (!station) throw new Error('no extension');
  return { ...station, cables: station.cables.map(({ screenAt: _, ...cable }) => ({ ...cable, ...set })) };
};

/** A joint of so many ohms in the plus of a small radio. */
export const joint = (ohms: number): Station =>
  drawStation({
    units: {
      supply: supply(13.2, 10),
      joint: {
        made: made(
          { in: ['dc', 'stud-pair'], out: ['dc', 'stud-pair'] },
          [
            { id: 'plus', type: 'conductor', from: 'in.plus', to: 'out.plus', ohms },
            { id: 'minus', type: 'conductor', from: 'in.minus', to: 'out.minus', ohms: 0.001 },
          ],
          { isolated: 'all' },
        ),
      },
      rig: radio({ receive: 0.3, send: 2, minV: 11.7 }),
    },
    cables: [
      ['supply.out > joint.in', lead(16, 0.5, 5)],
      ['joint.out > rig.power', lead(16, 0.5)],
    ],
  });

/** A hand-held that keys by a current in its microphone line, and an interface whose audio has a capacitor or none. */
export const micLine = (dcOhms: number | null): Station =>
  drawStation({
    units: {
      modem: {
        made: made({ out: ['audio', 'mono-35-jack'] }, [
          {
            id: 'audio',
            type: 'audioSource',
            contact: 'out.tip',
            volts: 0.02,
            ohms: 600,
            ...(dcOhms !== null && { dcOhms }),
          },
        ]),
      },
      handy: {
        made: made(
          { microphone: ['audio', 'mono-35-jack'], antenna: ['rf', 'sma-jack'] },
          [
            { id: 'bias', type: 'pullUp', contact: 'microphone.tip', volts: 3.3, ohms: 4700 },
            { id: 'audio', type: 'audioLoad', contact: 'microphone.tip', ohms: 5000 },
            { id: 'output', type: 'rfSource', port: 'antenna', dbm: 37, when: { on: ['rf'] } },
          ],
          {
            actors: [
              {
                id: 'rf',
                label: 'RF',
                feels: [
                  { type: 'voltageBelow', contact: 'microphone.tip', volts: 1.5 },
                  { type: 'operator', label: 'Press the switch' },
                ],
                operateMs: 20,
                releaseMs: 20,
                does: 'sends',
              },
            ],
          },
        ),
      },
      load: 'dummy-load-100w',
    },
    cables: ['modem.out > handy.microphone', 'handy.antenna > load.input'],
    plan: { frequencyHz: 144_800_000, mode: 'data', duty: 0.3 },
  });
