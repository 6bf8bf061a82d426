import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Headphones and an electret microphone, each on a plug. */
export const headset: UnitKind = {
  name: 'Headset, two plugs',
  group: 'audio',
  summary: '32 Ω stereo on one 3.5 mm plug, electret on the other',
  words: ['boom', 'phones', 'microphone', 'contest'],
  ports: [
    { id: 'phones', label: 'phones', class: 'audio', connector: 'stereo-35-plug', side: 'left', needed: 'optional' },
    { id: 'microphone', label: 'mic', class: 'audio', connector: 'stereo-35-plug', side: 'right', needed: 'optional' },
  ],
  elements: [
    { id: 'left', type: 'audioLoad', contact: 'phones.tip', ohms: 32, fullVolts: 0.3, watts: 0.1 },
    { id: 'right', type: 'audioLoad', contact: 'phones.ring', ohms: 32, fullVolts: 0.3, watts: 0.1 },
    {
      id: 'capsule',
      type: 'audioSource',
      contact: 'microphone.tip',
      volts: 0.02,
      ohms: 2200,
      dcOhms: 6000,
      maxDcVolts: 10,
      minDcVolts: 1,
    },
  ],
  isolated: 'all',
  source: 'typical figures',
};
