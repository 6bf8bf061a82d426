import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** The microphone of a transceiver, with its PTT switch. */
export const handMicrophone: UnitKind = {
  name: 'Hand microphone, 8-way',
  group: 'audio',
  summary: 'PTT on pin 2, audio on pin 1, ground on pin 8; pin plans differ: look into the manual',
  words: ['mic', 'ptt', 'fist'],
  ports: [
    { id: 'plug', label: '', class: 'control', connector: 'microphone-8-plug', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'capsule',
      type: 'audioSource',
      contact: 'plug.pin1',
      volts: 0.02,
      ohms: 600,
      reference: 'plug.pin8',
      dcOhms: 6000,
      maxDcVolts: 10,
      minDcVolts: 1,
    },
    {
      id: 'ptt',
      type: 'contactPair',
      from: 'plug.pin2',
      to: 'plug.pin8',
      device: 'relay',
      onOhms: 0.1,
      maxVolts: 30,
      maxAmps: 1,
      when: { on: ['pressed'] },
    },
  ],
  actors: [
    {
      id: 'pressed',
      label: 'PTT',
      feels: { type: 'operator', label: 'Press the microphone’s switch' },
      operateMs: 0,
      releaseMs: 0,
      does: 'keys',
      unpowered: true,
    },
  ],
  isolated: 'all',
  source: 'typical figures; the pin plan belongs to the transceiver',
};
