import { kindOf } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { isPressing } from '../is-pressing.ts';
import type { PowerUpDraft } from './draft-power-up.ts';
import type { DraftStep } from './draft-step.ts';
import type { Caution, PowerUpSheet } from './sheet.ts';

/** The sheet of a draft: what is to be done and read, without how it was worked out. */
export const sheetOf = ({ station, parts, findings, hookup }: PowerUpDraft): PowerUpSheet => ({
  first: findings.filter(isPressing).map((f) => f.message),
  hookup,
  parts: parts.map((part) => ({ ...part, steps: part.steps.map(plain) })),
  cautions: cautionsOf(station),
});

const plain = ({ taking: _, ...step }: DraftStep) => step;

function cautionsOf(station: Station): Caution[] {
  const unitsOf = new Map<string, string[]>();
  for (const unit of station.units) {
    for (const text of kindOf(station, unit).cautions ?? [])
      unitsOf.set(text, [...(unitsOf.get(text) ?? []), unit.name]);
  }
  return [...unitsOf].map(([text, units]) => ({ units: units.join(', '), text }));
}
