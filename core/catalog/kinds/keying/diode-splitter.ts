import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** One PTT output keys two units through a diode each. */
export const diodeSplitter: UnitKind = {
  name: 'PTT splitter, 2 ways',
  group: 'keying',
  summary: 'A diode in each way: 0.7 V stays on the line; phono',
  words: ['diode steering', 'y adapter', 'keying'],
  ports: [
    { id: 'input', label: 'in', class: 'control', connector: 'phono-jack', side: 'left', needed: 'toSend' },
    { id: 'one', label: '1', class: 'control', connector: 'phono-jack', side: 'right', needed: 'optional' },
    { id: 'two', label: '2', class: 'control', connector: 'phono-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'diode-one',
      type: 'diode',
      anode: 'one.centre',
      cathode: 'input.centre',
      volts: 0.7,
      atAmps: 0.01,
      ohms: 0.5,
    },
    {
      id: 'diode-two',
      type: 'diode',
      anode: 'two.centre',
      cathode: 'input.centre',
      volts: 0.7,
      atAmps: 0.01,
      ohms: 0.5,
    },
  ],
  source: 'typical figures',
};
