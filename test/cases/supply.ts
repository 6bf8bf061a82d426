import type { Trouble } from './case.ts';
import { battery, breaks, lead, radio, supply, swapped } from './parts.ts';
import {
  beacon,
  cutOff,
  floated,
  fromBattery,
  laptop,
  lithium,
  monitored,
  relayJoin,
  shuntDiode,
  solar,
  station,
  twoBatteries,
  usbKit,
} from './supply-stations.ts';

const hf = { receive: 1, send: 20 };

/** Supplies, batteries, leads and fuses. */
export const supplyTroubles: Trouble[] = [
  {
    id: 'D01',
    about: 'A 100 W transceiver on a resting car battery: clean in receive, distorted at full power',
    catch: 'yes',
    // 12.43 V at rest at 73 % charge, 15 mΩ inside, 3 m of 12 AWG each way: 11.5 V at 20 A.
    wrong: fromBattery(radio(hf), lead(12, 3, 20), battery({ charge: 0.73 })),
    right: fromBattery(radio(hf), lead(10, 1.5, 25), { kind: 'vehicle-battery', settings: { engine: 'running' } }),
    finds: [{ rule: 'power/under-voltage', at: { unit: 'rig', port: 'power' }, values: { volts: 11.5 }, within: 0.01 }],
  },
  {
    id: 'D04',
    about: 'A marine VHF that switches itself off at every press: resistance in its feed',
    catch: 'partly',
    wrong: fromBattery(radio({ receive: 0.4, send: 6, minV: 10.8 }), lead(18, 9, 7)),
    right: fromBattery(radio({ receive: 0.4, send: 6, minV: 10.8 }), lead(12, 3, 10)),
    finds: [{ rule: 'power/under-voltage', at: { unit: 'rig', port: 'power' } }],
  },
  {
    id: 'D05',
    about: 'Which gauge for a marine VHF lead: whatever was to hand',
    catch: 'yes',
    wrong: fromBattery(radio({ receive: 0.4, send: 6, minV: 10 }), lead(16, 6, 10)),
    right: fromBattery(radio({ receive: 0.4, send: 6, minV: 10 }), lead(10, 6, 10)),
    // 2 × 6 m of 16 AWG (13.2 mΩ/m): 0.95 V in the copper.
    finds: [{ rule: 'power/voltage-drop', at: { unit: 'rig', port: 'power' }, values: { drop: 1.1 }, within: 0.15 }],
  },
  {
    id: 'D06',
    about: 'A 40 W radio on the thin lead of a lighter-socket plug',
    catch: 'yes',
    wrong: station(
      { battery: battery(), socket: 'vehicle-outlet', rig: radio({ receive: 0.5, send: 10, minV: 11 }) },
      [
        ['battery.out > socket.battery', lead(14, 1, 15)],
        ['socket.out > rig.power', lead(18, 3)],
      ],
      { mode: 'voice', duty: 1 },
    ),
    right: fromBattery(radio({ receive: 0.5, send: 10, minV: 11 }), lead(12, 3, 15)),
    finds: [
      { rule: 'power/wire-overloaded', at: { cable: 'd2' }, values: { amps: 10 } },
      { rule: 'power/voltage-drop', at: { unit: 'rig', port: 'power' } },
    ],
  },
  {
    id: 'D07',
    about: 'An 11 A supply asked for 13 A while the packet radio sends',
    catch: 'yes',
    wrong: station(
      { supply: supply(13.8, 11), packet: radio({ receive: 1, send: 12 }), modem: radio({ receive: 1, send: 1 }) },
      [
        ['supply.out > packet.power', lead(12, 1, 20)],
        ['supply.out > modem.power', lead(16, 1, 3)],
      ],
    ),
    right: station(
      { supply: supply(13.8, 25), packet: radio({ receive: 1, send: 12 }), modem: radio({ receive: 1, send: 1 }) },
      [
        ['supply.out > packet.power', lead(12, 1, 20)],
        ['supply.out > modem.power', lead(16, 1, 3)],
      ],
    ),
    finds: [{ rule: 'power/supply-overloaded', at: { unit: 'supply' }, values: { amps: 13, rated: 11 } }],
  },
  {
    id: 'D12',
    about: 'A radio’s minus landed on the battery side of the current monitor',
    catch: 'yes',
    wrong: monitored('strip.two > rig.power'),
    right: monitored('behind.two > rig.power'),
    finds: [{ rule: 'power/switch-bypassed', at: { unit: 'monitor' } }],
  },
  {
    id: 'D13',
    about: 'Leads reversed, a shunt diode and no fuse: the lead melts instead',
    catch: 'yes',
    wrong: station({ battery: battery(), rig: radio({ receive: 0.5, send: 3, inside: [shuntDiode] }) }, [
      ['battery.out > rig.power', { ...lead(18, 1), ...swapped }],
    ]),
    right: station({ battery: battery(), rig: radio({ receive: 0.5, send: 3, inside: [shuntDiode] }) }, [
      ['battery.out > rig.power', lead(18, 1, 5)],
    ]),
    finds: [
      { rule: 'power/reversed-polarity', at: { unit: 'rig', port: 'power' } },
      { rule: 'power/no-fuse', at: { cable: 'd1' } },
    ],
  },
  {
    id: 'D19',
    about: 'A 5 V beacon kit on the 12 V bus',
    catch: 'yes',
    wrong: station({ supply: supply(13.8, 3), beacon }, [['supply.out > beacon.power', lead(18, 1)]]),
    right: station({ supply: supply(5, 3), beacon }, [['supply.out > beacon.power', lead(18, 1)]]),
    finds: [{ rule: 'power/over-voltage', at: { unit: 'beacon', port: 'power' }, values: { volts: 13.8, limit: 5.5 } }],
  },
  {
    id: 'D20',
    about: 'A step-up adapter whose output minus sits on plus 12 V, and a serial lead from the laptop to the radio',
    catch: 'yes',
    wrong: laptop('power.plus'),
    right: laptop('power.minus'),
    finds: [{ rule: 'power/short-circuit', at: { unit: 'supply' } }],
  },
  {
    id: 'D21',
    about: 'Two switch-mode supplies meet through a charging relay',
    catch: 'yes',
    wrong: station(
      { one: supply(13.8, 20), two: supply(14.2, 5), relay: relayJoin, rig: radio({ receive: 1, send: 10 }) },
      [
        ['one.out > relay.one', lead(12, 1)],
        ['two.out > relay.two', lead(12, 1)],
        ['relay.out > rig.power', lead(12, 1)],
      ],
    ),
    right: station(
      { one: supply(13.8, 20), two: supply(14.2, 20), joiner: 'diode-joiner', rig: radio({ receive: 1, send: 10 }) },
      [
        ['one.out > joiner.one', lead(10, 1)],
        ['two.out > joiner.two', lead(10, 1)],
        ['joiner.output > rig.power', lead(10, 1)],
      ],
    ),
    finds: [{ rule: 'power/supplies-in-parallel', at: { unit: 'two' } }],
  },
  {
    id: 'D23',
    about: 'A linear supply whose pass transistor can put its raw 20 V on every radio',
    catch: 'partly',
    wrong: station({ supply: supply(13.8, 20, { faultVolts: 20 }), rig: radio({ receive: 1, send: 10 }) }, [
      ['supply.out > rig.power', lead(12, 1, 15)],
    ]),
    right: station({ supply: supply(13.8, 20), rig: radio({ receive: 1, send: 10 }) }, [
      ['supply.out > rig.power', lead(12, 1, 15)],
    ]),
    finds: [{ rule: 'power/supply-runaway', at: { unit: 'supply' }, values: { volts: 20, limit: 16 } }],
  },
  {
    id: 'D24',
    about: 'A large lithium battery that drops out: the peak trips its protection',
    catch: 'partly',
    wrong: fromBattery(radio({ receive: 2, send: 60, minV: 11 }), lead(4, 1, 60), lithium(50)),
    right: fromBattery(radio({ receive: 2, send: 22, minV: 11 }), breaks(lead(10, 1, 25)), lithium(50)),
    finds: [{ rule: 'power/supply-overloaded', at: { unit: 'battery' }, values: { amps: 60 } }],
  },
  {
    id: 'D26',
    about: 'How long on 35 Ah with a 100 W radio: not the evening',
    catch: 'yes',
    wrong: fromBattery(radio({ receive: 1, send: 22, minV: 10.5 }), lead(10, 1, 25), battery({ ampHours: 35 }), {
      duty: 1,
      sendShare: 0.25,
      hoursPerDay: 6,
    }),
    right: fromBattery(radio({ receive: 1, send: 22, minV: 10.5 }), lead(10, 1, 25), battery({ ampHours: 35 }), {
      duty: 0.4,
      sendShare: 0.25,
      hoursPerDay: 2,
    }),
    finds: [{ rule: 'power/battery-too-small', at: { unit: 'battery' }, values: { amps: 6.25 }, within: 0.02 }],
  },
  {
    id: 'D27',
    about: 'A contest on a battery that was meant for casual contacts',
    catch: 'yes',
    wrong: fromBattery(radio({ receive: 2, send: 20, minV: 10.5 }), lead(10, 1, 25), battery({ ampHours: 46 }), {
      duty: 1,
      sendShare: 0.5,
      hoursPerDay: 12,
    }),
    right: fromBattery(radio({ receive: 2, send: 20, minV: 10.5 }), lead(10, 1, 25), battery({ ampHours: 360 }), {
      duty: 0.4,
      sendShare: 0.5,
      hoursPerDay: 12,
    }),
    // Half of the time 20 A, half 2 A.
    finds: [
      { rule: 'power/battery-too-small', at: { unit: 'battery' }, values: { amps: 11, plan: '12' }, within: 0.01 },
    ],
  },
  {
    id: 'D28',
    about: 'A fuse chosen by the average: 22 A key down on 15 A',
    catch: 'yes',
    wrong: station({ supply: supply(13.8, 30), rig: radio({ receive: 1, send: 22 }) }, [
      ['supply.out > rig.power', lead(10, 1, 15)],
    ]),
    right: station({ supply: supply(13.8, 30), rig: radio({ receive: 1, send: 22 }) }, [
      ['supply.out > rig.power', lead(10, 1, 25)],
    ]),
    finds: [{ rule: 'power/fuse-will-open', at: { cable: 'd1' }, values: { amps: 22, rated: 15 } }],
  },
  {
    id: 'D29',
    about: 'The fuse at the radio, metres of lead before it',
    catch: 'yes',
    wrong: fromBattery(radio(hf), lead(10, 2, 25, 1.8)),
    right: fromBattery(radio(hf), lead(10, 1.5, 25, 0.15)),
    finds: [{ rule: 'power/no-fuse', at: { cable: 'd1' }, values: { far: 1.8 } }],
  },
  {
    id: 'D32',
    about: 'Two panels in series on a frosty morning',
    catch: 'yes',
    wrong: solar({ volts: 44, maxVolts: 50.6, amps: 5.5, peakAmps: 5.8, sourceOhms: 1.2 }),
    right: solar({ volts: 22, maxVolts: 25, amps: 5.5, peakAmps: 5.8, sourceOhms: 0.6 }),
    finds: [
      { rule: 'power/unregulated', at: { unit: 'controller', port: 'panel' }, values: { open: 50.6, limit: 50 } },
    ],
  },
  {
    id: 'D34',
    about: 'A cut-off in the minus that a braid goes round',
    catch: 'yes',
    wrong: cutOff(true),
    right: cutOff(false),
    finds: [{ rule: 'power/switch-bypassed', at: { unit: 'cutoff' } }],
  },
  {
    id: 'D36',
    about: 'A supply sized for the radio, not for radio and recharge',
    catch: 'yes',
    wrong: floated(supply(13.2, 30), 20),
    right: floated(supply(13.2, 45), 20),
    finds: [{ rule: 'power/charge-overloads', at: { unit: 'supply' }, values: { demand: 42 } }],
  },
  {
    id: 'D37',
    about: 'An old and a new battery of different size side by side',
    catch: 'yes',
    wrong: twoBatteries(battery({ ampHours: 100 }), battery({ ampHours: 28, chemistry: 'agm' })),
    right: twoBatteries(battery({ ampHours: 100 }), battery({ ampHours: 100 })),
    finds: [{ rule: 'power/supplies-in-parallel', at: { unit: 'two' } }],
  },
  {
    id: 'D38',
    about: 'A 500 W amplifier on a 30 A lead',
    catch: 'yes',
    wrong: station({ supply: supply(14, 80), amplifier: radio({ receive: 1, send: 65, minV: 12, absMaxV: 16 }) }, [
      ['supply.out > amplifier.power', lead(10, 2, 30)],
    ]),
    right: station({ supply: supply(14, 80), amplifier: radio({ receive: 1, send: 65, minV: 12, absMaxV: 16 }) }, [
      ['supply.out > amplifier.power', lead(4, 2, 70)],
    ]),
    finds: [
      { rule: 'power/wire-overloaded', at: { cable: 'd1' }, values: { amps: 65 } },
      { rule: 'power/fuse-will-open', at: { cable: 'd1' } },
    ],
  },
  {
    id: 'D39',
    about: 'The computer powers half of the kit transceiver through USB',
    catch: 'yes',
    wrong: usbKit(true),
    right: usbKit(false),
    finds: [{ rule: 'power/back-feed', at: { unit: 'kit', port: 'usb' }, values: { volts: 5 } }],
  },
];
