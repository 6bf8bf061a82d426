import type { Connector } from '../../station/schema/connector.ts';

const contacts: Connector['contacts'] = [
  { id: 'tip', name: 'tip', role: 'live' },
  { id: 'ring', name: 'ring 1', role: 'second' },
  { id: 'ring2', name: 'ring 2', role: 'second' },
  { id: 'sleeve', name: 'sleeve', role: 'return' },
];

const figures = {
  family: 'headset-35',
  contacts,
  contactOhms: 0.02,
  amps: 1,
  face: 'stereo',
  source: 'common practice: in one order ring 2 is ground and the sleeve the microphone, in the other the reverse',
} as const;

const shorted = ['stereo-35-jack', 'stereo-35-socket'].map((id) => ({
  with: id,
  joins: [
    ['tip', 'tip'],
    ['ring', 'ring'],
    ['ring2', 'sleeve'],
    ['sleeve', 'sleeve'],
  ] as [string, string][],
  why: 'a stereo jack’s sleeve spring touches both ring 2 and the sleeve of a headset plug',
}));

/** Four contacts on 3.5 mm: what is on ring 2 and on the sleeve belongs to the unit. */
export const headsetConnectors: Record<string, Connector> = {
  'headset-35-jack': { ...figures, name: '3.5 mm headset jack, 4-way', gender: 'jack', mates: ['headset-35-plug'] },
  'headset-35-plug': {
    ...figures,
    name: '3.5 mm headset plug, 4-way',
    gender: 'plug',
    mates: ['headset-35-jack'],
    misfits: shorted,
  },
};
