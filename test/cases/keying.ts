import type { Actor, UnitElement } from '../../core/station/schema/unit-kind.ts';
import { made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';
import type { Trouble } from './case.ts';
import { lead, supply } from './parts.ts';
import { antenna, shack } from './rf-stations.ts';

const bias = (contact: string, volts = 5, ohms = 4700): UnitElement => ({
  id: 'bias',
  type: 'pullUp',
  contact,
  volts,
  ohms,
});
const low = (contact: string, volts = 1) => ({ type: 'voltageBelow', contact, volts }) as const;
const actor = (id: string, operateMs: number, releaseMs: number, set: Partial<Actor> = {}): Actor => ({
  id,
  label: id,
  feels: low('line.tip'),
  operateMs,
  releaseMs,
  ...set,
});

/** A transmitter that makes 10 W so long after its line. */
const exciter = (afterMs: number, tailMs = 2) => ({
  made: made(
    { line: ['control', 'mono-35-jack'], antenna: ['rf', 'uhf-jack'] },
    [bias('line.tip'), { id: 'output', type: 'rfSource', port: 'antenna', dbm: 40, when: { on: ['rf'] } }],
    { actors: [actor('rf', afterMs, tailMs, { does: 'sends' })] },
  ),
});

/** An amplifier whose relay takes its time; a second pole for the input where asked for. */
const amplifier = (relayMs: number, releaseMs: number, set: Partial<Actor> = {}) => ({
  made: made(
    { line: ['control', 'mono-35-jack'], input: ['rf', 'uhf-jack'], output: ['rf', 'uhf-jack'] },
    [
      bias('line.tip', 12),
      { id: 'past', type: 'rfPath', a: 'input', b: 'output', lossDb: 0.2, isolationDb: 40, when: { off: ['relay'] } },
      { id: 'over', type: 'rfPath', a: 'input', b: 'output', lossDb: 0.2, isolationDb: 40, when: { on: ['relay'] } },
    ],
    { actors: [actor('relay', relayMs, releaseMs, { does: 'changesOver', ...set })] },
  ),
});

/** A foot switch with two poles, a jack for each. */
const twoPoles = {
  made: made(
    { one: ['control', 'mono-35-jack'], two: ['control', 'mono-35-jack'] },
    ['one', 'two'].map(
      (jack): UnitElement => ({
        id: jack,
        type: 'contactPair',
        from: `${jack}.tip`,
        to: `${jack}.sleeve`,
        device: 'relay',
        onOhms: 0.1,
        maxVolts: 50,
        maxAmps: 1,
        when: { on: ['foot'] },
      }),
    ),
    {
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
    },
  ),
};

const chain = (units: object, cables: unknown[]) =>
  drawStation({
    units: { key: twoPoles, load: 'dummy-load-100w', ...units } as never,
    cables: ['tx.antenna > amp.input', 'amp.output > load.input', ...cables] as never,
    plan: { frequencyHz: 14_060_000, mode: 'voice', duty: 0.2 },
  });
/** One foot on transmitter and amplifier together. */
const together = (tx: object, amp: object) => chain({ tx, amp }, ['key.one > tx.line', 'key.two > amp.line']);

/** A valve amplifier's relay line of so many volts on a contact of a transceiver, or on an adapter that the contact drives. */
const lineOn = (volts: number, adapter: boolean) =>
  shack(
    {
      amp: {
        made: made(
          { key: ['control', 'phono-jack'] },
          [{ id: 'line', type: 'pullUp', contact: 'key.centre', volts, ohms: Math.abs(volts) * 20 }],
          { actors: [{ ...actor('relay', 15, 10), feels: { type: 'voltageBelow', contact: 'key.centre', volts: 1 } }] },
        ),
      },
      load: 'dummy-load-100w',
      ...(adapter && { adapter: 'keying-adapter' }),
    },
    [
      'rig.antenna > load.input',
      ...((adapter
        ? [['supply.out > adapter.power', lead(20, 1, 1)], 'rig.amplifier > adapter.line', 'adapter.out > amp.key']
        : ['rig.amplifier > amp.key']) as never[]),
    ],
  );

/** A keyer's transistor on a grid-block line at −34.5 V, or by way of a reed relay. */
const gridBlock = (adapter: boolean) =>
  drawStation({
    units: {
      supply: supply(13.8, 3),
      keyer: 'keyer',
      paddle: 'paddle',
      ...(adapter && { adapter: 'keying-adapter' }),
      rig: {
        made: made(
          { key: ['control', 'mono-635-jack'] },
          [{ id: 'grid', type: 'pullUp', contact: 'key.tip', volts: -34.5, ohms: 22_000 }],
          {
            actors: [
              {
                ...actor('keyed', 1, 1),
                feels: { type: 'voltageAbove', contact: 'key.tip', volts: -5, reference: 'key.sleeve' },
              },
            ],
          },
        ),
      },
    },
    cables: [
      'paddle.out > keyer.paddle',
      ...((adapter
        ? [['supply.out > adapter.power', lead(20, 1, 1)], 'keyer.out > adapter.line', 'adapter.out > rig.key']
        : ['keyer.out > rig.key']) as never[]),
    ],
  });

/** One output keys an amplifier that needs less than 1.4 V through so many diodes in a row. */
const steered = (diodes: number) => {
  const units = Object.fromEntries(Array.from({ length: diodes }, (_, i) => [`splitter${i}`, 'diode-splitter']));
  const names = Object.keys(units);
  const links = names.slice(1).map((name, i) => `${name}.one > ${names[i]}.input`);
  return drawStation({
    units: {
      supply: supply(13.8, 3),
      amp: {
        made: made(
          { power: ['dc', 'stud-pair'], key: ['control', 'phono-jack'] },
          [{ id: 'bias', type: 'pullUp', contact: 'key.centre', volts: 12, ohms: 1200 }],
          { actors: [{ ...actor('relay', 10, 8), feels: low('key.centre', 1.4) }] },
        ),
      },
      key: 'footswitch',
      ...units,
    },
    cables: [
      ['supply.out > amp.power', lead(18, 1, 3)],
      [`${names[0]}.one > amp.key`, {}],
      ...links.map((link): [string, object] => [link, {}]),
      [`${names.at(-1)}.input > key.plug`, {}],
    ],
  });
};

/** A hand microphone on a modular plug; the pins one to one, or counted from the other side. */
const modular = (reversed: boolean) => {
  const order = Array.from({ length: 8 }, (_, i) => i + 1);
  return drawStation({
    units: {
      microphone: {
        made: made(
          { lead: ['control', 'rj45-jack'] },
          [
            { id: 'case', type: 'conductor', from: 'lead.pin1', to: 'lead.pin6', ohms: 0.1 },
            {
              id: 'ptt',
              type: 'contactPair',
              from: 'lead.pin3',
              to: 'lead.pin1',
              device: 'relay',
              onOhms: 0.1,
              maxVolts: 30,
              maxAmps: 0.5,
              when: { on: ['hand'] },
            },
          ],
          {
            isolated: 'all',
            actors: [
              {
                id: 'hand',
                label: 'PTT',
                feels: { type: 'operator', label: 'Press' },
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
          { microphone: ['control', 'rj45-jack'], antenna: ['rf', 'uhf-jack'] },
          [
            { id: 'bias', type: 'pullUp', contact: 'microphone.pin3', volts: 5, ohms: 4700 },
            { id: 'ground', type: 'conductor', from: 'microphone.pin1', to: 'chassis', ohms: 0.01 },
            { id: 'shield', type: 'conductor', from: 'microphone.pin8', to: 'chassis', ohms: 0.01 },
            { id: 'output', type: 'rfSource', port: 'antenna', dbm: 47, when: { on: ['rf'] } },
          ],
          { actors: [actor('rf', 10, 5, { does: 'sends', feels: low('microphone.pin3') })] },
        ),
      },
      load: 'dummy-load-100w',
    },
    cables: [
      [
        'microphone.lead > rig.microphone',
        {
          kind: 'network-lead',
          wiring: order.map((pin) => ({ a: `pin${pin}`, b: `pin${reversed ? 9 - pin : pin}` })),
        },
      ],
      'rig.antenna > load.input',
    ],
    plan: { mode: 'voice', duty: 0.2, frequencyHz: 14_200_000 },
  });
};

/** An interface whose output is high at rest, on a radio that sends on a high or on a low line. */
const inverted = (sendsOnHigh: boolean) =>
  drawStation({
    units: {
      port: {
        made: made(
          { ptt: ['control', 'mono-35-jack'] },
          [
            { id: 'high', type: 'pullUp', contact: 'ptt.tip', volts: 5, ohms: 1000 },
            {
              id: 'switch',
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
          [{ id: 'output', type: 'rfSource', port: 'antenna', dbm: 44, when: { on: ['rf'] } }],
          {
            actors: [
              actor('rf', 10, 5, {
                does: 'sends',
                feels: sendsOnHigh ? { type: 'voltageAbove', contact: 'ptt.tip', volts: 3 } : low('ptt.tip'),
              }),
            ],
          },
        ),
      },
      load: 'dummy-load-100w',
    },
    cables: ['port.ptt > rig.ptt', 'rig.antenna > load.input'],
    plan: { mode: 'data', duty: 0.5, frequencyHz: 14_074_000 },
  });

/** A relay's coil on a supply of so many volts, by a foot. */
const coil = (volts: number, relay: string) =>
  drawStation({
    units: {
      supply: supply(volts, 3),
      driver: {
        made: made(
          { power: ['dc', 'stud-pair'], out: ['control', 'phono-jack'] },
          [
            {
              id: 'switch',
              type: 'contactPair',
              from: 'power.plus',
              to: 'out.centre',
              device: 'relay',
              onOhms: 0.05,
              maxVolts: 50,
              maxAmps: 2,
              when: { on: ['foot'] },
            },
            { id: 'minus', type: 'conductor', from: 'power.minus', to: 'out.shell', ohms: 0.01 },
          ],
          {
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
          },
        ),
      },
      relay,
      load: 'dummy-load-100w',
    },
    cables: [['supply.out > driver.power', lead(18, 1, 3)], 'driver.out > relay.coil', 'relay.common > load.input'],
  });

/** A transmitter and a receiver on antennas of their own, the receiver’s mute on the transmitter’s contact. */
const separates = (receiver: string) => {
  const station = drawStation({
    units: {
      supply: supply(13.8, 30),
      tx: 'transmitter-100w',
      key: 'straight-key',
      receiver,
      one: antenna(50),
      two: antenna(50),
    },
    cables: [
      ['supply.out > tx.power', lead(10, 1, 25)],
      ['supply.out > receiver.power', { ...lead(18, 1, 2), ...(receiver === 'receiver-with-mute' ? centreMinus : {}) }],
      'key.out > tx.key',
      'tx.mute > receiver.mute',
      ['tx.antenna > one.feed', { kind: 'coax-rg-213' }],
      'receiver.antenna > two.feed',
    ],
    plan: { frequencyHz: 10_120_000 },
  });
  const [a, b] = [
    { unit: 'one', port: 'feed' },
    { unit: 'two', port: 'feed' },
  ] as const;
  return { ...station, couplings: [{ a, b, lossDb: 70 }] };
};
const centreMinus = {
  wiring: [
    { a: 'plus', b: 'shell' },
    { a: 'minus', b: 'centre' },
  ],
};

/** A straight key on a transceiver’s paddle jack. */
const keyPlug = (plug: string) =>
  shack({ key: 'straight-key', load: 'dummy-load-100w' }, [
    [
      'key.out > rig.key',
      { kind: 'key-lead', plugs: { a: 'mono-635-plug', b: plug }, ...(plug.startsWith('stereo') && tipOnly) },
    ],
    'rig.antenna > load.input',
  ]);
const tipOnly = {
  wiring: [
    { a: 'tip', b: 'tip' },
    { a: 'sleeve', b: 'sleeve' },
  ],
};

/** A noise canceller before a transmitter that makes RF so long after its line. */
const cancelled = (afterMs: number) =>
  drawStation({
    units: {
      supply: supply(13.8, 5),
      key: twoPoles,
      tx: exciter(afterMs, 0),
      canceller: 'noise-canceller',
      load: 'dummy-load-100w',
    },
    cables: [
      ['supply.out > canceller.power', lead(20, 1, 1)],
      'key.one > tx.line',
      'key.two > canceller.line',
      'tx.antenna > canceller.radio',
      'canceller.antenna > load.input',
    ],
    plan: { mode: 'data', duty: 0.3, frequencyHz: 14_236_000 },
  });

/** Who switches whom, when, and at what voltage. */
export const keyingTroubles: Trouble[] = [
  {
    id: 'C02',
    about: 'The microphone’s PTT on the exciter and on the sequencer together',
    catch: 'yes',
    wrong: sequenced('key.two > tx.line'),
    right: sequenced('sequencer.exciter > tx.line'),
    finds: [{ rule: 'keying/hot-switched', at: { unit: 'amp' } }],
  },
  {
    id: 'C05',
    about: 'A relay of 40 ms behind a driver of 5 ms, and 45 ms of delay in the program',
    catch: 'yes',
    wrong: together(exciter(46), amplifier(45, 10, { bounceMs: 5 })),
    right: together(exciter(200), amplifier(45, 10, { bounceMs: 5 })),
    finds: [{ rule: 'keying/hot-switched', at: { unit: 'amp' } }],
  },
  {
    id: 'C06',
    about: 'A noise canceller in the line, and a program that starts PTT and RF together',
    catch: 'yes',
    wrong: cancelled(2),
    right: cancelled(50),
    finds: [{ rule: 'keying/hot-switched', at: { unit: 'canceller' }, values: { time: 8 } }],
  },
  {
    id: 'C07',
    about: 'An exciter that drives the amplifier before its output relay has closed',
    catch: 'yes',
    wrong: together(exciter(8), amplifier(15, 10, { bounceMs: 3 })),
    right: together(exciter(25), amplifier(15, 10, { bounceMs: 3 })),
    finds: [{ rule: 'keying/hot-switched', at: { unit: 'amp' }, values: { time: 7 } }],
  },
  {
    id: 'C12',
    about: '−125 V on the key line of an old amplifier, a modern transceiver’s contact on it',
    catch: 'yes',
    wrong: lineOn(-125, false),
    right: lineOn(-125, true),
    finds: [{ rule: 'keying/line-over-rating', at: { unit: 'rig', port: 'amplifier' }, values: { volts: -125 } }],
  },
  {
    id: 'C13',
    about: 'Two diodes in the key line of an amplifier that needs less than 1.4 V',
    catch: 'yes',
    wrong: steered(3),
    right: steered(1),
    finds: [{ rule: 'keying/line-never-low-enough', at: { unit: 'amp', port: 'key' }, values: { limit: 1.4 } }],
  },
  {
    id: 'C15',
    about: 'An NPN keying transistor on a grid-block line at −34.5 V',
    catch: 'yes',
    wrong: gridBlock(false),
    right: gridBlock(true),
    finds: [{ rule: 'keying/line-over-rating', at: { unit: 'keyer', port: 'out' } }],
  },
  {
    id: 'C19',
    about: 'Inverted PTT: the radio sends as soon as it is switched on',
    catch: 'yes',
    wrong: inverted(true),
    right: inverted(false),
    finds: [{ rule: 'keying/key-line-stuck', at: { unit: 'rig' } }],
  },
  {
    id: 'C22',
    about: 'A 28 V coax relay on 13.8 V',
    catch: 'yes',
    wrong: coil(13.8, 'coax-relay-28v'),
    right: coil(28, 'coax-relay-28v'),
    finds: [{ rule: 'keying/line-never-low-enough', at: { unit: 'relay', port: 'coil' }, values: { limit: 14 } }],
  },
  {
    id: 'C24',
    about: 'A receiver that hears while its mute jack is shorted, on a contact that closes to send',
    catch: 'yes',
    wrong: separates('receiver-mute-on-open'),
    right: separates('receiver-with-mute'),
    finds: [{ rule: 'keying/mute-inverted', at: { unit: 'receiver' } }],
  },
  {
    id: 'C26',
    about: 'A straight key’s mono plug in a three-contact key jack',
    catch: 'yes',
    wrong: keyPlug('mono-35-plug'),
    right: keyPlug('stereo-35-plug'),
    finds: [{ rule: 'audio/mono-in-stereo', at: { unit: 'rig', port: 'key' } }],
  },
  {
    id: 'C30',
    about: 'A modular microphone plug crimped from the other side',
    catch: 'yes',
    wrong: modular(true),
    right: modular(false),
    finds: [{ rule: 'keying/key-line-stuck', at: { unit: 'rig' } }],
  },
];

/** A foot, a sequencer, an amplifier on its third step, and a transmitter keyed by it or past it. */
function sequenced(keying: string) {
  return drawStation({
    units: {
      supply: supply(13.8, 5),
      key: twoPoles,
      sequencer: 'sequencer',
      tx: exciter(5),
      amp: amplifier(15, 10),
      load: 'dummy-load-100w',
    },
    cables: [
      ['supply.out > sequencer.power', lead(20, 1, 1)],
      'key.one > sequencer.line',
      'sequencer.amp > amp.line',
      keying,
      'tx.antenna > amp.input',
      'amp.output > load.input',
    ],
    plan: { mode: 'voice', duty: 0.2, frequencyHz: 14_200_000 },
  });
}
