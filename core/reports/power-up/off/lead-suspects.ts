import { swappedWiring } from '../../../catalog/cables/swapped-wiring.ts';
import { wiringOf } from '../../../catalog/cables/wiring-of.ts';
import type { Circuit, Resistor } from '../../../circuit/circuit.ts';
import { edit } from '../../../station/edit.ts';
import { cablesIn, classOf, unitName } from '../../../station/parts.ts';
import type { Cable } from '../../../station/schema/schema.ts';
import { circuitOf, type Seen, type Setup, seenIn, seenWith } from '../setup.ts';
import type { Suspect } from './suspect.ts';

/** Leads that were made wrong: plus and minus swapped, a short in a plug. */
export function leadSuspects(setup: Setup): Suspect[] {
  return cablesIn(setup.station, setup.hookup).flatMap((cable): Suspect[] => {
    const kind = classOf(setup.station, cable);
    const shorted: Suspect = {
      id: `short:${cable.id}`,
      text: `${cable.number} is shorted, in a plug or along the way`,
      at: { cable: cable.id },
      rank: kind === 'earth' ? 5 : 1,
      see: (other) => withShort(other, cable),
    };
    if (kind !== 'dc') return [shorted];
    const swapped: Suspect = {
      id: `swap:${cable.id}`,
      text: `Plus and minus of ${cable.number} are swapped`,
      at: { cable: cable.id },
      rank: 0,
      see: (other) => seenIn(withSwapped(other, cable)),
    };
    return [swapped, shorted];
  });
}

function withShort(setup: Setup, cable: Cable): Seen | null {
  const circuit = circuitOf(setup);
  const [one, two] = wiringOf(setup.station, cable).filter((row) => row.role !== 'second');
  const node = (contact: string | undefined) => circuit.nodeOf.get(`cable ${cable.id}.a.${contact}`);
  const [a, b] = [node(one?.a), node(two?.a)];
  if (a === undefined || b === undefined) return null;
  const origin = { type: 'wire', cable: cable.id, row: -1, role: 'second', lengthM: 0 } as const;
  const whisker: Resistor = { kind: 'resistor', a, b, ohms: 0.05, gate: [], origin };
  return seenWith(setup, { ...circuit, parts: [...circuit.parts, whisker] });
}

function withSwapped(setup: Setup, cable: Cable): Setup {
  const wiring = swappedWiring(setup.station, cable);
  if (!wiring) return setup;
  return { ...setup, station: edit(setup.station, { type: 'updateCable', id: cable.id, set: { wiring } }) };
}

/** A key, a foot switch or a program that is on although nobody means it. */
export function heldSuspects(setup: Setup): Suspect[] {
  return circuitOf(setup).actors.flatMap(({ key, unit, feels }, i): Suspect[] => {
    if (!feels.some((f) => f.type === 'operator')) return [];
    const held = ({ actors, ...circuit }: Circuit): Circuit => ({
      ...circuit,
      actors: actors.map((actor, k) => (k === i ? { ...actor, stuck: true } : actor)),
    });
    return [
      {
        id: `held:${key}`,
        text: `${unitName(setup.station, unit)} is held down, or sticks`,
        at: { unit },
        rank: 1,
        see: (other) => seenWith(other, held(circuitOf(other))),
      },
    ];
  });
}
