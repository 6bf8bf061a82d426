import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** One way of the strip: a fuse in plus, the minus straight through. */
const way = (id: string): UnitKind['elements'] => [
  // The holder's two contacts; the fuse's own resistance follows from its rating.
  {
    id: `fuse-${id}`,
    type: 'conductor',
    from: 'input.plus',
    to: `${id}.plus`,
    ohms: 0.002,
    fuseAmps: 5,
    fuseFamily: 'blade',
  },
  { id: `minus-${id}`, type: 'conductor', from: 'input.minus', to: `${id}.minus`, ohms: 0.0005 },
];

const outlet = (id: string, label: string): UnitKind['ports'][number] => ({
  id,
  label,
  class: 'dc',
  connector: 'two-pole-15',
  side: 'right',
  needed: 'optional',
});

/** A distribution strip: one input, a blade fuse for every outlet. */
export const fusedStrip: UnitKind = {
  name: 'Fused strip, 4 ways',
  group: 'power',
  summary: 'One input on studs, four two-pole outlets, a blade fuse each',
  words: ['distribution', 'fuse box', 'power strip', 'fuse block', '12 V', 'splitter'],
  ports: [
    { id: 'input', label: 'in', class: 'dc', connector: 'stud-pair', side: 'left', needed: 'always' },
    outlet('one', '1'),
    outlet('two', '2'),
    outlet('three', '3'),
    outlet('four', '4'),
  ],
  elements: [...way('one'), ...way('two'), ...way('three'), ...way('four')],
  isolated: 'all',
  source: 'typical figures',
};
