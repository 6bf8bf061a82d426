import { isOpenGate, type RfEdge } from '../../circuit/circuit.ts';
import { cablesAt, portName, unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { defineRule } from '../rule.ts';

/** Any device that shares power between two ways loses 3 dB in each; what loses less than this only joins them. */
const leastSplitDb = 1.5;

export const plainTee = defineRule({
  id: 'rf/plain-tee',
  severity: 'doubt',
  title: 'An RF line split by a plain tee',
  compares: 'RF ports from which two plugged ways go on that no splitter, switch or filter keeps apart',
  why: 'Two lines in parallel are 25 Ω: the SWR is 2 at best, and whatever hangs on one line works against the other.',
  advice: 'Use a switch for one or the other, a splitter for receivers, or a duplexer for two bands.',
  source: 'common practice; two 50 Ω lines in parallel are 25 Ω',
  follows: ['rf/no-changeover'],
  messages: { tee: '{unit} joins {ways} at {port} and does nothing to keep them apart.' },
  looksAt: {
    region(region, { station, hookup, trial }, report) {
      const { circuit } = trial;
      const { hertz } = circuit.rf;
      const possible = region.edges.filter((edge) => isJoin(edge, hertz));
      if (!hasFork(possible)) return;
      for (const { reach } of instantsOfRegion(trial, region.number)) {
        for (const [port, others] of joinedPorts(possible.filter((edge) => isOpenGate(edge.gate, reach.on)))) {
          if (others.size < 2) continue;
          const ref = rfPortRef(circuit, port);
          const plugged = [...others].map((other) => rfPortRef(circuit, other));
          const ways = plugged.filter((o) => cablesAt(station, hookup, o.unit, o.port).length > 0);
          if (ways.length < 2 || cablesAt(station, hookup, ref.unit, ref.port).length === 0) continue;
          report({
            message: 'tee',
            severity: 'doubt',
            at: [{ unit: ref.unit }],
            values: {
              unit: unitName(station, ref.unit),
              port: portName(station, ref),
              ways: ways.map((way) => portName(station, way)).join(' and '),
            },
          });
        }
      }
    },
  },
});

/** Of each port those that these ways join it to. */
function joinedPorts(joins: readonly RfEdge[]): Map<number, Set<number>> {
  const joined = new Map<number, Set<number>>();
  const put = (port: number, other: number) => {
    const others = joined.get(port);
    if (others) others.add(other);
    else joined.set(port, new Set([other]));
  };
  for (const { a, b } of joins) {
    put(a, b);
    put(b, a);
  }
  return joined;
}

/** Whether two of these ways can be open together and meet at a port. */
function hasFork(edges: readonly RfEdge[]): boolean {
  const at = new Map<number, RfEdge[]>();
  for (const edge of edges) {
    for (const port of [edge.a, edge.b]) {
      const others = at.get(port);
      if (others?.some((other) => isTogether(edge, other))) return true;
      if (others) others.push(edge);
      else at.set(port, [edge]);
    }
  }
  return false;
}

/** A changeover's two ways never are: what opens the one shuts the other. */
const isTogether = (one: RfEdge, two: RfEdge): boolean =>
  !one.gate.some(({ actor, on }) => two.gate.some((other) => other.actor === actor && other.on !== on));

/** A way inside a unit that passes this frequency both ways and takes next to nothing. */
function isJoin({ origin, lossDb, oneWay, spec }: RfEdge, hertz: number): boolean {
  if (origin.type !== 'element' || spec?.type !== 'rfPath' || oneWay) return false;
  const { minHz = 0, maxHz = Number.POSITIVE_INFINITY } = spec;
  return lossDb >= 0 && lossDb < leastSplitDb && hertz >= minHz && hertz <= maxHz;
}
