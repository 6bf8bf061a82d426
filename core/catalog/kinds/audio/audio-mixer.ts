import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Several receivers in one pair of phones, a resistor in each line. */
export const audioMixer: UnitKind = {
  name: 'Audio mixer, 3 into 1',
  group: 'audio',
  summary: 'Three inputs through 470 Ω to one output; 3.5 mm',
  words: ['combiner', 'so2r', 'monitor'],
  ports: [
    { id: 'one', label: '1', class: 'audio', connector: 'stereo-35-jack', side: 'left', needed: 'optional' },
    { id: 'two', label: '2', class: 'audio', connector: 'stereo-35-jack', side: 'left', needed: 'optional' },
    { id: 'three', label: '3', class: 'audio', connector: 'stereo-35-jack', side: 'left', needed: 'optional' },
    { id: 'output', label: 'phones', class: 'audio', connector: 'stereo-35-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    { id: 'left-one', type: 'conductor', from: 'one.tip', to: 'output.tip', ohms: 470 },
    { id: 'right-one', type: 'conductor', from: 'one.ring', to: 'output.ring', ohms: 470 },
    { id: 'left-two', type: 'conductor', from: 'two.tip', to: 'output.tip', ohms: 470 },
    { id: 'right-two', type: 'conductor', from: 'two.ring', to: 'output.ring', ohms: 470 },
    { id: 'left-three', type: 'conductor', from: 'three.tip', to: 'output.tip', ohms: 470 },
    { id: 'right-three', type: 'conductor', from: 'three.ring', to: 'output.ring', ohms: 470 },
  ],
  source: 'typical figures',
};
