import type { Finding } from '../../rules/finding.ts';
import type { Station } from '../../station/schema/schema.ts';
import type { Survey } from '../../survey.ts';
import { type Context, contextOf } from './context.ts';
import type { DraftPart } from './draft-step.ts';
import { byEyePart } from './parts/by-eye-part.ts';
import { linesPart } from './parts/lines.ts';
import { antennaPart, dummyPart } from './parts/on-the-air.ts';
import { sparesPart } from './parts/spares-part.ts';
import { stormPart } from './parts/storm-part.ts';
import { distributionPart, supplyPart } from './parts/supply.ts';
import { unitsPart } from './parts/units.ts';
import { unpoweredPart } from './parts/unpowered-part.ts';
import { stopAtFindings } from './stop-at-findings.ts';

/** Hears how many of how many pieces of the work are done. */
type Tell = (done: number, of: number) => void;

/** The steps of a power-up sheet with the ways in which their readings are worked out, to be taken again with something wrong. */
export interface PowerUpDraft {
  readonly station: Station;
  readonly findings: readonly Finding[];
  /** The hook-up that all but the antenna's part is done in, by name; empty where there is none. */
  readonly hookup: string;
  readonly parts: readonly DraftPart[];
}

/**
 * The steps in which a surveyed station is powered up, each with what its meter should read: worked out by the solver of
 * the survey on the station as it is plugged together at that step. For the hook-up with a dummy load, or the one asked
 * for by its id, and for the antenna. No parts where nothing gives power.
 */
export function draftPowerUp(surveyed: Survey, hookup: string | null = null, tell?: Tell): PowerUpDraft {
  const context = contextOf(surveyed, hookup);
  const { station, findings } = surveyed;
  if (!context) return { station, findings, hookup: '', parts: [] };
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
  return { station, findings, hookup: context.base.hookup.name, parts: parts.filter((part) => part.steps.length > 0) };
}
