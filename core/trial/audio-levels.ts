import { type AudioLevels, solveAudioInTurn } from '../dc/solve-audio.ts';
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
