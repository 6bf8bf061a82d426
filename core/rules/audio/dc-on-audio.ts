import type { SignalEnd } from '../../circuit/circuit.ts';
import { voltsBetween } from '../../keydown/feel.ts';
import type { AudioOutput } from '../../trial/audio-ends.ts';
import { levelsFrom, signalName, signalPort } from '../../trial/audio-levels.ts';
import { instantsBetween } from '../../trial/instants.ts';
import { type Around, defineRule, type Tell } from '../rule.ts';

/** So many times what it stands is more than a nuisance. */
const harmful = 5;

export const dcOnAudio = defineRule({
  id: 'audio/dc-on-audio',
  severity: 'danger',
  title: 'The wrong DC on an audio contact',
  compares: 'DC on audio inputs and outputs, from microphone bias or a supply, against what they stand and need',
  why: 'A capsule without its bias is silent. A dynamic microphone or a transformer is magnetised or burnt by it, and an output stage works against it.',
  advice: 'Put a capacitor in the line, switch the bias off, or use the contact without bias.',
  source: 'the units’ own figures',
  follows: ['drawing/fits-but-should-not', 'drawing/does-not-mate', 'audio/mono-in-stereo'],
  messages: {
    dc: '{port} has {volts V} DC on it; it stands {limit V}.',
    starved: '{port} gets {volts V} of bias; its capsule needs {need V}.',
  },
  looksAt: {
    output(output, around, report) {
      lookForBias(output, around, report);
      lookForDc(output.end, around, report);
    },
    input({ end }, around, report) {
      lookForDc(end, around, report);
    },
  },
});

/** Tells of a capsule that is plugged in somewhere and gets less bias than it needs. */
function lookForBias({ index, end }: AudioOutput, { station, trial }: Around, report: Tell<'starved'>) {
  const need = end.spec.minDcVolts;
  if (need === undefined) return;
  const volts = voltsBetween(trial.receive.dc, end.node, end.reference) ?? 0;
  if (volts >= need || !levelsFrom(trial, index).some((level) => level.volts > 0)) return;
  report({
    message: 'starved',
    severity: 'doubt',
    at: [signalPort(end)],
    values: { port: signalName(station, end), volts, need },
    moment: 'receive',
  });
}

type AudioEnd = SignalEnd<'audioSource'> | SignalEnd<'audioLoad'>;

/** Tells of more DC on an output or input than it stands. */
function lookForDc(end: AudioEnd, { station, trial }: Around, report: Tell<'dc'>) {
  const limit = end.spec.maxDcVolts;
  if (limit === undefined) return;
  for (const { name, reach } of instantsBetween(trial, end.node, end.reference)) {
    const volts = voltsBetween(reach.dc, end.node, end.reference) ?? 0;
    if (Math.abs(volts) <= limit) continue;
    report({
      message: 'dc',
      severity: Math.abs(volts) > harmful * limit ? 'danger' : 'doubt',
      at: [signalPort(end)],
      values: { port: signalName(station, end), volts, limit },
      moment: name,
      weight: Math.abs(volts),
    });
  }
}
