import type { TriedHookup } from '../../../rules/rule.ts';
import { cablesAt, cablesIn, portName } from '../../../station/parts.ts';
import type { Cable } from '../../../station/schema/schema.ts';
import type { Context } from '../context.ts';
import { type DraftPart, type DraftStep, doing } from '../draft.ts';
import { type Setup, trialOf } from '../setup.ts';
import { controlsOf, lineSteps } from './lines.ts';
import { sendingsIn } from './senders.ts';
import { reasonsNotTo, sendingSteps } from './sending.ts';

/** All plugged in, sending into the dummy load; where no hook-up has one it says so and has nothing to send into. */
export function dummyPart(context: Context, told: Set<string>): DraftPart {
  const title = 'Sending into the dummy load';
  const { dummy } = context;
  if (!dummy) {
    const sends = context.base.trial.circuit.rf.sources.length > 0;
    const text = hasDummyLoad(context)
      ? 'As drawn nothing gets as far as sending into the dummy load. Put that right before anything goes on the air.'
      : 'No hook-up leads into a dummy load. Add one before anything sends: the first test does not belong on the air.';
    return { id: 'dummy', title, before: '', steps: sends ? [doing({ id: 'dummy/none', text })] : [] };
  }
  const whole: Setup = { station: context.station, hookup: dummy.hookup, pulled: [], control: null, powered: true };
  const lines = lineSteps(context, whole, controlsOf(context, trialOf(whole)), told, 'dummy');
  const sendings = sendingsIn(context, dummy);
  const steps = sendings.flatMap((sending) => sendingSteps(context, 'dummy', sending));
  const held = steps.findIndex(({ id }) => id.endsWith('/hold')) + 1;
  const isAtRest = ({ taking }: DraftStep) => taking?.setup.control === null;
  // Where one control is not to be pressed, none is.
  const mayPress = sendings.every((sending) => reasonsNotTo(context, sending).length === 0);
  const pressed = mayPress ? lines.filter((step) => !isAtRest(step)) : [];
  return {
    id: 'dummy',
    title,
    before: `Everything plugged in. Hook-up: ${dummy.hookup.name}. Transmitting needs a licence, into a dummy load as well where your rules say so.`,
    steps:
      steps.length > 0 ? [...lines.filter(isAtRest), ...steps.slice(0, held), ...pressed, ...steps.slice(held)] : lines,
  };
}

const hasDummyLoad = ({ station, facts }: Context): boolean =>
  facts.hookups.some(({ hookup, trial }) =>
    trial.circuit.rf.loads.some(
      ({ unit, spec }) => spec.role === 'termination' && cablesAt(station, hookup, unit).length > 0,
    ),
  );

/** The same on each hook-up that leads to an antenna, last of all. */
export function antennaPart(context: Context): DraftPart {
  const tested = new Set(context.dummy ? sendingsIn(context, context.dummy).map(({ unit }) => unit) : []);
  const steps = context.onAir.flatMap((tried): DraftStep[] => {
    const part = `antenna/${tried.hookup.id}`;
    const sendings = sendingsIn(context, tried);
    const stops = sendings.filter((sending) => reasonsNotTo(context, sending).length > 0);
    if (stops.length > 0) return stops.flatMap((sending) => sendingSteps(context, part, sending));
    return [
      doing({ id: `${part}/change`, text: changeWords(context, tried) }),
      doing({
        id: `${part}/hear`,
        text: 'Before sending: the noise rises as the antenna is plugged in, and a station that you know is as strong as ever. Write down which.',
      }),
      ...sendings.flatMap((sending) => sendingSteps(context, part, sending, tested.has(sending.unit))),
    ];
  });
  return {
    id: 'antenna',
    title: 'On the antenna',
    before:
      'Only when all above is right. Nobody near the antenna or the line; listen first; keep to the licence and the local rules on RF exposure.',
    steps,
  };
}

/** What is plugged over between the hook-up before and this one. */
function changeWords({ station, base, dummy = base }: Context, { hookup }: TriedHookup): string {
  const [before, after] = [cablesIn(station, dummy.hookup), cablesIn(station, hookup)];
  const words = (cables: readonly Cable[]) =>
    cables.map((c) => `${c.number} (${portName(station, c.a)} to ${portName(station, c.b)})`).join(', ');
  const [out, into] = [before.filter((c) => !after.includes(c)), after.filter((c) => !before.includes(c))];
  const parts = [
    `Hook-up “${hookup.name}”, with everything off`,
    ...(out.length > 0 ? [`take out ${words(out)}`] : []),
    ...(into.length > 0 ? [`plug in ${words(into)}`] : []),
    'and set all switches as it says',
  ];
  return `${parts.join('; ')}.`;
}
