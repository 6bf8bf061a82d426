import type { Circuit } from '../../circuit/circuit.ts';
import type { ActorEvent, Trial } from '../../keydown/key-down.ts';
import { unitName } from '../../station/parts.ts';
import { controlName } from '../../trial/names.ts';
import { loadsOf, unitOfPart } from '../../trial/parts.ts';
import { feedersOf } from '../../trial/power/feeders.ts';
import { defineRule } from '../rule.ts';

export const keyingUnsettled = defineRule({
  id: 'keying/keying-unsettled',
  severity: 'fault',
  title: 'The station never comes to rest',
  compares: 'whether the station settles after it is switched on and after each press',
  why: 'A unit that switches itself off by switching on chatters: relays burn, and RF comes in bursts.',
  advice:
    'Look at what the named unit feels: a supply that it pulls down itself, or a line that its own contact opens.',
  source: 'the units’ own thresholds and times',
  follows: ['power/supply-overloaded', 'power/under-voltage', 'power/reversed-polarity', 'drawing/does-not-mate'],
  messages: {
    pressed: '{unit} goes on and off without end when {control} is pressed.',
    rest: '{unit} goes on and off without end while nobody is at any control.',
  },
  looksAt: {
    // What is restless at rest is known of the hook-up as a whole.
    hookup(_, { station, trial }, report) {
      for (const restless of trial.restless) {
        const unit = trial.circuit.actors[restless]?.unit ?? '';
        report({
          message: 'rest',
          severity: 'fault',
          at: [{ unit }],
          values: { unit: unitName(station, unit) },
          moment: 'receive',
          touches: [`supply:${unit}`, ...suppliesOf(trial, unit)],
        });
      }
    },
    press(keyDown, { station, trial }, report) {
      if (keyDown.settled) return;
      const { circuit } = trial;
      const unit = busiestUnit(circuit, keyDown.events);
      report({
        message: 'pressed',
        severity: 'fault',
        at: [{ unit }],
        values: { unit: unitName(station, unit), control: controlName(station, circuit, keyDown) },
        moment: 'sending',
        touches: suppliesOf(trial, unit),
      });
    },
  },
});

/** What feeds a unit: where that collapses the unit goes on and off with it. */
const suppliesOf = ({ circuit, receive }: Trial, unit: string): string[] =>
  loadsOf(circuit)
    .filter(({ part }) => unitOfPart(part) === unit)
    .flatMap(({ part }) => feedersOf(circuit, receive.on, part.plus).map((s) => `supply:${unitOfPart(s.part)}`));

/** The unit whose actors changed most often; of several the first by name. */
function busiestUnit({ actors }: Circuit, events: readonly ActorEvent[]): string {
  const times = new Map<string, number>();
  for (const { actor } of events) {
    const unit = actors[actor]?.unit ?? '';
    times.set(unit, (times.get(unit) ?? 0) + 1);
  }
  const [most] = [...times].sort(([a, m], [b, n]) => n - m || a.localeCompare(b));
  return most?.[0] ?? '';
}
