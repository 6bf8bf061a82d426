import type { ElementOf, UnitElement } from '../../core/station/schema/unit-kind.ts';
import { load, made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';
import type { Trouble } from './case.ts';
import { lead, supply } from './parts.ts';

const jack = 'stereo-35-jack';
const output = (set: Partial<ElementOf<'audioSource'>>, connector = jack) => ({
  made: made({ out: ['audio', connector] }, [
    { id: 'signal', type: 'audioSource', contact: 'out.tip', volts: 0.5, ohms: 10, ...set },
  ]),
});
const input = (set: Partial<ElementOf<'audioLoad'>>, more: UnitElement[] = [], connector = jack) => ({
  made: made({ in: ['audio', connector] }, [
    { id: 'input', type: 'audioLoad', contact: 'in.tip', ohms: 10_000, ...set },
    ...more,
  ]),
});
const between = (from: object, to: object, route: object = {}) =>
  drawStation({ units: { a: from, b: to } as never, cables: [['a.out > b.in', route]] });

/** A loudspeaker output with its signal on both contacts; the speaker’s lead joins one to its box, or nothing. */
const bridged = (grounded: boolean) =>
  drawStation({
    units: {
      rig: {
        made: made(
          { speaker: ['audio', jack] },
          [
            {
              id: 'bridge',
              type: 'audioSource',
              contact: 'speaker.tip',
              reference: 'speaker.ring',
              volts: 3,
              ohms: 0.2,
              leastOhms: 4,
            },
          ],
          {},
        ),
      },
      speaker: {
        made: made(
          { in: ['audio', jack] },
          [{ id: 'coil', type: 'audioLoad', contact: 'in.tip', reference: 'in.ring', ohms: 8, watts: 5 }],
          { isolated: 'all' },
        ),
      },
    },
    cables: [
      [
        'rig.speaker > speaker.in',
        grounded ? { plugs: { a: 'mono-35-plug', b: 'stereo-35-plug' }, kind: 'audio-lead' } : {},
      ],
    ],
  });

/** A radio with a long thin minus and a computer at the supply, the audio straight or through a transformer. */
const hum = (isolated: boolean) =>
  drawStation({
    units: {
      supply: supply(13.8, 10),
      radio: {
        made: made({ power: ['dc', 'stud-pair'], out: ['audio', 'mono-35-jack'] }, [
          load('power.plus', 'power.minus', 4),
          { id: 'signal', type: 'audioSource', contact: 'out.tip', volts: 0.3, ohms: 600 },
        ]),
      },
      computer: {
        made: made({ power: ['dc', 'stud-pair'], in: ['audio', 'mono-35-jack'] }, [
          load('power.plus', 'power.minus', 1),
          { id: 'input', type: 'audioLoad', contact: 'in.tip', ohms: 10_000, fullVolts: 0.3, overloadVolts: 2 },
        ]),
      },
      ...(isolated && { transformer: 'isolation-transformer' }),
    },
    cables: [
      ['supply.out > radio.power', lead(12, 3, 10)],
      ['supply.out > computer.power', lead(14, 0.5, 5)],
      ...(isolated
        ? ['radio.out > transformer.input', 'transformer.output > computer.in']
        : ([['radio.out > computer.in', { lengthM: 2 }]] as [string, object][])),
    ] as never,
  });

type Data = Pick<ElementOf<'dataEnd'>, 'standard' | 'role'>;
const serial = (one: Data, two: Data) =>
  drawStation({
    units: {
      a: {
        made: made({ port: ['data', 'mono-35-jack'] }, [{ id: 'data', type: 'dataEnd', contact: 'port.tip', ...one }]),
      },
      b: {
        made: made({ port: ['data', 'mono-35-jack'] }, [{ id: 'data', type: 'dataEnd', contact: 'port.tip', ...two }]),
      },
    },
    cables: [['a.port > b.port', { kind: 'key-lead' }]],
  });

/** A computer’s serial plug and a radio’s: transmit on 3 and receive on 2 at the computer; straight or crossed. */
const nine = (crossed: boolean) => {
  const end = (transmit: string, receive: string) => ({
    made: made({ serial: ['data', 'd-sub-9-jack'] }, [
      {
        id: 'transmit',
        type: 'dataEnd',
        contact: `serial.${transmit}`,
        reference: 'serial.pin5',
        standard: 'rs232',
        role: 'drives',
      },
      {
        id: 'receive',
        type: 'dataEnd',
        contact: `serial.${receive}`,
        reference: 'serial.pin5',
        standard: 'rs232',
        role: 'listens',
      },
    ]),
  });
  return drawStation({
    // The radio is wired like a modem: what the computer transmits on 3 it receives on 3.
    units: { computer: end('pin3', 'pin2'), radio: end('pin2', 'pin3') },
    cables: [
      [
        'computer.serial > radio.serial',
        {
          kind: 'network-lead',
          wiring: [
            { a: 'pin2', b: crossed ? 'pin3' : 'pin2' },
            { a: 'pin3', b: crossed ? 'pin2' : 'pin3' },
            { a: 'pin5', b: 'pin5' },
          ],
        },
      ],
    ],
  });
};

const rod = { made: made({ clamp: ['earth', 'earth-stud'] }, [], { electrode: true }) };

/** Audio, data, earth and connectors. */
export const otherTroubles: Trouble[] = [
  {
    id: 'A01',
    about: 'A loudspeaker’s 2 V in a computer’s microphone input',
    catch: 'yes',
    wrong: between(output({ volts: 2, ohms: 0.5 }), input({ ohms: 5000, fullVolts: 0.02, overloadVolts: 0.1 })),
    // The published lead divides by about fifty.
    right: between(output({ volts: 0.04, ohms: 600 }), input({ ohms: 5000, fullVolts: 0.02, overloadVolts: 0.1 })),
    finds: [{ rule: 'audio/audio-level', at: { unit: 'b', port: 'in' }, values: { volts: 2, limit: 0.1 } }],
  },
  {
    id: 'A02',
    about: 'A mono plug in a bridged loudspeaker jack',
    catch: 'yes',
    wrong: bridged(true),
    right: bridged(false),
    finds: [{ rule: 'audio/two-outputs-joined', at: { unit: 'rig', port: 'speaker' } }],
  },
  {
    id: 'A05',
    about: 'A hand-held’s jack with nearly 3 V of DC, and headphones on it',
    catch: 'yes',
    wrong: between(
      output({ dcOhms: 1e6 }),
      input({ ohms: 32, fullVolts: 0.3, dcOhms: 32, maxDcVolts: 0.1 }, [
        { id: 'offset', type: 'pullUp', contact: 'in.tip', volts: 3, ohms: 47 },
      ]),
    ),
    right: between(output({}), input({ ohms: 32, fullVolts: 0.3, dcOhms: 32, maxDcVolts: 0.1 })),
    finds: [{ rule: 'audio/dc-on-audio', at: { unit: 'b', port: 'in' } }],
  },
  {
    id: 'A07',
    about: 'Hum through two grounds: a radio and a computer, an audio lead between them',
    catch: 'yes',
    wrong: hum(false),
    right: hum(true),
    finds: [{ rule: 'audio/audio-ground-loop', at: { unit: 'computer', port: 'in' } }],
  },
  {
    id: 'N01',
    about: 'An RS-232 port on a 3.3 V input',
    catch: 'yes',
    wrong: serial({ standard: 'rs232', role: 'drives' }, { standard: 'ttl3v3', role: 'listens' }),
    right: serial({ standard: 'ttl3v3', role: 'drives' }, { standard: 'ttl3v3', role: 'listens' }),
    finds: [{ rule: 'keying/logic-levels', at: { unit: 'b', port: 'port' }, values: { volts: 12, limit: 3.6 } }],
  },
  {
    id: 'N02',
    about: 'A crossed serial lead where a straight one belongs: transmit to transmit',
    catch: 'yes',
    wrong: nine(true),
    right: nine(false),
    finds: [{ rule: 'keying/logic-levels', at: { unit: 'radio', port: 'serial' } }],
  },
  {
    id: 'E01',
    about: 'The mast’s rods and the house’s, with nothing between them',
    catch: 'yes',
    wrong: drawStation({ units: { mast: rod, house: rod } }),
    right: drawStation({ units: { mast: rod, house: rod }, cables: ['mast.clamp > house.clamp'] }),
    finds: [{ rule: 'drawing/earths-apart', at: { unit: 'mast' } }],
  },
  {
    id: 'M06',
    about: 'One barrel plug for 5 V, 12 V and a unit with its centre minus',
    catch: 'yes',
    wrong: barrels(['barrel-21-jack', 'barrel-21-jack']),
    right: barrels(['barrel-21-jack', 'barrel-25-jack']),
    finds: [{ rule: 'drawing/one-connector-many-jobs', at: { unit: 'a' } }],
  },
  {
    id: 'M07',
    about: 'An adapter made for centre-minus equipment hides the reversal',
    catch: 'yes',
    wrong: adapted(true),
    right: adapted(false),
    finds: [{ rule: 'power/reversed-polarity', at: { unit: 'rig', port: 'power' } }],
  },
];

function barrels([one, two]: [string, string]) {
  const unit = (connector: string, minV: number, absMaxV: number) => ({
    made: made({ power: ['dc', connector] }, [
      { ...load('power.centre', 'power.shell', 0.1), minV, maxV: absMaxV, absMaxV },
    ]),
  });
  return drawStation({
    units: {
      low: supply(5, 2),
      high: supply(13.8, 2),
      a: unit(one, 4.5, 5.5),
      b: unit(two, 11, 15),
    },
    cables: [
      ['low.out > a.power', lead(20, 1, 2)],
      ['high.out > b.power', lead(20, 1, 2)],
    ],
  });
}

function adapted(reversed: boolean) {
  const rig = {
    made: made({ power: ['dc', 'barrel-21-jack'] }, [load('power.centre', 'power.shell', 0.5)]),
  };
  return drawStation({
    units: { supply: supply(13.8, 3), rig },
    cables: [
      [
        'supply.out > rig.power',
        {
          ...lead(20, 1, 1),
          wiring: reversed
            ? [
                { a: 'plus', b: 'shell' },
                { a: 'minus', b: 'centre' },
              ]
            : [
                { a: 'plus', b: 'centre' },
                { a: 'minus', b: 'shell' },
              ],
        },
      ],
    ],
  });
}
