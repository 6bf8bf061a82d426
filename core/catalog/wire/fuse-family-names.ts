import type { FuseFamily } from '../../station/schema/unit-element.ts';

/** What a fuse family is called: `glass, fast`. As it is ordered, `orderedFuse` says. */
export const fuseFamilyNames: Readonly<Record<FuseFamily, string>> = {
  blade: 'blade',
  'glass-fast': 'glass, fast',
  'glass-slow': 'glass, slow',
};
