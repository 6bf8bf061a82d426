import { checkKind } from './check/check-kind.ts';
import { takeOutForbiddenKeys } from './check/take-out-forbidden-keys.ts';
import { kindFileSchema, kindFormat, type WholeKind } from './kind-file.ts';
import type { Problem } from './problem.ts';
import { readJson } from './read-json.ts';
import { problemsOfSchema, shorten } from './schema-problems.ts';
import { bringUpToDate } from './versions.ts';

/** A unit kind, or every problem that keeps the text from being one. */
export type ReadKindResult = WholeKind | { problems: Problem[] };

/**
 * Reads the text of a unit kind's file: `kind.ports[2].connector` is the place of a problem in it. Nothing is thrown,
 * however broken the text is.
 */
export function readKind(text: string): ReadKindResult {
  const json = readJson(text, 'a unit kind file');
  if ('problems' in json) return json;
  const dated = bringUpToDate(json.value, kindFormat);
  if ('problem' in dated) return { problems: [dated.problem] };
  const { document } = dated;
  const forbidden = takeOutForbiddenKeys(document);
  const parsed = kindFileSchema.safeParse(document);
  if (!parsed.success) return { problems: shorten([...forbidden, ...problemsOfSchema(parsed.error, document)]) };
  const { kind, connectors } = parsed.data;
  const broken = checkKind(kind, connectors).map(({ place, message }) => ({ place: `kind.${place}`, message }));
  const problems = [...forbidden, ...broken];
  return problems.length > 0 ? { problems: shorten(problems) } : { kind, connectors };
}
