import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** 1:1 for audio: the signal passes, the ground does not. */
export const isolationTransformer: UnitKind = {
  name: 'Isolation transformer, 600 Ω',
  group: 'audio',
  summary: '1:1, up to 1 V; 3.5 mm mono on both sides',
  words: ['hum', 'ground loop', '600 ohm', 'audio transformer'],
  ports: [
    { id: 'input', label: 'in', class: 'audio', connector: 'mono-35-jack', side: 'left', needed: 'always' },
    { id: 'output', label: 'out', class: 'audio', connector: 'mono-35-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'primary',
      type: 'audioLoad',
      contact: 'input.tip',
      ohms: 600,
      overloadVolts: 2,
      dcOhms: 50,
      maxDcVolts: 0.1,
    },
    {
      id: 'secondary',
      type: 'audioSource',
      contact: 'output.tip',
      volts: 2,
      ohms: 600,
      follows: { load: 'primary', gainDb: 0 },
      dcOhms: 50,
    },
  ],
  isolated: 'all',
  source: 'typical figures',
};
