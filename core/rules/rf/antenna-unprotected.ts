import type { Circuit } from '../../circuit/circuit.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { isOutdoor } from '../../station/outdoors.ts';
import { cablesAt, kindOf, unitName, unitOf } from '../../station/parts.ts';
import { remember } from '../../station/remember.ts';
import type { Hookup, Station } from '../../station/schema/schema.ts';
import { rfPortRef } from '../../trial/names.ts';
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
    station({ station, hookups }, report) {
      for (const { hookup, trial } of hookups) {
        for (const load of trial.circuit.rf.loads) {
          if (load.spec.role !== 'antenna' || !isOutdoor(station, load.unit)) continue;
          const met = firstBare(station, hookup, trial, load.port, load.unit);
          if (met === null) continue;
          report({
            message: 'bare',
            severity: 'note',
            at: [{ unit: load.unit }],
            values: { antenna: unitName(station, load.unit), unit: unitName(station, met) },
            hookup: hookup.id,
          });
        }
      }
    },
  },
});

/** The first transmitter or receiver that hangs on an antenna without an earthed unit between, or null. */
function firstBare(station: Station, hookup: Hookup, trial: Trial, start: number, antenna: string): string | null {
  const { circuit } = trial;
  const ends = endsOf(circuit);
  const seen = new Set([start]);
  const open = [start];
  for (let port = open.pop(); port !== undefined; port = open.pop()) {
    const { unit } = rfPortRef(circuit, port);
    if (unit !== antenna && ends.has(unit)) return unit;
    if (unit !== antenna && isEarthed(station, hookup, unit)) continue;
    for (const other of neighboursOf(circuit)[port] ?? []) {
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

/** Units that make RF or take it in. */
const endsOf = remember((circuit: Circuit) => {
  const receivers = circuit.rf.loads.filter((l) => l.spec.role === 'receiver');
  return new Set([...circuit.rf.sources, ...receivers].map(({ unit }) => unit));
});

const neighboursOf = remember((circuit: Circuit) => {
  const neighbours: number[][] = circuit.rf.ports.map(() => []);
  for (const { a, b } of circuit.rf.edges) {
    neighbours[a]?.push(b);
    neighbours[b]?.push(a);
  }
  return neighbours;
});
