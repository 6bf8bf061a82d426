import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A hand switch: one common socket to either of two. */
export const coaxSwitch: UnitKind = {
  name: 'Coax switch, 2 ways',
  group: 'changeover',
  summary: 'By hand, SO-239 on all sides, unselected side open',
  words: ['antenna switch', 'selector', 'a/b switch'],
  ports: [
    { id: 'common', label: 'common', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' },
    { id: 'one', label: '1', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
    { id: 'two', label: '2', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
  ],
  elements: (['one', 'two'] as const).map((position) => ({
    id: `path-${position}`,
    type: 'rfPath',
    a: 'common',
    b: position,
    lossDb: 0.1,
    isolationDb: 50,
    maxWatts: 500,
    dcOhms: 0.01,
    when: { settings: { position } },
  })),
  settings: [
    {
      id: 'position',
      label: 'Position',
      options: [
        { id: 'one', label: '1' },
        { id: 'two', label: '2' },
      ],
      initial: 'one',
    },
  ],
  source: 'typical figures',
};
