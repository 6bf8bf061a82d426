import type { Connector } from '../../station/schema/connector.ts';

/** Millimetres of cable that go into a plug, by the shape of the plug. Common practice. */
const stripMm: Record<Connector['face'], number> = {
  ring: 10,
  'two-pole': 10,
  posts: 10,
  wire: 10,
  earth: 10,
  barrel: 20,
  phono: 20,
  mono: 20,
  stereo: 20,
  bnc: 20,
  n: 20,
  sma: 20,
  uhf: 25,
  multi: 30,
};

/** Metres of cable to cut for a length between plugs: what goes into both plugs more, up to the next whole centimetre. */
export function cutLengthM(lengthM: number, plugs: readonly (Connector | undefined)[]): number {
  const intoPlugs = plugs.reduce((sum, plug) => sum + (plug ? stripMm[plug.face] : 0), 0);
  // To the tenth of a millimetre first: 0.6 m and 40 mm are not 0.6400000001 m.
  return Math.ceil(Math.round(lengthM * 10_000 + intoPlugs * 10) / 100) / 100;
}

/** Parts that make up one end: a pair of ring terminals or of 4 mm plugs is two, a bare end is none. */
export function piecesOf(plug: Connector): number {
  if (plug.gender === 'bare') return 0;
  return plug.face === 'ring' || plug.face === 'posts' ? plug.contacts.length : 1;
}
