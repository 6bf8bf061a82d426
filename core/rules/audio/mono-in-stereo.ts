import { fitOf } from '../../catalog/fit.ts';
import { kindOf, portName, portOf, unitOf } from '../../station/parts.ts';
import { plugOf } from '../../station/references.ts';
import type { UnitKind } from '../../station/unit-kind.ts';
import { defineRule } from '../rule.ts';

export const monoInStereo = defineRule({
  id: 'audio/mono-in-stereo',
  severity: 'fault',
  title: 'A mono plug in a stereo jack',
  compares: 'contacts of a jack that a plug with fewer contacts joins, with what stands on them',
  why: 'The plug’s sleeve joins the ring to ground: an amplifier output is shorted, a paddle’s lever is down for good, a transmit line is held.',
  advice: 'Use the stereo lead.',
  source:
    'IEC 60603-11 (6.35 mm plugs and jacks): the sleeve of a two-contact plug lies on the ring spring of a three-contact jack',
  follows: [],
  messages: {
    output: '{cable} has a mono plug in {port}: it joins ring and sleeve, which shorts an amplifier output.',
    line: '{cable} has a mono plug in {port}: it joins ring and sleeve, which holds that line at ground.',
    unused: '{cable} has a mono plug in {port}: it joins ring and sleeve.',
  },
  check({ station }, report) {
    for (const cable of station.cables) {
      for (const end of ['a', 'b'] as const) {
        const plug = plugOf(station, cable, end);
        const { port, connector } = portOf(station, cable[end]);
        if (!plug) continue;
        const { fit, joins } = fitOf(station.connectors, plug.id, port.connector);
        const ring = connector.contacts.find((c) => c.role === 'second')?.id;
        const own = joins.find(([, jack]) => jack === ring)?.[0];
        if (
          fit !== 'misfit' ||
          ring === undefined ||
          own === undefined ||
          joins.filter(([plugContact]) => plugContact === own).length < 2
        )
          continue;
        const what = whatIsOn(kindOf(station, unitOf(station, cable[end].unit)), `${port.id}.${ring}`);
        report({
          message: what,
          severity: what === 'unused' ? 'doubt' : 'fault',
          at: [cable[end], { cable: cable.id, end }],
          values: { cable: cable.number, port: portName(station, cable[end]) },
          ...(cable.hookups?.[0] !== undefined && { hookup: cable.hookups[0] }),
        });
      }
    }
  },
});

function whatIsOn(kind: UnitKind, ref: string): 'output' | 'line' | 'unused' {
  const on = kind.elements.filter(
    (e) => ('contact' in e && e.contact === ref) || (e.type === 'contactPair' && (e.from === ref || e.to === ref)),
  );
  if (on.some((e) => e.type === 'audioSource')) return 'output';
  return on.some((e) => e.type === 'pullUp' || e.type === 'contactPair') ? 'line' : 'unused';
}
