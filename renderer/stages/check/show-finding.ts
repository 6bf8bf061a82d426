import type { Finding, Place } from '../../../core/index.ts';
import { currentHookup } from '../../store/current.ts';
import { currentStation } from '../../store/document.ts';
import { chooseHookup, chooseMoment, showPlaces, viewStore } from '../../store/view.ts';

/** Shows where a finding is, in a hook-up and at a moment in which it is so. */
export function showFinding(finding: Finding, places: readonly Place[] = finding.at) {
  const { hookups, moments } = finding;
  const [hookup] = hookups;
  if (hookup && !hookups.includes(currentHookup(currentStation(), viewStore.getState()).id)) chooseHookup(hookup);
  const { moment } = viewStore.getState();
  const other = moment === 'receive' ? 'sending' : 'receive';
  if (moments.length > 0 && !moments.includes(moment) && moments.includes(other)) chooseMoment(other);
  showPlaces(places);
}
