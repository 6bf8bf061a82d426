import { type Circuit, type CircuitPart, never, type Resistor } from '../../../core/circuit/circuit.ts';
import { tryHookup } from '../../../core/keydown/try-hookup.ts';
import type { PowerUpDraft } from '../../../core/reports/power-up/draft-power-up.ts';
import { isOff } from '../../../core/reports/power-up/judge-reading.ts';
import { causesOf, type StepReading } from '../../../core/reports/power-up/off/causes-of.ts';
import { circuitOf, type Seen, type Setup, seenWith } from '../../../core/reports/power-up/setup.ts';
import { openOhms } from '../../../core/reports/power-up/sheet.ts';
import { classOf, hookupsOf } from '../../../core/station/parts.ts';
import type { Cable } from '../../../core/station/schema/schema.ts';

/** A fault of how a station was built, made in its circuit, and what it is to be called. */
export interface Plant {
  readonly fault: 'bad joint' | 'blown fuse' | 'swapped pair' | 'dead relay' | 'shorted coax' | 'mute line open';
  readonly what: string;
  build(circuit: Circuit): Circuit;
  /** Whether a cause names it. */
  isNamed(cause: { readonly text: string }): boolean;
}

const withPart = (
  circuit: Circuit,
  is: (part: CircuitPart) => boolean,
  make: (part: Resistor) => Resistor,
): Circuit => ({
  ...circuit,
  parts: circuit.parts.map((part) => (part.kind === 'resistor' && is(part) ? make(part) : part)),
});

const isOf = (cable: Cable, type: string, role?: string) => (part: CircuitPart) =>
  part.origin.type === type &&
  'cable' in part.origin &&
  part.origin.cable === cable.id &&
  (role === undefined || ('role' in part.origin && part.origin.role === role));

/** 50 milliohm more in the live contact of one plug. */
function badJoint(cable: Cable): Plant {
  return {
    fault: 'bad joint',
    what: cable.number,
    build: (circuit) => {
      const wire = circuit.parts.find(isOf(cable, 'wire', 'live'));
      const joint = circuit.parts.findIndex(
        (part) =>
          isOf(cable, 'mate')(part) &&
          part.kind === 'resistor' &&
          wire?.kind === 'resistor' &&
          [wire.a, wire.b].includes(part.a),
      );
      return withPart(
        circuit,
        (part) => part === circuit.parts[joint],
        (part) => ({ ...part, ohms: part.ohms + 0.05 }),
      );
    },
    isNamed: ({ text }) => new RegExp(`of ${cable.number} has a bad joint`).test(text),
  };
}

function blownFuse(place: string, is: (part: CircuitPart) => boolean, name: RegExp): Plant {
  return {
    fault: 'blown fuse',
    what: place,
    build: (circuit) => withPart(circuit, is, (part) => ({ ...part, gate: never })),
    isNamed: ({ text }) => name.test(text),
  };
}

/** Plus and minus exchanged at the far plug. */
function swapped(cable: Cable): Plant {
  return {
    fault: 'swapped pair',
    what: cable.number,
    build: (circuit) => {
      const wires = circuit.parts.filter(isOf(cable, 'wire'));
      const ends = wires.flatMap((wire) => (wire.kind === 'resistor' ? [wire.a, wire.b] : []));
      const far = ends.filter((node) => circuit.nodes[node]?.startsWith(`cable ${cable.id}.b.`));
      const [one = -1, two = -1] = far;
      const other = (node: number) => (node === one ? two : node === two ? one : node);
      return withPart(circuit, isOf(cable, 'wire'), (part) => ({ ...part, a: other(part.a), b: other(part.b) }));
    },
    isNamed: ({ text }) => text === `Plus and minus of ${cable.number} are swapped`,
  };
}

function deadRelay(key: string, name: string): Plant {
  return {
    fault: 'dead relay',
    what: key,
    build: (circuit) => ({
      ...circuit,
      actors: circuit.actors.map((actor) => (actor.key === key ? { ...actor, stuck: false } : actor)),
    }),
    isNamed: ({ text }) => text.startsWith(name) && /stays off|never|is off/.test(text),
  };
}

