import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** One lever, one contact. */
export const straightKey: UnitKind = {
  name: 'Straight key',
  group: 'keying',
  summary: 'One contact, 6.35 mm mono jack',
  words: ['hand key', 'pump', 'morse', 'lever'],
  ports: [{ id: 'out', label: '', class: 'control', connector: 'mono-635-jack', side: 'right', needed: 'toSend' }],
  elements: [
    {
      id: 'contact',
      type: 'contactPair',
      from: 'out.tip',
      to: 'out.sleeve',
      device: 'relay',
      onOhms: 0.1,
      maxVolts: 50,
      maxAmps: 0.5,
      when: { on: ['lever'] },
    },
  ],
  actors: [
    {
      id: 'lever',
      label: 'Key',
      feels: { type: 'operator', label: 'Press the key' },
      operateMs: 0,
      releaseMs: 0,
      unpowered: true,
      does: 'keys',
    },
  ],
  isolated: 'all',
  source: 'typical figures',
};
