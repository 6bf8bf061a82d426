import type { Circuit, SupplyPart } from '../circuit/circuit.ts';
import { voltsBetween } from '../keydown/feel.ts';
import type { Reach } from '../keydown/key-down.ts';
import { wattsFromDbm } from '../quantity/decibel.ts';
import { sendingsOf } from '../rules/instants.ts';
import { controlKey, isSending } from '../rules/look.ts';
import type { Facts, TriedHookup } from '../rules/rule.ts';
import { cablesIn } from '../station/parts.ts';
import type { Cable, Station } from '../station/schema.ts';
import type { CableReading, Overlay, PortReading, UnitReading } from './report.ts';

/** What is everywhere in receive and in sending, for each hook-up and control. */
export function overlaysOf({ station, hookups }: Facts): Overlay[] {
  return hookups.flatMap((tried) => {
    const { trial } = tried;
    const receive = overlayOf(station, tried, '', 'receive', trial.receive);
    const controls = trial.keyDowns.map((k) => controlKey(trial.circuit, k));
    const sendings = sendingsOf(trial).map(({ reach }, i) =>
      overlayOf(station, tried, controls[i] ?? '', 'sending', reach),
    );
    return controls.length === 0 ? [receive] : [...controls.map((control) => ({ ...receive, control })), ...sendings];
  });
}

function overlayOf(
  station: Station,
  { hookup, trial }: TriedHookup,
  control: string,
  moment: Overlay['moment'],
  reach: Reach,
): Overlay {
  const { circuit } = trial;
  const cables = cablesIn(station, hookup);
  const ports = station.units.flatMap((unit) =>
    (station.kinds[unit.kind]?.ports ?? []).map((port) => `${unit.id}.${port.id}`),
  );
  return {
    hookup: hookup.id,
    control,
    moment,
    units: Object.fromEntries(station.units.map((unit) => [unit.id, unitReading(circuit, reach, unit.id)])),
    cables: Object.fromEntries(cables.map((cable) => [cable.id, cableReading(circuit, reach, cable)])),
    ports: Object.fromEntries(ports.map((port) => [port, portReading(station, circuit, reach, port)])),
  };
}

function unitReading(circuit: Circuit, reach: Reach, unit: string): UnitReading {
  const own = circuit.actors
    .map((actor, i) => ({ actor, on: reach.on[i] === 1 }))
    .filter(({ actor }) => actor.unit === unit);
  const power = own.find(({ actor }) => actor.id === 'powered');
  const index = circuit.parts.findIndex(
    (p) => p.kind === 'supply' && p.origin.type === 'element' && p.origin.unit === unit,
  );
  const supply = index < 0 ? undefined : (circuit.parts[index] as SupplyPart);
  return {
    powered: power?.on ?? true,
    active: own.filter(({ actor, on }) => on && actor.id !== 'powered').map(({ actor }) => actor.label),
    sending: circuit.rf.sources.some((s) => s.unit === unit && isSending(s, reach)),
    ...(supply && {
      supplyAmps: reach.dc.amps[index] as number,
      supplyVolts: voltsBetween(reach.dc, supply.plus, supply.minus) ?? 0,
    }),
  };
}

function cableReading(circuit: Circuit, reach: Reach, cable: Cable): CableReading {
  const wires = circuit.parts.flatMap((part, i) =>
    part.kind === 'resistor' && part.origin.type === 'wire' && part.origin.cable === cable.id
      ? [{ part, role: part.origin.role, amps: reach.dc.amps[i] as number }]
      : [],
  );
  const live = wires.find((w) => w.role === 'live');
  const back = wires.find((w) => w.role === 'return');
  const level = strongestOf(circuit, reach, [cable.a, cable.b]);
  return {
    volts: live && back ? voltsBetween(reach.dc, live.part.a, back.part.a) : null,
    amps: Math.abs(live?.amps ?? 0),
    returnAmps: Math.abs(back?.amps ?? 0),
    dbm: level?.dbm ?? null,
    watts: level ? wattsFromDbm(level.dbm) : null,
    carriesRf: level !== null && !level.leak,
  };
}

/** The level that a cable carries: what its weaker end still gets comes through it, what its stronger end has goes in. */
function strongestOf(
  circuit: Circuit,
  reach: Reach,
  ends: readonly Cable['a'][],
): { dbm: number; leak: boolean } | null {
  const levels = ends.map((end) => reach.rf.levelAt(circuit.rf.ports.indexOf(`${end.unit}.${end.port}`)));
  const [a, b] = levels;
  if (!a || !b) return null;
  return a.dbm >= b.dbm ? a : b;
}

function portReading(station: Station, circuit: Circuit, reach: Reach, key: string): PortReading {
  const [unit, port] = [key.slice(0, key.lastIndexOf('.')), key.slice(key.lastIndexOf('.') + 1)];
  const kind = station.kinds[station.units.find((u) => u.id === unit)?.kind ?? ''];
  const connector = station.connectors[kind?.ports.find((p) => p.id === port)?.connector ?? ''];
  const node = (role: string) => circuit.nodeOf.get(`${key}.${connector?.contacts.find((c) => c.role === role)?.id}`);
  const [live, back] = [node('live'), node('return')];
  const amps = circuit.parts.reduce(
    (sum, part, i) =>
      part.kind === 'resistor' && part.origin.type === 'mate' && part.b === live
        ? sum + (reach.dc.amps[i] as number)
        : sum,
    0,
  );
  return {
    volts: live === undefined || back === undefined ? null : voltsBetween(reach.dc, live, back),
    amps: Math.abs(amps),
    dbm: reach.rf.levelAt(circuit.rf.ports.indexOf(key))?.dbm ?? null,
  };
}
