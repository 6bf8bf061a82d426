import { shortCircuit } from '../../../core/rules/power/short-circuit.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { awg, blade, holder, joint } from '../ohms.ts';
import { testRule } from '../test-rule.ts';

const crossed = {
  wiring: [
    { a: 'plus', b: 'minus' },
    { a: 'minus', b: 'plus' },
  ],
};
/** A lead with plus and minus joined in the plug at its far end: each core to the same contact. */
const joined = {
  wiring: [
    { a: 'plus', b: 'plus' },
    { a: 'minus', b: 'plus' },
  ],
};
/** A heater of so many ohms of wire, which is metal all the same. */
const heater = (ohms: number) =>
  made(
    { power: ['dc', 'two-pole-30'] },
    [{ id: 'wire', type: 'conductor', from: 'power.plus', to: 'power.minus', ohms }],
    { isolated: 'all' },
  );
/** A switched box whose contact joins plus to its metal, which a load has on minus. */
const wrongSwitch = made(
  { power: ['dc', 'two-pole-15'] },
  [
    load('power.plus', 'power.minus', 0.01),
    {
      id: 'contact',
      type: 'contactPair',
      from: 'power.plus',
      to: 'chassis',
      device: 'relay',
      onOhms: 0.2,
      maxVolts: 30,
      maxAmps: 5,
      when: { on: ['hand'] },
    },
  ],
  {
    actors: [
      {
        id: 'hand',
        label: 'Hand',
        feels: { type: 'operator', label: 'Press' },
        operateMs: 0,
        releaseMs: 0,
        unpowered: true,
      },
    ],
  },
);

testRule(shortCircuit, {
  silent: [
    {
      name: 'a strip with a transmitter and a changeover',
      station: drawStation({
        units: { supply: 'bench-supply', strip: 'fused-strip', tx: 'cw-transmitter-3w', over: 'changeover-by-line' },
        cables: ['supply.out > strip.input', 'strip.one > tx.power', 'strip.two > over.power'],
      }),
    },
    {
      // 1.3 Ω of heating wire at 13.2 V: 10 A, under the battery's 12 A, and more than an ohm.
      name: 'a heater of 1.3 Ω on a battery',
      station: drawStation({
        units: { battery: 'lifepo4-battery', heater: { made: heater(1.3) } },
        cables: ['battery.out > heater.power'],
      }),
    },
    {
      name: 'too much load is no short',
      station: drawStation({
        units: { supply: 'bench-supply', rig: 'transceiver-100w' },
        cables: ['supply.out > rig.power'],
      }),
    },
  ],
  reported: [
    {
      name: 'plus and minus joined in a plug, on a supply that limits',
      station: drawStation({
        units: { supply: 'bench-supply', strip: 'fused-strip' },
        cables: [['supply.out > strip.input', { ...joined, lengthM: 1 }]],
      }),
      message: 'shorted',
      severity: 'danger',
      at: { unit: 'supply' },
      // Out and back through 1 m of AWG 18 (usual for 3 A) and a post each way; the supply holds at its 4 A.
      values: { way: 'D1', ohms: 2 * (joint.post + awg[18]), amps: 4 },
      moments: ['receive'],
    },
    {
      name: 'a battery, a fuse and a lead laid between two outlets the wrong way round, in one of two hook-ups',
      station: drawStation({
        units: { battery: 'lead-acid-battery', strip: 'fused-strip' },
        cables: [
          ['battery.out > strip.input', { kind: 'lead-awg-10', lengthM: 0.5 }],
          ['strip.one > strip.two', { ...crossed, kind: 'lead-awg-14', lengthM: 0.5, hookups: ['wrong'] }],
        ],
        hookups: [
          { id: 'right', name: 'Right' },
          { id: 'wrong', name: 'Wrong' },
        ],
      }),
      message: 'shorted',
      severity: 'danger',
      at: { unit: 'battery' },
      // Outlet 1's fuse, the lead, outlet 2's minus rail: and the same through outlet 2's fuse; the way is one of the two.
      values: {
        ohms: 2 * (2 * joint.stud + 0.5 * awg[10]) + blade[5] + holder + 2 * joint.pole + 0.5 * awg[14] + 0.0005,
        // Both ways together are half of what lies between the studs; 6 mΩ of battery.
        amps:
          12.85 /
          (0.006 +
            2 * (2 * joint.stud + 0.5 * awg[10]) +
            (blade[5] + holder + 2 * joint.pole + 0.5 * awg[14] + 0.0005) / 2),
      },
      hookups: ['wrong'],
    },
    {
      name: 'a box whose contact joins plus to its metal when it is pressed',
      station: drawStation({
        units: { supply: 'switch-mode-supply', box: { made: wrongSwitch } },
        cables: [['supply.out > box.power', { kind: 'lead-awg-10' }]],
      }),
      message: 'off',
      severity: 'danger',
      at: { unit: 'supply' },
      // 0.2 Ω of contact, 5 mΩ from minus to the metal, 0.6 m of AWG 10 each way; the supply goes off.
      values: { way: 'D1, box', ohms: 0.205 + 2 * (joint.stud + joint.pole + 0.6 * awg[10]) },
      moments: ['sending'],
    },
  ],
});
