import { wiringOf } from '../../catalog/cables/wiring-of.ts';
import { type Fit, fitOf } from '../../catalog/fit.ts';
import { stereoLead } from '../../fixes/plugs.ts';
import { kindOf, portName, portOf, unitOf } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import type { Connector } from '../../station/schema/connector.ts';
import type { Cable, CableEnd, PortRef, Station } from '../../station/schema/schema.ts';
import { defineRule, fixed } from '../rule.ts';

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
    extended:
      '{plug} has a mono plug, which joins ring and sleeve of {cable}’s stereo socket: at the far end that {harm} of {port}.',
  },
  looksAt: {
    end({ cable, end, plug, jack, fit }, { station }, report) {
      if (fit.fit !== 'misfit') return;
      const other = end === 'a' ? 'b' : 'a';
      if (joinsRing(jack, fit.joins)) {
        const what = whatIsOn(station, cable[end], ringOf(jack));
        const values = { cable: cable.number, port: portName(station, cable[end]) };
        const severity = what === 'unused' ? 'doubt' : 'fault';
        report({
          message: what,
          severity,
          at: [cable[end], { cable: cable.id, end }],
          values,
          ...fixed(stereoLead(station, cable)),
        });
      } else if (joinsRing(plug, swapped(fit.joins))) {
        // The plug is the unit's own; the cable carries the short to whatever its ring leads to.
        const far = ringAtFarEnd(station, cable, end, ringOf(plug));
        const what = whatIsOn(station, cable[other], far);
        if (what === 'unused') return;
        const port = portName(station, cable[other]);
        const harm = what === 'output' ? 'shorts an amplifier output' : 'holds a line at ground';
        const values = { plug: portName(station, cable[end]), cable: cable.number, port, harm };
        report({
          message: 'extended',
          severity: 'fault',
          at: [cable[end], cable[other]],
          values,
          ...fixed(stereoLead(station, cable)),
        });
      }
    },
  },
});

type Joins = Fit['joins'];

const swapped = (joins: Joins): Joins => joins.map(([a, b]) => [b, a]);

const ringOf = (connector: Connector): string | undefined => connector.contacts.find((c) => c.role === 'second')?.id;

/** Whether a contact of the other half touches this half's ring and one more contact of it. */
function joinsRing(half: Connector, joins: Joins): boolean {
  const ring = ringOf(half);
  const other = joins.find(([, own]) => own === ring && ring !== undefined)?.[0];
  return other !== undefined && joins.filter(([contact]) => contact === other).length > 1;
}

/** The contact of the port at the far end that a contact of this end's plug is wired to. */
function ringAtFarEnd(station: Station, cable: Cable, end: CableEnd, ring: string | undefined): string | undefined {
  const other = end === 'a' ? 'b' : 'a';
  const core = wiringOf(station, cable).find((row) => row[end] === ring)?.[other];
  const plug = plugOf(station, cable, other);
  const { joins } = fitOf(station.connectors, plug?.id ?? '', portOf(station, cable[other]).port.connector);
  return joins.find(([own]) => own === core)?.[1];
}

function whatIsOn(
  station: Station,
  { unit, port }: PortRef,
  contact: string | undefined,
): 'output' | 'line' | 'unused' {
  const ref = `${port}.${contact}`;
  const on = kindOf(station, unitOf(station, unit)).elements.filter(
    (e) => ('contact' in e && e.contact === ref) || (e.type === 'contactPair' && (e.from === ref || e.to === ref)),
  );
  if (on.some((e) => e.type === 'audioSource')) return 'output';
  return on.some((e) => e.type === 'pullUp' || e.type === 'contactPair') ? 'line' : 'unused';
}
