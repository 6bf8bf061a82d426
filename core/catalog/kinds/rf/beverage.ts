import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A long low wire for listening. */
export const beverage: UnitKind = {
  name: 'Beverage, receive only',
  group: 'rf',
  summary: '1.8 to 7.3 MHz, through a 9:1 transformer; 1 W; F',
  words: ['wave antenna', 'listening', 'low bands'],
  ports: [
    {
      id: 'feed',
      label: '',
      class: 'rf',
      connector: 'f-jack',
      side: 'left',
      needed: 'optional',
      minHz: 1_800_000,
      maxHz: 7_300_000,
    },
  ],
  elements: [
    {
      id: 'wire',
      type: 'rfLoad',
      port: 'feed',
      role: 'antenna',
      ohms: 75,
      minHz: 1_800_000,
      maxHz: 7_300_000,
      swr: 1.6,
      watts: 1,
      gainDbi: -10,
    },
  ],
  outdoor: true,
  cautions: ['Unplug it before a storm.', 'Never transmit into it.'],
  source: 'typical figures',
};
