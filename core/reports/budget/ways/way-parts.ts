import type { Circuit, CircuitPart, DiodePart, Resistor } from '../../../circuit/circuit.ts';
import type { DcSolution } from '../../../dc/dc-solution.ts';
import { classOf, findCable, portName, unitName } from '../../../station/parts.ts';
import type { Station } from '../../../station/schema/schema.ts';
import { fusePlace, fuseSeat } from '../../../trial/power/fuse-place.ts';
import type { WayPart } from '../rows.ts';

type Passed = Pick<WayPart, 'kind' | 'name' | 'at'>;

/** What stands on a way from a node through these parts, one after the other, with what each drops along it. */
export function wayParts(
  station: Station,
  { parts }: Circuit,
  dc: DcSolution,
  start: number,
  way: readonly number[],
  back: boolean,
): WayPart[] {
  const found: WayPart[] = [];
  let node = start;
  for (const index of way) {
    const part = parts[index] as Resistor | DiodePart;
    const [near, far] = part.kind === 'diode' ? [part.anode, part.cathode] : [part.a, part.b];
    const isForward = near === node;
    const next = isForward ? far : near;
    const amps = dc.ampsIn(index) * (isForward ? 1 : -1);
    add(found, { ...passed(station, part), back, amps, dropVolts: dc.between(node, next) ?? 0 });
    node = next;
  }
  return found;
}

/** Pieces of the same thing, one after the other, are one; it carries what the most loaded of them does. */
function add(found: WayPart[], piece: WayPart) {
  const last = found.at(-1);
  if (!last || last.name !== piece.name || last.kind !== piece.kind) {
    found.push(piece);
    return;
  }
  const amps = Math.abs(piece.amps) > Math.abs(last.amps) ? piece.amps : last.amps;
  found[found.length - 1] = { ...last, amps, dropVolts: last.dropVolts + piece.dropVolts };
}

function passed(station: Station, part: Resistor | DiodePart): Passed {
  const { origin } = part;
  if (part.kind === 'resistor' && part.fuse) {
    const word = origin.type === 'cableFuse' ? 'in' : 'of';
    return { kind: 'fuse', name: `Fuse ${word} ${fuseSeat(station, part)}`, at: fusePlace(station, part) };
  }
  switch (origin.type) {
    case 'element': {
      const name = unitName(station, origin.unit);
      const at = { unit: origin.unit };
      return part.kind === 'diode'
        ? { kind: 'diode', name: `Diode in ${name}`, at }
        : { kind: 'inside', name: `Inside ${name}`, at };
    }
    case 'chassis':
      return { kind: 'inside', name: `Metal of ${unitName(station, origin.unit)}`, at: { unit: origin.unit } };
    case 'mate': {
      const port = portName(station, { unit: origin.unit, port: origin.port });
      return { kind: 'contact', name: `${numberOf(station, origin.cable)} at ${port}`, at: { cable: origin.cable } };
    }
    default:
      return { kind: 'lead', name: wirePartName(station, origin), at: { cable: origin.cable } };
  }
}

const numberOf = (station: Station, cable: string): string => findCable(station, cable)?.number ?? cable;

const cores = { live: 'plus core', second: 'second core', return: 'minus core' } as const;

function wirePartName(station: Station, origin: Extract<CircuitPart['origin'], { cable: string }>): string {
  const cable = findCable(station, origin.cable);
  if (!cable || origin.type !== 'wire') return numberOf(station, origin.cable);
  const core = classOf(station, cable) === 'dc' ? cores[origin.role] : origin.role === 'return' ? 'screen' : 'core';
  return `${cable.number}, ${core}`;
}
