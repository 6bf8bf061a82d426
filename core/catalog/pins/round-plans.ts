import { type PinPlan, type PinSpot, solderSide } from './pin-plan.ts';

/** A pin on a circle: degrees from the right, counter-clockwise. */
function onCircle(pin: number, degrees: number, radiusMm: number): PinSpot {
  const angle = (degrees * Math.PI) / 180;
  return { id: `pin${pin}`, x: radiusMm * Math.cos(angle), y: -radiusMm * Math.sin(angle) };
}

/** DIN 41524, IEC 60130-9: pins 45° apart on a circle of 7 mm; into the socket, and so on a plug's solder side, 1-4-2-5-3 from the left. */
const dinRing = [
  [1, 180],
  [4, 135],
  [2, 90],
  [5, 45],
  [3, 0],
].map(([pin = 0, degrees = 0]) => onCircle(pin, degrees, 3.5));

const din = { outline: 'round', widthMm: 13.2, heightMm: 13.2, key: 'bottom', view: solderSide } as const;

/** Seven round an eighth, the first of them right of the key. */
const microphoneRing = [1, 2, 3, 4, 5, 6, 7].map((pin) => onCircle(pin, 90 - (pin - 0.5) * (360 / 7), 4.2));

/** Plans of round plugs, by the connector's family. */
export const roundPlans: Readonly<Record<string, PinPlan>> = {
  'din-5': { ...din, pins: dinRing, source: 'DIN 41524, IEC 60130-9: five pins in 180°' },
  'din-8': {
    ...din,
    pins: [...dinRing, onCircle(6, 225, 3.5), onCircle(7, 315, 3.5), { id: 'pin8', x: 0, y: 0 }],
    source: 'from memory: DIN 45326, IEC 60130-9, the form with pin 8 in the middle; another one has it in the ring',
  },
  'mini-din-6': {
    outline: 'round',
    widthMm: 9.5,
    heightMm: 9.5,
    key: 'top',
    pins: [
      { id: 'pin1', x: 1.3, y: 2.6 },
      { id: 'pin2', x: -1.3, y: 2.6 },
      { id: 'pin3', x: 3.3, y: 0.2 },
      { id: 'pin4', x: -3.3, y: 0.2 },
      { id: 'pin5', x: 1.7, y: -2.4 },
      { id: 'pin6', x: -1.7, y: -2.4 },
    ],
    view: solderSide,
    source:
      'pin-outs of keyboard jacks: into the socket 6-5 beside the key, 4-3, 2-1; the millimetres between them from memory',
  },
  'microphone-8': {
    outline: 'round',
    widthMm: 16,
    heightMm: 16,
    key: 'top',
    pins: [...microphoneRing, { id: 'pin8', x: 0, y: 0 }],
    view: solderSide,
    source: 'from memory, by no standard: go by the numbers moulded beside the pins',
  },
};
