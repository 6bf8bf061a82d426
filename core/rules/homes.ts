import type { CircuitPart } from '../circuit/circuit.ts';
import { cablesIn, kindOf } from '../station/parts.ts';
import type { Cable, Unit } from '../station/schema/schema.ts';
import { inputsOfUnit, outputsOfUnit } from '../trial/audio-ends.ts';
import { endsAtPorts } from '../trial/ends-at-ports.ts';
import type { Changes } from '../trial/memory/changes.ts';
import { type JointPart, partsOfCable, partsOfUnit } from '../trial/own-parts.ts';
import { ownedBy } from '../trial/owned-by.ts';
import type { FusePart, Numbered } from '../trial/parts.ts';
import { everyRegionOf, type RfRegion } from '../trial/rf/regions.ts';
import { chainsIn } from '../trial/rf/sending-chains.ts';
import type { Around } from './rule.ts';
import type { ThingName, Things, WirePart } from './things.ts';

/** Things that are looked at together: those of a unit, of a cable, of a region, a press, the hook-up itself. */
export interface Home {
  /** `unit tx`, `cable c1`, `region tx.antenna`, `press 0`, `hookup`: the same in a later survey. */
  readonly name: string;
  /** Whether it, or what is beside it, is other than before an edit. */
  isOther(changes: Changes): boolean;
  /** The kinds of things that it may have. */
  readonly holds: readonly ThingName[];
  things(): { readonly [T in ThingName]?: readonly Things[T][] };
}

const heldBy = {
  unit: ['unit', 'port', 'load', 'supply', 'fuse', 'element', 'actor', 'rfLoad', 'output', 'input'],
  cable: ['cable', 'end', 'fuse', 'wire', 'joint'],
  region: ['anyRegion', 'region', 'chain'],
  press: ['press'],
  hookup: ['hookup'],
} as const satisfies Record<string, readonly ThingName[]>;

/** Everything in a hook-up that a rule may look at, in the order of the drawing. */
export function homesIn(around: Around): Home[] {
  const { station, hookup, trial } = around;
  const { ports } = trial.circuit.rf;
  return [
    ...station.units.map((unit) => ({
      name: `unit ${unit.id}`,
      isOther: (changes: Changes) => changes.unit(unit.id),
      holds: heldBy.unit,
      things: () => thingsOfUnit(around, unit),
    })),
    ...cablesIn(station, hookup).map((cable) => ({
      name: `cable ${cable.id}`,
      isOther: (changes: Changes) => changes.cable(cable),
      holds: heldBy.cable,
      things: () => thingsOfCable(around, cable),
    })),
    ...everyRegionOf(trial).map((region) => ({
      name: `region ${ports[region.firstPort] ?? ''}`,
      isOther: (changes: Changes) => changes.region(region.number),
      holds: heldBy.region,
      things: () => thingsOfRegion(around, region),
    })),
    ...trial.keyDowns.map((press, i) => ({
      name: `press ${i}`,
      isOther: (changes: Changes) => changes.press(i),
      holds: heldBy.press,
      things: () => ({ press: [press] }),
    })),
    { name: 'hookup', isOther: () => true, holds: heldBy.hookup, things: () => ({ hookup: [hookup] }) },
  ];
}

type Own = readonly Numbered<CircuitPart>[];

const isFuse = ({ part }: Numbered<CircuitPart>): boolean => part.kind === 'resistor' && part.fuse !== undefined;

const fusesIn = (own: Own) => own.filter(isFuse) as Numbered<FusePart>[];

function thingsOfUnit({ station, trial }: Around, unit: Unit): ReturnType<Home['things']> {
  const own = partsOfUnit(trial.circuit, unit.id);
  const { actors, rfLoads } = ownedBy(trial.circuit, unit.id);
  const kind = (name: CircuitPart['kind']) => own.filter(({ part }) => part.kind === name);
  return {
    unit: [unit],
    port: kindOf(station, unit).ports.map((port) => ({ unit, port })),
    load: kind('load') as Things['load'][],
    supply: kind('supply') as Things['supply'][],
    fuse: fusesIn(own),
    element: own.filter(({ part }) => part.origin.type === 'element') as Things['element'][],
    actor: actors,
    rfLoad: rfLoads,
    output: outputsOfUnit(trial.circuit, unit.id),
    input: inputsOfUnit(trial.circuit, unit.id),
  };
}

function thingsOfCable({ station, trial }: Around, cable: Cable): ReturnType<Home['things']> {
  const own = partsOfCable(trial.circuit, cable.id);
  const from = (type: 'wire' | 'mate') => own.filter(({ part }) => part.origin.type === type);
  return {
    cable: [cable],
    end: endsAtPorts(station, cable),
    fuse: fusesIn(own),
    wire: from('wire') as Numbered<WirePart>[],
    joint: from('mate') as Numbered<JointPart>[],
  };
}

const thingsOfRegion = ({ trial }: Around, region: RfRegion): ReturnType<Home['things']> => ({
  anyRegion: [region],
  ...(region.sources.length > 0 && { region: [region], chain: chainsIn(trial, region.number) }),
});
