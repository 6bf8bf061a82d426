import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** The motor at the mast. */
export const rotator: UnitKind = {
  name: 'Rotator',
  group: 'computer',
  summary: '24 V motor, position potentiometer; five terminals of eight',
  words: ['rotor', 'antenna', 'motor'],
  ports: [{ id: 'cable', label: 'cable', class: 'control', connector: 'terminals-8', side: 'left', needed: 'always' }],
  elements: [
    { id: 'motor', type: 'conductor', from: 'cable.pin1', to: 'cable.pin2', ohms: 12 },
    { id: 'potentiometer', type: 'conductor', from: 'cable.pin3', to: 'cable.pin4', ohms: 500 },
  ],
  isolated: 'all',
  outdoor: true,
  cautions: ['Nobody in the swing of the beam while it turns.', 'Unplug it before a storm.'],
  source: 'typical figures',
};
