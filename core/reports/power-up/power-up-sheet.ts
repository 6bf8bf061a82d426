import { kindOf } from '../../station/parts.ts';
import { rememberEach } from '../../station/remember.ts';
import type { Station } from '../../station/schema/schema.ts';
import { survey } from '../../survey.ts';
import { isPressing } from '../is-pressing.ts';
import { type Context, contextOf } from './context.ts';
import type { DraftPart, DraftStep } from './draft.ts';
import { byEyePart } from './parts/by-eye-part.ts';
import { linesPart } from './parts/lines.ts';
import { antennaPart, dummyPart } from './parts/on-the-air.ts';
import { sparesPart } from './parts/spares-part.ts';
import { stormPart } from './parts/storm-part.ts';
import { distributionPart, supplyPart } from './parts/supply.ts';
import { unitsPart } from './parts/units.ts';
import { unpoweredPart } from './parts/unpowered-part.ts';
import type { Caution, PowerUpSheet } from './sheet.ts';
import { stopAtFindings } from './stops.ts';

/** Hears how many of how many pieces of the work are done. */
type Tell = (done: number, of: number) => void;

/**
 * The steps in which a station is powered up, each with what its meter should read: worked out by the solver of the
 * survey on the station as it is plugged together at that step. For the hook-up with a dummy load, or the one asked for
 * by its id, and for the antenna. No parts where nothing gives power.
 */
export function powerUpSheet(station: Station, hookup: string | null = null, tell?: Tell): PowerUpSheet {
  const { parts, findings, hookup: name } = draftOf(station, hookup, tell);
  return {
    first: findings.filter(isPressing).map((f) => f.message),
    hookup: name,
    parts: parts.map((part) => ({ ...part, steps: part.steps.map(plain) })),
    cautions: cautionsOf(station),
  };
}

/** The sheet with the ways in which its readings are worked out, for who wants to take them again. */
export const draftOf = rememberEach((station: Station, hookup: string | null, tell?: Tell) => {
  const facts = survey(station);
  const context = contextOf(facts, hookup);
  const { findings } = facts;
  if (!context) return { parts: [], findings, hookup: '' };
  const lines = linesPart(context);
  const told = new Set(
    lines.steps.flatMap((step) => step.at.flatMap((place) => ('cable' in place ? [place.cable] : []))),
  );
  const dummy = stopAtFindings(findings, dummyPart(context, told));
  const tested = new Set(dummy.steps.flatMap(({ id }) => /^dummy\/(.+)\/hold$/.exec(id)?.[1] ?? []));
  const makers: readonly ((context: Context) => DraftPart)[] = [
    unpoweredPart,
    supplyPart,
    distributionPart,
    unitsPart,
    () => lines,
    () => dummy,
    () => antennaPart(context, tested),
    byEyePart,
    stormPart,
    sparesPart,
  ];
  const parts = makers.map((make, i) => {
    tell?.(i, makers.length);
    return stopAtFindings(findings, make(context));
  });
  return { parts: parts.filter((part) => part.steps.length > 0), findings, hookup: context.base.hookup.name };
});

function cautionsOf(station: Station): Caution[] {
  const unitsOf = new Map<string, string[]>();
  for (const unit of station.units) {
    for (const text of kindOf(station, unit).cautions ?? [])
      unitsOf.set(text, [...(unitsOf.get(text) ?? []), unit.name]);
  }
  return [...unitsOf].map(([text, units]) => ({ units: units.join(', '), text }));
}

const plain = ({ taking: _, ...step }: DraftStep) => step;
