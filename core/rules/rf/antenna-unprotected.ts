import type { Circuit, RfEdge } from '../../circuit/circuit.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { edgesAround } from '../../rf/spread.ts';
import { isOutdoor } from '../../station/outdoors.ts';
import { cablesAt, kindOf, unitName, unitOf } from '../../station/parts.ts';
import type { Hookup, Station } from '../../station/schema/schema.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { ownedBy } from '../../trial/owned-by.ts';
import { everyRegionOf } from '../../trial/rf/regions.ts';
import { defineRule } from '../rule.ts';

export const antennaUnprotected = defineRule({
  id: 'rf/antenna-unprotected',
  severity: 'note',
  title: 'An outdoor antenna with no arrestor in its line',
  compares: 'what lies between each outdoor antenna and the first transmitter or receiver: anything that is earthed',
  why: 'A storm miles away charges the wire to thousands of volts; an arrestor or an earthed switch at the entry takes that to earth.',
  advice:
    'Put an arrestor where the coax enters, on the station’s one earth, and unplug the antenna before a storm: nothing protects against a direct stroke. Follow the local electrical code.',
  source: 'common practice; local codes decide',
  follows: [],
  messages: { bare: 'The line from {antenna} to {unit} has no arrestor and no earthed unit in it.' },
  looksAt: {
    rfLoad({ port, unit, spec }, { station, hookup, trial }, report) {
      if (spec.role !== 'antenna' || !isOutdoor(station, unit)) return;
      const met = firstBare(station, hookup, trial, port, unit);
      if (met === null) return;
      report({
        message: 'bare',
        severity: 'note',
        at: [{ unit }],
        values: { antenna: unitName(station, unit), unit: unitName(station, met) },
      });
    },
  },
});

/** The first transmitter or receiver that hangs on an antenna without an earthed unit between, or null. */
function firstBare(station: Station, hookup: Hookup, trial: Trial, start: number, antenna: string): string | null {
  const { circuit, receive } = trial;
  const { edges = [] } = everyRegionOf(trial).find(({ number }) => number === receive.rf.regionOf(start)) ?? {};
  const around = edgesAround(edges);
  const seen = new Set([start]);
  const open = [start];
  for (let port = open.pop(); port !== undefined; port = open.pop()) {
    const { unit } = rfPortRef(circuit, port);
    if (unit !== antenna && isEnd(circuit, unit)) return unit;
    if (unit !== antenna && isEarthed(station, hookup, unit)) continue;
    for (const i of around.get(port) ?? []) {
      const { a, b } = edges[i] as RfEdge;
      const other = a === port ? b : a;
      if (seen.has(other)) continue;
      seen.add(other);
      open.push(other);
    }
  }
  return null;
}

const isEarthed = (station: Station, hookup: Hookup, unit: string): boolean =>
  kindOf(station, unitOf(station, unit)).ports.some(
    (p) => p.class === 'earth' && cablesAt(station, hookup, unit, p.id).length > 0,
  );

/** Whether a unit makes RF or takes it in. */
function isEnd(circuit: Circuit, unit: string): boolean {
  const { rfSources, rfLoads } = ownedBy(circuit, unit);
  return rfSources.length > 0 || rfLoads.some((load) => load.spec.role === 'receiver');
}
