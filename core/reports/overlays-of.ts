import type { Circuit } from '../circuit/circuit.ts';
import { voltsBetween } from '../keydown/feel.ts';
import type { Reach, Trial } from '../keydown/key-down.ts';
import { wattsFromDbm } from '../quantity/decibel.ts';
import type { Facts, TriedHookup } from '../rules/rule.ts';
import { cablesIn, kindOf } from '../station/parts.ts';
import type { Station } from '../station/schema/schema.ts';
import { sendingsOf } from '../trial/instants.ts';
import { controlKey } from '../trial/names.ts';
import { isSending } from '../trial/parts.ts';
import type { CableReading, Overlay, PortReading, UnitReading } from './report-rows.ts';
import {
  type CableWhereabouts,
  cableWhereabouts,
  type PortWhereabouts,
  portWhereabouts,
  type UnitWhereabouts,
  unitWhereabouts,
} from './whereabouts.ts';

/** What is everywhere in receive, for each hook-up, and what is otherwise in sending, for each control. */
export function overlaysOf({ station, hookups }: Facts): Overlay[] {
  return hookups.flatMap((tried) => {
    const { hookup, trial } = tried;
    const places = placesOf(station, tried);
    const receive = { ...overlayOf(trial, trial.receive, places), hookup: hookup.id, control: '' };
    const sendings = sendingsOf(trial).flatMap(({ reach, keyDown }): Overlay[] => {
      if (!keyDown) return [];
      const overlay = overlayOf(trial, reach, changedPlaces(trial, reach, places));
      return [{ ...overlay, hookup: hookup.id, control: controlKey(trial.circuit, keyDown), moment: 'sending' }];
    });
    return [{ ...receive, moment: 'receive' }, ...sendings];
  });
}

interface Places {
  readonly units: readonly (readonly [string, UnitWhereabouts])[];
  readonly cables: readonly (readonly [string, CableWhereabouts])[];
  readonly ports: readonly (readonly [string, PortWhereabouts])[];
}

function placesOf(station: Station, { hookup, trial }: TriedHookup): Places {
  return {
    units: station.units.map((unit) => [unit.id, unitWhereabouts(trial, unit.id)]),
    cables: cablesIn(station, hookup).map((cable) => [cable.id, cableWhereabouts(trial, cable)]),
    ports: station.units.flatMap((unit) =>
      kindOf(station, unit).ports.map(
        (port) => [`${unit.id}.${port.id}`, portWhereabouts(station, trial, unit, port)] as const,
      ),
    ),
  };
}

/** The places at which something is not as in receive. */
function changedPlaces({ receive }: Trial, reach: Reach, { units, cables, ports }: Places): Places {
  const { changed: blocks } = reach.dc;
  const { changed: regions } = reach.rf;
  const isChanged = (place: UnitWhereabouts | CableWhereabouts | PortWhereabouts) =>
    place.blocks.some((b) => blocks.has(b)) ||
    place.regions.some((r) => regions.has(r)) ||
    ('actors' in place && place.actors.some((i) => reach.on[i] !== receive.on[i]));
  return {
    units: units.filter(([, place]) => isChanged(place)),
    cables: cables.filter(([, place]) => isChanged(place)),
    ports: ports.filter(([, place]) => isChanged(place)),
  };
}

function overlayOf({ circuit }: Trial, reach: Reach, { units, cables, ports }: Places) {
  return {
    units: Object.fromEntries(units.map(([id, place]) => [id, unitReading(circuit, reach, id, place)])),
    cables: Object.fromEntries(cables.map(([id, place]) => [id, cableReading(reach, place)])),
    ports: Object.fromEntries(ports.map(([key, place]) => [key, portReading(reach, place)])),
  };
}

function unitReading(circuit: Circuit, reach: Reach, unit: string, where: UnitWhereabouts): UnitReading {
  const { actors, sources, supplies } = where;
  const [supply] = supplies;
  const on = actors.filter((i) => reach.on[i] === 1);
  const power = circuit.actorOf.get(`${unit}.powered`);
  return {
    powered: power === undefined || reach.on[power] === 1,
    active: on.filter((i) => i !== power).map((i) => circuit.actors[i]?.label ?? ''),
    sending: sources.some((source) => isSending(source, reach)),
    ...(supply && {
      supplyAmps: supplies.reduce((sum, { index }) => sum + reach.dc.ampsIn(index), 0),
      supplyVolts: voltsBetween(reach.dc, supply.part.plus, supply.part.minus) ?? 0,
    }),
  };
}

function cableReading({ dc, rf }: Reach, { wires, rfPorts }: CableWhereabouts): CableReading {
  const live = wires.find((w) => w.role === 'live');
  const back = wires.find((w) => w.role === 'return');
  // What its weaker end still gets comes through the cable, what its stronger end has goes in.
  const [near, far] = rfPorts.map((port) => rf.levelAt(port));
  const level = near && far ? (near.dbm >= far.dbm ? near : far) : null;
  return {
    volts: live && back ? voltsBetween(dc, live.part.a, back.part.a) : null,
    amps: live ? Math.abs(dc.ampsIn(live.index)) : 0,
    returnAmps: back ? Math.abs(dc.ampsIn(back.index)) : 0,
    dbm: level?.dbm ?? null,
    watts: level ? wattsFromDbm(level.dbm) : null,
    carriesRf: level !== null && !level.leak,
  };
}

function portReading({ dc, rf }: Reach, { live, back, joints, rfPort }: PortWhereabouts): PortReading {
  return {
    volts: live === undefined || back === undefined ? null : voltsBetween(dc, live, back),
    amps: Math.abs(joints.reduce((sum, i) => sum + dc.ampsIn(i), 0)),
    dbm: rf.levelAt(rfPort)?.dbm ?? null,
  };
}
