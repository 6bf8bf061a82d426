/** The mistakes planted in the first draft, each with its place, its fix, and a word of what the fix says beforehand. */
export const mistakes = [
  ['Plus and minus are swapped', 'D4', 'Swap the two cores of D4', 'D4: wiring straight → swapped'],
  ['The changeover is wired the wrong way round', 'R3', 'Swap R1 and R3', /^R1: to Changeover · receiver → Changeover/],
  ['The fuse is too big for the wire', 'D3', /^Fit a .* fuse in Fused strip$/, /^Fused strip · 2: fuse 10 A → /],
  ['A mono plug in a stereo jack', 'Receiver · phones', /^Exchange A1 for a stereo one/, /^A1: kind .*mono → .*stereo/],
  ['The receiver is not muted while the station sends', 'Receiver · mute', 'Lay the mute cable', /^New cable K4, /],
  ['An adapter is needed', /^R3 at /, 'Fit the adapter on R3', /^R3: adapter at .* none → phono/],
  [
    'No hook-up for a test without the antenna',
    'Transmitter',
    'Add a hook-up on a dummy load',
    /^New hook-up “On the dummy load”/,
  ],
] as const;
