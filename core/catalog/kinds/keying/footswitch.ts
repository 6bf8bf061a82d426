import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A switch under the desk. */
export const footswitch: UnitKind = {
  name: 'Footswitch',
  group: 'keying',
  summary: 'Closes its 3.5 mm mono plug; own lead',
  words: ['foot pedal', 'ptt'],
  ports: [{ id: 'plug', label: '', class: 'control', connector: 'mono-35-plug', side: 'right', needed: 'toSend' }],
  elements: [
    {
      id: 'contact',
      type: 'contactPair',
      from: 'plug.tip',
      to: 'plug.sleeve',
      device: 'relay',
      onOhms: 0.1,
      maxVolts: 50,
      maxAmps: 1,
      when: { on: ['foot'] },
    },
  ],
  actors: [
    {
      id: 'foot',
      label: 'Foot',
      feels: { type: 'operator', label: 'Press the footswitch' },
      operateMs: 0,
      releaseMs: 0,
      does: 'keys',
      unpowered: true,
      bounceMs: 3,
    },
  ],
  isolated: 'all',
  source: 'typical figures',
};
