import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A coax relay: its coil is a plain resistance. */
export const coaxRelay28v: UnitKind = {
  name: 'Coax relay, 28 V',
  group: 'changeover',
  summary: 'Pulls in at 14 V, drops at 5 V; 290 Ω; 70 dB; 20 ms; N',
  words: ['coaxial relay', 'antenna relay', 't/r'],
  ports: [
    { id: 'coil', label: 'coil', class: 'control', connector: 'phono-jack', side: 'left', needed: 'toSend' },
    { id: 'common', label: 'common', class: 'rf', connector: 'n-jack', side: 'left', needed: 'always' },
    { id: 'rest', label: 'at rest', class: 'rf', connector: 'n-jack', side: 'right', needed: 'optional' },
    { id: 'active', label: 'pulled in', class: 'rf', connector: 'n-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    { id: 'coil', type: 'conductor', from: 'coil.centre', to: 'coil.shell', ohms: 290 },
    {
      id: 'idle',
      type: 'rfPath',
      a: 'common',
      b: 'rest',
      lossDb: 0.1,
      isolationDb: 70,
      maxWatts: 1000,
      dcOhms: 0.01,
      when: { off: ['pulled'] },
    },
    {
      id: 'over',
      type: 'rfPath',
      a: 'common',
      b: 'active',
      lossDb: 0.1,
      isolationDb: 70,
      maxWatts: 1000,
      dcOhms: 0.01,
      when: { on: ['pulled'] },
    },
  ],
  actors: [
    {
      id: 'pulled',
      label: 'Relay',
      feels: { type: 'voltageAbove', contact: 'coil.centre', volts: 14, reference: 'coil.shell' },
      operateMs: 20,
      releaseMs: 12,
      bounceMs: 2,
      unpowered: true,
      does: 'changesOver',
    },
  ],
  isolated: ['coil.shell'],
  source: 'typical figures',
};
