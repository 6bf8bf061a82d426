import type { UnitKind } from '../../../station/schema/unit-kind.ts';

const outlets = [
  ['one', '1'],
  ['two', '2'],
  ['three', '3'],
  ['four', '4'],
] as const;

/** A home-made box of barrel jacks in parallel, without any fuse. */
export const jackBox: UnitKind = {
  name: 'Jack box, 4 ways unfused',
  group: 'power',
  summary: 'Barrel jacks in parallel, centre plus, no fuses',
  words: ['distribution', 'splitter', 'power strip', '12 V'],
  ports: [
    { id: 'input', label: 'in', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    ...outlets.map(([id, label]): UnitKind['ports'][number] => ({
      id,
      label,
      class: 'dc',
      connector: 'barrel-21-jack',
      side: 'right',
      needed: 'optional',
    })),
  ],
  elements: outlets.flatMap(([id]): UnitKind['elements'] => [
    { id: `plus-${id}`, type: 'conductor', from: 'input.centre', to: `${id}.centre`, ohms: 0.002 },
    { id: `minus-${id}`, type: 'conductor', from: 'input.shell', to: `${id}.shell`, ohms: 0.002 },
  ]),
  isolated: 'all',
  source: 'typical figures',
};
