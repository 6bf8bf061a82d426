import type { Finding, Place } from '../../rules/finding.ts';
import { cablesAt, cablesIn } from '../../station/parts.ts';
import type { Hookup } from '../../station/schema/schema.ts';
import { type DraftPart, doing } from './draft.ts';
import type { Setup } from './setup.ts';

/** What has to be put right before anything is switched on: dangers and faults, not accepted, that follow from no other. */
export const isPressing = ({ severity, accepted, causedBy }: Finding): boolean =>
  accepted === undefined && causedBy === undefined && (severity === 'danger' || severity === 'fault');

export const isInHookup = ({ hookups }: Finding, { id }: Hookup): boolean =>
  hookups.length === 0 || hookups.includes(id);

/**
 * A part with power on ends where the drawing is wrong: with the first reading that warns, or before the first one for
 * which something wrong is plugged in. What it would expect follows from the mistake.
 */
export function stopAtFindings(findings: readonly Finding[], part: DraftPart): DraftPart {
  const pressing = findings.filter(isPressing);
  for (const [i, step] of part.steps.entries()) {
    const wrong = step.taking && pressing.find((finding) => isAtWork(finding, step.taking?.setup));
    if (!wrong && step.warning === null) continue;
    const stop = wrong
      ? doing({
          id: `${step.id}/stop`,
          text: `Stop here. As drawn: ${wrong.message} Put that right first, and go on with a sheet made anew.`,
          at: wrong.at,
        })
      : { ...step, expected: null, figure: null, taking: null };
    return { ...part, steps: [...part.steps.slice(0, i), stop] };
  }
  return part;
}

/** Whether all that a finding is about is plugged in, and it tells at rest where nothing is pressed. */
function isAtWork({ rule, severity, moments, hookups, at }: Finding, setup: Setup | undefined): boolean {
  if (!setup?.powered || (hookups.length > 0 && !hookups.includes(setup.hookup.id))) return false;
  const isAtRest = moments.length === 0 || moments.includes('receive');
  // A line that does not work yet does no harm to a unit that is only to be powered.
  const concernsPower = severity === 'danger' || /^(power|drawing)\//.test(rule);
  if (setup.control === null && !(isAtRest && concernsPower)) return false;
  // Sending has reasons of its own; while lines are pressed nothing sends.
  if (setup.control !== null && rule.startsWith('rf/')) return false;
  return at.every((place) => isPluggedIn(place, setup));
}

function isPluggedIn(place: Place, { station, hookup, pulled }: Setup): boolean {
  const isOut = (cable: string) => pulled.some((plug) => plug.cable === cable);
  if ('unit' in place) return cablesAt(station, hookup, place.unit, place.port).some(({ id }) => !isOut(id));
  return !isOut(place.cable) && cablesIn(station, hookup).some(({ id }) => id === place.cable);
}
