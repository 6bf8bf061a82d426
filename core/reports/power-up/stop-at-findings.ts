import type { Finding } from '../../rules/finding.ts';
import { cablesAt, cablesIn, findCable } from '../../station/parts.ts';
import type { Place } from '../../station/place.ts';
import type { Station } from '../../station/schema/schema.ts';
import { isFoundIn, isPressing } from '../is-pressing.ts';
import { type DraftPart, type DraftStep, doing } from './draft-step.ts';
import type { Setup } from './setup.ts';

/**
 * A part with power on ends where the drawing is wrong: with the first reading that warns, or before the first one for
 * which something wrong is plugged in. What it would expect follows from the mistake.
 */
export function stopAtFindings(findings: readonly Finding[], part: DraftPart): DraftPart {
  const pressing = findings.filter(isPressing);
  for (const [i, step] of part.steps.entries()) {
    const wrong = pressing.find((finding) => isBehind(finding, step));
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

/**
 * Whether a step's reading follows from a finding, all of which is plugged in by then. At rest what endangers a unit that
 * is only to be powered counts; while a line is pressed, what is wrong with that line. Sending has reasons of its own.
 */
function isBehind(finding: Finding, { id, taking, at: here }: DraftStep): boolean {
  const { rule, severity, moments, at } = finding;
  const setup = taking?.setup;
  if (!setup?.powered || !isFoundIn(finding, setup.hookup.id)) return false;
  if (!at.every((place) => isPluggedIn(place, setup))) return false;
  const isAtRest = moments.length === 0 || moments.includes('receive');
  if (setup.control === null) return isAtRest && (severity === 'danger' || /^(power|drawing)\//.test(rule));
  return id.endsWith('/pressed') && at.some((place) => here.some((one) => isOnLine(setup.station, place, one)));
}

/** Whether a finding is about a line, or about what it is plugged into. */
function isOnLine(station: Station, place: Place, line: Place): boolean {
  if (!('cable' in line)) return false;
  if ('cable' in place) return place.cable === line.cable;
  const cable = findCable(station, line.cable);
  const ends = cable ? [cable.a, cable.b] : [];
  return ends.some(({ unit, port }) => unit === place.unit && (place.port === undefined || place.port === port));
}

function isPluggedIn(place: Place, { station, hookup, pulled }: Setup): boolean {
  const isOut = (cable: string) => pulled.some((plug) => plug.cable === cable);
  if ('unit' in place) return cablesAt(station, hookup, place.unit, place.port).some(({ id }) => !isOut(id));
  return !isOut(place.cable) && cablesIn(station, hookup).some(({ id }) => id === place.cable);
}
