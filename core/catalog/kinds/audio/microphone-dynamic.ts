import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A coil in a magnet: it wants no DC. */
export const microphoneDynamic: UnitKind = {
  name: 'Microphone, dynamic',
  group: 'audio',
  summary: '600 Ω, 3 mV; own lead with a 6.35 mm plug; no bias',
  words: ['mic', 'vocal', 'studio'],
  ports: [{ id: 'plug', label: '', class: 'audio', connector: 'mono-635-plug', side: 'right', needed: 'optional' }],
  elements: [
    { id: 'capsule', type: 'audioSource', contact: 'plug.tip', volts: 0.003, ohms: 600, dcOhms: 600, maxDcVolts: 0.1 },
  ],
  isolated: 'all',
  source: 'typical figures: dynamic microphones give 1 to 5 mV',
};
