import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A computer microphone: its capsule lives on the bias. */
export const microphoneElectret: UnitKind = {
  name: 'Microphone, electret',
  group: 'audio',
  summary: '20 mV; needs 2 to 10 V of bias; own lead with a 3.5 mm stereo plug',
  words: ['mic', 'condenser', 'headset', 'computer'],
  ports: [{ id: 'plug', label: '', class: 'audio', connector: 'stereo-35-plug', side: 'right', needed: 'optional' }],
  elements: [
    {
      id: 'capsule',
      type: 'audioSource',
      contact: 'plug.tip',
      volts: 0.02,
      ohms: 2200,
      dcOhms: 6000,
      maxDcVolts: 10,
      minDcVolts: 1,
    },
  ],
  isolated: 'all',
  source: 'typical figures: capsules take some 0.5 mA',
};
