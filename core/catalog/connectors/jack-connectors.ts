import type { Connector } from '../../station/schema/connector.ts';

type Size = { id: string; name: string; amps: number; standard: string };

const sizes: readonly Size[] = [
  { id: '35', name: '3.5 mm', amps: 1, standard: 'IEC 60603-11' },
  { id: '635', name: '6.35 mm', amps: 3, standard: 'IEC 60603-11' },
];

const tip = { id: 'tip', name: 'tip', role: 'live' } as const;
const ring = { id: 'ring', name: 'ring', role: 'second' } as const;
const sleeve = { id: 'sleeve', name: 'sleeve', role: 'return' } as const;

/** The wide sleeve of a mono plug reaches back over the ring spring of a stereo jack. */
const monoInStereo: [string, string][] = [
  ['tip', 'tip'],
  ['sleeve', 'sleeve'],
  ['sleeve', 'ring'],
];
const stereoInMono: [string, string][] = [
  ['tip', 'tip'],
  ['sleeve', 'sleeve'],
];

/** Mono and stereo of one size: panel jack, plug, and the in-line socket at the end of an extension lead. */
function ofSize({ id, name, amps, standard }: Size): Record<string, Connector> {
  const figures = { contactOhms: 0.02, amps, standard, source: 'common practice; amperes and resistance from memory' };
  const mono = { ...figures, family: `mono-${id}`, contacts: [tip, sleeve], face: 'mono' as const };
  const stereo = { ...figures, family: `stereo-${id}`, contacts: [tip, ring, sleeve], face: 'stereo' as const };
  return {
    [`mono-${id}-jack`]: { ...mono, name: `${name} mono jack`, gender: 'jack', mates: [`mono-${id}-plug`] },
    [`mono-${id}-socket`]: { ...mono, name: `${name} mono in-line socket`, gender: 'jack', mates: [`mono-${id}-plug`] },
    [`mono-${id}-plug`]: {
      ...mono,
      name: `${name} mono plug`,
      gender: 'plug',
      mates: [`mono-${id}-jack`, `mono-${id}-socket`],
      misfits: [`stereo-${id}-jack`, `stereo-${id}-socket`].map((other) => ({
        with: other,
        joins: monoInStereo,
        why: 'the sleeve of a mono plug also touches the ring of a stereo jack and joins it to the return',
      })),
    },
    [`stereo-${id}-jack`]: { ...stereo, name: `${name} stereo jack`, gender: 'jack', mates: [`stereo-${id}-plug`] },
    [`stereo-${id}-socket`]: {
      ...stereo,
      name: `${name} stereo in-line socket`,
      gender: 'jack',
      mates: [`stereo-${id}-plug`],
    },
    [`stereo-${id}-plug`]: {
      ...stereo,
      name: `${name} stereo plug`,
      gender: 'plug',
      mates: [`stereo-${id}-jack`, `stereo-${id}-socket`],
      misfits: [`mono-${id}-jack`, `mono-${id}-socket`].map((other) => ({
        with: other,
        joins: stereoInMono,
        why: 'the ring of a stereo plug has no contact in a mono jack',
        harmless: true,
      })),
    },
  };
}

/** Jacks and plugs for keys, phones and audio. */
export const jackConnectors: Record<string, Connector> = Object.assign({}, ...sizes.map(ofSize));
