import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** An older amplifier with mains inside and 110 V on its relay line. */
export const valveAmplifier1kw: UnitKind = {
  name: 'Valve amplifier, 1 kW',
  group: 'sending',
  summary: '100 W in, 1 kW out; relay line 110 V, 60 mA; mains; SO-239',
  words: ['linear', 'tube', 'pa', 'boatanchor'],
  ports: [
    { id: 'key', label: 'relay', class: 'control', connector: 'phono-jack', side: 'left', needed: 'toSend' },
    { id: 'input', label: 'input', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'toSend' },
    { id: 'output', label: 'output', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'toSend' },
    { id: 'earth', label: 'earth', class: 'earth', connector: 'earth-stud', side: 'bottom', needed: 'always' },
  ],
  elements: [
    { id: 'relay-line', type: 'pullUp', contact: 'key.centre', volts: 110, ohms: 1830 },
    {
      id: 'past',
      type: 'rfPath',
      a: 'input',
      b: 'output',
      lossDb: 0.2,
      maxWatts: 200,
      minHz: 1_800_000,
      maxHz: 30_000_000,
      dcOhms: 0.05,
      when: { off: ['relay'] },
    },
    {
      id: 'stage',
      type: 'rfPath',
      a: 'input',
      b: 'output',
      lossDb: -10,
      oneWay: true,
      saturationDbm: 60,
      maxWatts: 120,
      minHz: 1_800_000,
      maxHz: 30_000_000,
      harmonicsDbc: -40,
      plate: { warmUpSeconds: 180, restingAmps: 0.15, drivenAmps: 0.65 },
      when: { on: ['relay'] },
    },
    { id: 'body', type: 'conductor', from: 'earth.earth', to: 'chassis', ohms: 0.001 },
  ],
  actors: [
    {
      id: 'relay',
      label: 'Relay',
      feels: { type: 'voltageBelow', contact: 'key.centre', volts: 40 },
      operateMs: 18,
      releaseMs: 12,
      does: 'changesOver',
    },
  ],
  cautions: [
    'Transmitting needs a licence.',
    'Thousands of volts inside, for minutes after it is off: only for who knows how.',
  ],
  mains: true,
  source:
    'typical figures; relay lines of older amplifiers (24 to 120 V, 20 to 300 mA), heating time and plate currents at 2.5 kV from memory',
};
