import { noFuse } from '../../../core/rules/power/no-fuse.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const inch = 0.0254;

/** A transceiver on a battery, with a fuse so far from the battery. */
const battery = (atM: number | null, set: object = {}, route = 'battery.out > rig.power') =>
  drawStation({
    units: { battery: 'lead-acid-battery', rig: 'transceiver-100w' },
    cables: [
      [
        route,
        {
          kind: 'lead-awg-10',
          lengthM: 3,
          ...(atM !== null && { fuse: { amps: 30, family: 'blade' as const, atM } }),
          ...set,
        },
      ],
    ],
  });
/** A strip, whose outlets are fused, on so much lead. */
const strip = (lengthM: number) =>
  drawStation({
    units: { battery: 'lead-acid-battery', strip: 'fused-strip', tx: 'cw-transmitter-3w' },
    cables: [
      ['battery.out > strip.input', { kind: 'lead-awg-14', lengthM }],
      ['strip.one > tx.power', { kind: 'lead-awg-20', lengthM: 2 }],
    ],
  });

testRule(noFuse, {
  silent: [
    {
      // 4 A at most into AWG 20, which stands 5 A.
      name: 'a supply that limits below what the wire stands',
      station: drawStation({
        units: { supply: 'bench-supply', tx: 'cw-transmitter-3w' },
        cables: [['supply.out > tx.power', { kind: 'lead-awg-20' }]],
      }),
    },
    {
      name: '30 A at most into AWG 10, just what it stands',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w' },
        cables: [['supply.out > rig.power', { kind: 'lead-awg-10' }]],
      }),
    },
    { name: 'a fuse 0.18 m (7 in) from the battery', station: battery(0.18) },
    { name: 'the same lead laid from the other end', station: battery(3 - 0.18, {}, 'rig.power > battery.out') },
    { name: 'a fused strip at the battery', station: strip(0.15) },
    {
      name: 'a fuse 30 in from the battery, the lead in conduit: 40 in are allowed',
      station: battery(30 * inch, { sheathed: true }),
    },
  ],
  reported: [
    {
      name: 'a fuse 10 in from the battery on a bare lead',
      station: battery(10 * inch),
      message: 'far',
      severity: 'doubt',
      at: { cable: 'd1' },
      values: { far: 0.254 },
    },
    {
      name: 'a fuse 50 in from the battery in conduit: only the longer way from a battery’s own posts is left',
      station: battery(50 * inch, { sheathed: true }),
      message: 'far',
      severity: 'doubt',
      at: { cable: 'd1' },
      values: { far: 1.27 },
    },
    {
      name: 'a fuse 80 in from the battery, conduit or not',
      station: battery(80 * inch, { sheathed: true }),
      message: 'far',
      severity: 'danger',
      at: { cable: 'd1' },
      values: { far: 2.032 },
    },
    {
      name: 'a battery with no fuse at all',
      station: battery(null),
      message: 'bare',
      severity: 'danger',
      at: { cable: 'd1' },
      // AWG 10: 30 A (NEC 240.4(D)); the battery gives 2000 A.
      values: { amps: 2000, limit: 30, wire: 'AWG 10', cable: 'D1', supply: 'battery' },
    },
    {
      name: 'a short lead with no fuse at all is no better',
      station: battery(null, { lengthM: 0.15 }),
      message: 'bare',
      severity: 'danger',
      at: { cable: 'd1' },
      values: { limit: 30 },
    },
    {
      name: 'a switch-mode supply on AWG 18, in one of two hook-ups',
      station: drawStation({
        units: { supply: 'switch-mode-supply', tx: 'cw-transmitter-5w' },
        cables: [
          ['supply.out > tx.power', { kind: 'lead-awg-18', hookups: ['bare'] }],
          [
            'supply.out > tx.power',
            { kind: 'lead-awg-18', fuse: { amps: 3, family: 'blade', atM: 0.05 }, hookups: ['fused'] },
          ],
        ],
        hookups: [
          { id: 'fused', name: 'Fused' },
          { id: 'bare', name: 'Bare' },
        ],
      }),
      message: 'bare',
      severity: 'danger',
      at: { cable: 'd1' },
      values: { amps: 30, limit: 7, wire: 'AWG 18' },
      hookups: ['bare'],
    },
    {
      name: 'an unfused box of jacks carries it on',
      station: drawStation({
        units: { battery: 'lifepo4-battery', box: 'jack-box', receiver: 'receiver-without-mute' },
        cables: [
          ['battery.out > box.input', { fuse: { amps: 5, family: 'blade', atM: 0.1 } }],
          'box.two > receiver.power',
          ['battery.out > receiver.power', { kind: 'lead-awg-24' }],
        ],
      }),
      message: 'bare',
      severity: 'danger',
      at: { cable: 'd3' },
      // 300 A into AWG 24: 2.5 A (AC 43.13-1B table 11-9).
      values: { amps: 300, limit: 2.5 },
    },
    {
      name: 'a fuse half a metre from the battery: right only where the lead is sheathed',
      station: battery(0.5),
      message: 'far',
      severity: 'doubt',
      at: { cable: 'd1' },
      values: { far: 0.5, limit: 30 },
    },
    {
      name: 'a fuse 1.1 m from the battery, more than 40 in',
      station: battery(1.1),
      message: 'far',
      severity: 'danger',
      at: { cable: 'd1' },
      values: { far: 1.1 },
    },
    {
      name: 'a fuse at the radio’s end protects the radio alone',
      station: battery(0.1, {}, 'rig.power > battery.out'),
      message: 'far',
      severity: 'danger',
      at: { cable: 'd1' },
      values: { far: 2.9 },
    },
    {
      name: 'a fused strip two metres from the battery',
      station: strip(2),
      message: 'far',
      severity: 'danger',
      at: { cable: 'd1' },
      values: { far: 2, limit: 15, amps: 2000 },
    },
  ],
});
