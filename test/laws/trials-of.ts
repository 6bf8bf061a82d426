import { tryHookup } from '../../core/keydown/try-hookup.ts';
import type { TriedHookup } from '../../core/rules/rule.ts';
import { hookupsOf } from '../../core/station/parts.ts';
import type { Station } from '../../core/station/schema/schema.ts';

/** Every hook-up of a station tried, as in its survey, without the rules that judge it. */
export const trialsOf = (station: Station): TriedHookup[] =>
  hookupsOf(station).map((hookup) => ({ hookup, trial: tryHookup(station, hookup) }));