function shortedCoax(cable: Cable): Plant {
  return {
    fault: 'shorted coax',
    what: cable.number,
    build: (circuit) => {
      const wires = circuit.parts.filter(isOf(cable, 'wire')) as Resistor[];
      const [centre, braid] = ['live', 'return'].map((role) => wires.find((w) => isOf(cable, 'wire', role)(w)));
      if (!centre || !braid) return circuit;
      const origin = centre.origin;
      const whisker: Resistor = { kind: 'resistor', a: centre.a, b: braid.a, ohms: 0.02, gate: [], origin };
      return { ...circuit, parts: [...circuit.parts, whisker] };
    },
    isNamed: ({ text }) => text.startsWith(`${cable.number} is shorted`),
  };
}

function openLine(cable: Cable): Plant {
  return {
    fault: 'mute line open',
    what: cable.number,
    build: (circuit) => withPart(circuit, isOf(cable, 'wire', 'live'), (part) => ({ ...part, gate: never })),
    isNamed: ({ text }) => text === `Core of ${cable.number} opens`,
  };
}

/** All that is planted in a station, in every place there is for it. */
export function plantsIn({ station, hookup: drafted }: PowerUpDraft): Plant[] {
  const hookup = hookupsOf(station).find(({ name }) => name === drafted) ?? hookupsOf(station)[0];
  if (!hookup) return [];
  const { circuit, keyDowns } = tryHookup(station, hookup);
  const most = (part: number) =>
    Math.max(0, ...keyDowns.flatMap((k) => k.moments.map(({ reach }) => Math.abs(reach.dc.ampsIn(part)))));
  const cables = station.cables.filter((cable) => circuit.parts.some(isOf(cable, 'wire')));
  const ofClass = (name: string) => cables.filter((cable) => classOf(station, cable) === name);
  const carries = (cable: Cable) => Math.max(0, ...circuit.parts.map((p, i) => (isOf(cable, 'wire')(p) ? most(i) : 0)));
  const fuses = circuit.parts.flatMap((part, i): Plant[] => {
    if (part.kind !== 'resistor' || !part.fuse || most(i) < 0.01) return [];
    const { origin } = part;
    if (origin.type === 'element') {
      const is = (p: CircuitPart) =>
        p.origin.type === 'element' && p.origin.unit === origin.unit && p.origin.element === origin.element;
      const unit = station.units.find((u) => u.id === origin.unit)?.name ?? '';
      return [blownFuse(`${unit} ${origin.element}`, is, new RegExp(`^The fuse of ${unit}.*opens`))];
    }
    const cable = cables.find((c) => 'cable' in origin && c.id === origin.cable);
    return cable ? [blownFuse(cable.number, isOf(cable, 'cableFuse'), new RegExp(`of ${cable.number} opens`))] : [];
  });
  const relays = circuit.actors.flatMap((actor): Plant[] => {
    const isPressed = keyDowns.some((k) => k.events.some((e) => circuit.actors[e.actor] === actor));
    if (actor.does !== 'changesOver' || !isPressed) return [];
    return [deadRelay(actor.key, station.units.find((u) => u.id === actor.unit)?.name ?? '')];
  });
  return [
    ...ofClass('dc')
      .filter((cable) => carries(cable) > 5)
      .map(badJoint),
    ...fuses,
    ...ofClass('dc')
      .filter((cable) => carries(cable) > 0.01)
      .map(swapped),
    ...relays,
    ...ofClass('rf').map(shortedCoax),
    ...ofClass('control').map(openLine),
  ];
}

/** Worked through from the first step on until a reading is off: that step, and what is named there. */
export function firstOff(draft: PowerUpDraft, { build }: Plant) {
  const right: StepReading[] = [];
  const seenOnce = new Map<Setup, Seen>();
  for (const { id, taking, expected } of draft.parts.flatMap(({ steps }) => steps)) {
    if (!taking || !expected) continue;
    const { setup, probe } = taking;
    const seen = seenOnce.get(setup) ?? seenWith(setup, build(circuitOf(setup)));
    seenOnce.set(setup, seen);
    const value = probe(seen) ?? openOhms;
    if (isOff(expected, value)) return { step: id, value, causes: causesOf(draft, { step: id, value }, right) };
    right.push({ step: id, value });
  }
  return { step: '', value: 0, causes: [] };
}
