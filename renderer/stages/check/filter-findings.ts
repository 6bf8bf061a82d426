import type { Finding, Place, Severity, Station } from '../../../core/index.ts';
import type { Wanted } from './findings-view.ts';
import type { FindingGroup, GroupedFindings } from './group-findings.ts';

interface Filter {
  readonly hidden: readonly Severity[];
  /** Units and cables whose findings are wanted; null for all. */
  readonly about: Wanted | null;
}

/** What a filter leaves of the findings, and how many it hides, what follows from another not counted. */
export interface FilteredFindings {
  readonly open: readonly FindingGroup[];
  readonly accepted: readonly Finding[];
  readonly hiddenCount: number;
}

/**
 * The findings of severities that are not hidden at the wanted units and cables. A finding at a cable's end is one of
 * the unit that it is plugged into as well; a cause is shown where what follows from it is wanted.
 */
export function filterFindings(station: Station, all: GroupedFindings, { hidden, about }: Filter): FilteredFindings {
  const isAbout = (finding: Finding): boolean => about === null || finding.at.some((p) => isAt(station, p, about));
  const open = all.open.filter(
    ({ finding, consequences }) => !hidden.includes(finding.severity) && [finding, ...consequences].some(isAbout),
  );
  const accepted = all.accepted.filter((finding) => !hidden.includes(finding.severity) && isAbout(finding));
  const hiddenCount = all.open.length - open.length + all.accepted.length - accepted.length;
  return { open, accepted, hiddenCount };
}

function isAt(station: Station, place: Place, { units, cables }: Wanted): boolean {
  if ('unit' in place) return units.includes(place.unit);
  if (cables.includes(place.cable)) return true;
  const cable = place.end && station.cables.find((c) => c.id === place.cable);
  return cable !== undefined && place.end !== undefined && units.includes(cable[place.end].unit);
}
