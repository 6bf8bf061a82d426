import { type PinPlan, solderSide } from './pin-plan.ts';

/** IEC 60807, DIN 41652: 2.77 mm from pin to pin, 2.84 mm from row to row; a plug's pin 1 is at the upper left of its face. */
const pitchMm = 2.77;
const rowsMm = 2.84;

/** A D-sub plug: the longer row on top, pin 1 at the right when it is seen from behind. */
function dSub(count: number): PinPlan {
  const top = Math.ceil(count / 2);
  const pins = Array.from({ length: count }, (_, i) => {
    const isTop = i < top;
    const along = isTop ? (top - 1) / 2 - i : (count - top - 1) / 2 - (i - top);
    return { id: `pin${i + 1}`, x: along * pitchMm, y: isTop ? -rowsMm / 2 : rowsMm / 2 };
  });
  return {
    outline: 'd',
    widthMm: top * pitchMm + 3,
    heightMm: 8.4,
    key: null,
    pins,
    view: solderSide,
    source: 'IEC 60807, DIN 41652',
  };
}

/** IEC 60603-7: eight contacts 1.02 mm apart, the first at the left with the contacts towards one and the cable below. */
const rj45: PinPlan = {
  outline: 'modular',
  widthMm: 11.7,
  heightMm: 12,
  key: null,
  pins: Array.from({ length: 8 }, (_, i) => ({ id: `pin${i + 1}`, x: (i - 3.5) * 1.02, y: -2.5 })),
  view: 'seen from the side of its contacts, the cable downwards',
  source: 'IEC 60603-7',
};

/** Plans of plugs with rows of contacts, by the connector's family. */
export const flatPlans: Readonly<Record<string, PinPlan>> = {
  'd-sub-9': dSub(9),
  'd-sub-15': dSub(15),
  'd-sub-25': dSub(25),
  rj45,
};
