import { classNames } from '../class-names.ts';
import type { CableFilter } from './arrange-cables.ts';

/** What a filter leaves of the list, in words for paper; empty where it leaves all. */
export function filterWords({ words, class: wanted, status, hookup }: CableFilter): string {
  const parts = [
    wanted === 'all' ? '' : classNames[wanted],
    status === 'all' ? '' : status,
    hookup === 'all' ? '' : hookup,
    words.trim() === '' ? '' : `“${words.trim()}”`,
  ].filter(Boolean);
  return parts.length > 0 ? `Only: ${parts.join(', ')}` : '';
}
