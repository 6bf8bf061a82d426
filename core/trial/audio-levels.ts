import type { SignalEnd } from '../circuit/circuit.ts';
import { type AudioLevels, solveAudioInTurn } from '../dc/solve-audio-in-turn.ts';
import type { Trial } from '../keydown/key-down.ts';
import { portName, portOfRef } from '../station/parts.ts';
import { remember } from '../station/remember.ts';
import type { PortRef, Station } from '../station/schema/schema.ts';
import { type Instant, instantsOf, sendingsOf } from './instants.ts';

export interface AudioInstant extends Instant, AudioLevels {}

/** The audio levels of a trial in receive and in each settled sending, as far as they differ from earlier ones. */
export const audioOf = remember((trial: Trial): readonly AudioInstant[] => {
  if (trial.circuit.signals.sources.length === 0) return [];
  const instants = [...instantsOf(trial).slice(0, 1), ...sendingsOf(trial)];
  const levels = solveAudioInTurn(
    trial.circuit,
    instants.map(({ reach }) => reach.on),
  );
  return instants.flatMap((instant, i) => {
    const own = levels[i];
    return own && own.drives.length > 0 ? [{ ...instant, ...own }] : [];
  });
});

/** At each input and from each output (by number) what comes there and goes out, instant by instant. */
const levelsIn = remember((trial: Trial) => {
  const { sources, loads } = trial.circuit.signals;
  const at = new Map<number, LevelAt[]>();
  const from = new Map<number, LevelFrom[]>();
  for (const { name, levels } of audioOf(trial)) {
    for (const { source, load, volts } of levels) {
      const [output, input] = [sources[source], loads[load]];
      if (!output || !input) continue;
      push(at, load, { name, from: output, volts });
      push(from, source, { name, to: input, volts });
    }
  }
  return { at, from };
});

function push<T>(lists: Map<number, T[]>, key: number, item: T) {
  const list = lists.get(key);
  if (list) list.push(item);
  else lists.set(key, [item]);
}

/** What an output makes at an input: rms volts at the most that it gives. */
export interface LevelAt {
  readonly name: Instant['name'];
  readonly from: SignalEnd<'audioSource'>;
  readonly volts: number;
}

/** The same, seen from the output. */
export interface LevelFrom {
  readonly name: Instant['name'];
  readonly to: SignalEnd<'audioLoad'>;
  readonly volts: number;
}

/** The levels that outputs make at an input (by number). */
export function levelsAt(trial: Trial, input: number): readonly LevelAt[] {
  trial.circuit.reads.noteList('audio');
  return levelsIn(trial).at.get(input) ?? [];
}

/** The levels that an output (by number) makes at inputs. */
export function levelsFrom(trial: Trial, output: number): readonly LevelFrom[] {
  trial.circuit.reads.noteList('audio');
  return levelsIn(trial).from.get(output) ?? [];
}

/** The ohms of all that hangs on an output (by number), instant by instant. */
export function ohmsOn(trial: Trial, output: number): { readonly name: Instant['name']; readonly ohms: number }[] {
  trial.circuit.reads.noteList('audio');
  return audioOf(trial).flatMap(({ name, drives }) =>
    drives.flatMap(({ source, ohms }) => (source === output ? [{ name, ohms }] : [])),
  );
}

interface Signal {
  readonly unit: string;
  readonly spec: { readonly contact: string };
}

/** The port at which a signal leaves or enters its unit. */
export const signalPort = ({ unit, spec }: Signal): PortRef => ({
  unit,
  port: portOfRef(spec.contact),
});

export const signalName = (station: Station, end: Signal): string => portName(station, signalPort(end));
