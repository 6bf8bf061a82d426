import type { TriedHookup } from '../../../rules/rule.ts';
import { cablesAt, cablesIn, portName, unitName } from '../../../station/parts.ts';
import type { Cable } from '../../../station/schema/schema.ts';
import { isLive } from '../coming-in.ts';
import { type Context, wholeSetup } from '../context.ts';
import { type DraftPart, type DraftStep, doing } from '../draft-step.ts';
import { trialOf } from '../setup.ts';
import { firstPowerSteps } from './first-power-steps.ts';
import { controlsOf, lineSteps, pulledForLines } from './lines.ts';
import { type Sending, sendingsIn } from './senders.ts';
import { reasonsNotTo, sendingSteps } from './sending-steps.ts';
import { switchWords } from './switch-words.ts';
import { otherUnitSteps } from './units.ts';

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
  const whole = wholeSetup(context, dummy.hookup);
  const ran = new Set(told);
  const lines = lineSteps(context, whole, controlsOf(context, trialOf(whole)), told, 'dummy');
  const sendings = sendingsIn(context, dummy);
  const isAtRest = ({ taking }: DraftStep) => taking?.setup.control === null;
  const before = `Hook-up: ${dummy.hookup.name}. Clip the meter on, hold, read, let go, and wait between readings. Transmitting needs a licence, into a dummy load as well where your rules say so.`;
  // Where one control is not to be pressed, none is.
  const stops = stopsOf(context, 'dummy', sendings);
  if (stops.length > 0) return { id: 'dummy', title, before, steps: stops };
  const others = otherUnitSteps(context, dummy, new Set(context.fed.map(({ unit }) => unit)));
  const pressed = lines.filter((step) => !isAtRest(step));
  const steps = sendings.flatMap((sending) => {
    const own = sendingSteps(context, 'dummy', sending);
    const held = own.findIndex(({ id }) => id.endsWith('/hold')) + 1;
    const its = pressed.filter(({ taking }) => taking?.setup.control === sending.setup.control);
    return [...own.slice(0, held), ...its, ...own.slice(held)];
  });
  const later = pressed.filter((step) => !steps.includes(step));
  return {
    id: 'dummy',
    title,
    before,
    steps:
      steps.length > 0
        ? [...allIn(context, dummy, ran), ...others, ...lines.filter(isAtRest), ...steps, ...later]
        : lines,
  };
}

/** For each transmitter that is not to send, why. */
const stopsOf = (context: Context, part: string, sendings: readonly Sending[]): DraftStep[] =>
  sendings
    .filter((sending) => reasonsNotTo(context, sending).length > 0)
    .flatMap((sending) => sendingSteps(context, part, sending));

/** From here on everything is plugged in, what was pulled for the lines as well. */
function allIn(context: Context, dummy: TriedHookup, told: ReadonlySet<string>): DraftStep[] {
  const back = told.size > 0 ? pulledForLines(context).map(({ cable }) => cable.number) : [];
  const again = back.length > 0 ? `Power off; ${back.join(', ')} in again; power on.` : '';
  const change = context.base === dummy ? '' : changeWords(context, dummy, context.base);
  const text = [change, again].filter(Boolean).join(' ');
  return text === '' ? [] : [doing({ id: 'dummy/in', text })];
}

const hasDummyLoad = ({ station, facts }: Context): boolean =>
  facts.hookups.some(({ hookup, trial }) =>
    trial.circuit.rf.loads.some(
      ({ unit, spec }) => spec.role === 'termination' && cablesAt(station, hookup, unit).length > 0,
    ),
  );

/**
 * The same on each hook-up that leads to an antenna, last of all; at the lowest power only with a transmitter that has not
 * been `tested` into a dummy load.
 */
export function antennaPart(context: Context, tested: ReadonlySet<string>): DraftPart {
  const done = new Set(context.fed.map(({ unit }) => unit));
  if (context.dummy) otherUnitSteps(context, context.dummy, done);
  const steps = context.onAir.flatMap((tried): DraftStep[] => {
    const part = `antenna/${tried.hookup.id}`;
    const sendings = sendingsIn(context, tried);
    const stops = stopsOf(context, part, sendings);
    if (stops.length > 0) return stops;
    return [
      doing({ id: `${part}/change`, text: changeWords(context, tried, context.dummy ?? context.base) }),
      ...otherUnitSteps(context, tried, done),
      doing({
        id: `${part}/hear`,
        text: 'Power on. Before sending: the noise falls as the antenna’s plug is pulled and rises as it goes in (FM: with the squelch open), and a station that you know is as strong as ever. Write down which.',
      }),
      ...sendings.flatMap((sending) =>
        tested.has(sending.unit) ? sendingSteps(context, part, sending, true) : untestedSteps(context, part, sending),
      ),
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

/** What has not been tested into a dummy load goes no further than its lowest power; what has one power does not send. */
function untestedSteps(context: Context, part: string, sending: Sending): DraftStep[] {
  const first = firstPowerSteps(context, part, sending, false);
  const name = unitName(context.station, sending.unit);
  const text =
    first.length > 0
      ? `No more power than that: ${name} has not been tested into a dummy load.`
      : `Do not press ${sending.control} yet: ${name} has one power, and has not been tested into a dummy load.`;
  return [...first, doing({ id: `${part}/${sending.unit}/untested`, text })];
}

/** What is plugged over from one hook-up to another. */
function changeWords(context: Context, { hookup }: TriedHookup, from: TriedHookup): string {
  const { station } = context;
  const [before, after] = [cablesIn(station, from.hookup), cablesIn(station, hookup)];
  const words = (cables: readonly Cable[]) =>
    cables.map((c) => `${c.number} (${portName(station, c.a)} to ${portName(station, c.b)})`).join(', ');
  const [out, into] = [before.filter((c) => !after.includes(c)), after.filter((c) => !before.includes(c))];
  // A line that hung open charges itself up.
  const dead = context.comers.filter((one) => one.class === 'rf' && !isLive(one));
  const charged = into.filter((cable) => dead.some((one) => one.cable === cable));
  const parts = [
    `With everything off, over to hook-up “${hookup.name}”`,
    ...(out.length > 0 ? [`take out ${words(out)}`] : []),
    ...(charged.length > 0
      ? [`touch ${charged.map(({ number }) => number).join(', ')} centre to shell, away from your fingers`]
      : []),
    ...(into.length > 0 ? [`plug in ${words(into)}`] : []),
    ...switchWords(station, hookup, from.hookup).map((words) => `set ${words}`),
  ];
  return `${parts.join('; ')}.`;
}
