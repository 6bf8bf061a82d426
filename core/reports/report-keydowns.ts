import type { CircuitActor } from '../circuit/circuit.ts';
import type { KeyDown } from '../keydown/key-down.ts';
import { wattsFromDbm } from '../quantity/decibel.ts';
import { ditMs } from '../quantity/dit-ms.ts';
import type { Facts, TriedHookup } from '../rules/rule.ts';
import { unitName } from '../station/parts.ts';
import type { Station } from '../station/schema/schema.ts';
import { controlKey, controlName } from '../trial/names.ts';
import { listeningIn } from '../trial/rf/listening.ts';
import type { KeydownReport, Lane, LaneKind } from './report-rows.ts';

/** Every key-down as lanes and events: who is on from when to when, and when RF comes out. */
export function reportKeydowns({ station, hookups }: Facts): KeydownReport[] {
  return hookups.flatMap((tried) => tried.trial.keyDowns.map((keyDown) => reportOne(station, tried, keyDown)));
}

function reportOne(station: Station, { hookup, trial }: TriedHookup, keyDown: KeyDown): KeydownReport {
  const { actors } = trial.circuit;
  const dit = ditMs(station.plan.speedWpm);
  return {
    hookup: hookup.id,
    hookupName: hookup.name,
    control: controlKey(trial.circuit, keyDown),
    controlName: controlName(station, trial.circuit, keyDown),
    releasedMs: keyDown.releasedMs,
    endMs: keyDown.endMs,
    settled: keyDown.settled,
    lanes: movedActors(keyDown).flatMap((i) => laneOf(station, keyDown, actors[i] as CircuitActor, i)),
    events: keyDown.events.map(({ atMs, actor, on }) => {
      const { unit, id, bounceMs } = actors[actor] as CircuitActor;
      return { atMs, unit, actor: id, name: nameOf(station, actors[actor] as CircuitActor), on, bounceMs };
    }),
    rf: rfSpan(keyDown),
    ditMs: dit,
    listening: listeningIn(trial, keyDown, dit).map(({ receiver, ...heard }) => ({
      unit: receiver.unit,
      name: unitName(station, receiver.unit),
      ...heard,
    })),
  };
}

const movedActors = ({ events }: KeyDown): number[] =>
  [...new Set(events.map((event) => event.actor))].sort((a, b) => a - b);

/** `Changeover relay`, `Transmitter RF`; a unit that is all actor goes by its name alone. */
function nameOf(station: Station, actor: CircuitActor): string {
  if (actor.id === 'powered') return actor.label;
  const unit = unitName(station, actor.unit);
  if (actor.label.toLowerCase() === unit.toLowerCase()) return unit;
  const isAbbreviation = /^[A-Z]{2}/.test(actor.label);
  return `${unit} ${isAbbreviation ? actor.label : actor.label.charAt(0).toLowerCase() + actor.label.slice(1)}`;
}

const laneKind = (actor: CircuitActor): LaneKind => {
  if (actor.feels.some((f) => f.type === 'operator')) return 'operator';
  return actor.does === undefined || actor.does === 'powered' ? 'other' : actor.does;
};

/** The lane of an actor; none where it does nothing in this key-down. */
function laneOf(station: Station, keyDown: KeyDown, actor: CircuitActor, index: number): Lane[] {
  const events = keyDown.events.filter((e) => e.actor === index);
  if (events.length === 0) return [];
  const spans: [number, number][] = [];
  let from = keyDown.moments[0]?.reach.on[index] === 1 ? 0 : null;
  for (const event of events) {
    if (event.on) from ??= event.atMs;
    else if (from !== null) {
      spans.push([from, event.atMs]);
      from = null;
    }
  }
  if (from !== null) spans.push([from, keyDown.endMs]);
  return [{ unit: actor.unit, actor: actor.id, name: nameOf(station, actor), kind: laneKind(actor), spans }];
}

function rfSpan(keyDown: KeyDown): KeydownReport['rf'] {
  const { moments } = keyDown;
  const levels = moments.flatMap((m) =>
    m.reach.rf.fields.map((f) => Math.max(...[...f.best.values()].map((a) => a.dbm))),
  );
  const makes = moments.map((m) => m.reach.rf.fields.length > 0);
  const first = makes.indexOf(true);
  if (first < 0) return null;
  const after = moments[makes.lastIndexOf(true) + 1];
  return {
    fromMs: moments[first]?.startMs ?? 0,
    toMs: after?.startMs ?? keyDown.endMs,
    watts: wattsFromDbm(Math.max(...levels)),
  };
}
