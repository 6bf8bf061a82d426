import { counted, type Finding, plural } from '../../../core/index.ts';

/**
 * What a fix does to the findings, in sentences: whether its own goes, what goes with it, and what shows then, leaving
 * out what follows from another. Findings are those of the station before, and of the station with the fix made.
 */
export function fixEffect(finding: Finding, before: readonly Finding[], after: readonly Finding[]): string {
  const [was, is] = [new Set(before.map((f) => f.id)), new Set(after.map((f) => f.id))];
  const gone = before.filter((f) => !is.has(f.id) && f.id !== finding.id);
  const following = gone.filter((f) => f.causedBy === finding.id).length;
  const others = gone.length - following;
  const parts = [
    ...(following > 0 ? [`${following} that ${plural(following, 'follows', 'follow')} from it`] : []),
    ...(others > 0 ? [counted(others, 'other')] : []),
  ];
  const also = parts.join(' and ');
  const goes = is.has(finding.id)
    ? `This finding stays${also ? `, but ${also} ${plural(gone.length, 'goes', 'go')}` : ''}.`
    : `It removes this finding${also ? ` and ${also}` : ''}.`;
  const shows = showsWords(after.filter((f) => !was.has(f.id) && f.causedBy === undefined));
  return shows ? `${goes} ${shows}` : goes;
}

function showsWords(fresh: readonly Finding[]): string {
  const [one] = fresh;
  if (!one) return '';
  if (fresh.length === 1) return `Then a ${one.severity} shows: “${one.title}”.`;
  const titles = [...new Set(fresh.map((f) => f.title))].map((title) => `“${title}”`);
  return `Then ${fresh.length} others show: ${titles.join(', ')}.`;
}
