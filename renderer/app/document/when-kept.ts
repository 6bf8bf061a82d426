/** `today at 14:32`, `yesterday at 09:05`, `3 May 2026 at 21:40`: when something was kept, as one would say it now. */
export function whenKept(keptAt: number | null, now: number): string {
  if (keptAt === null) return 'some time ago';
  const at = new Date(keptAt);
  const clock = `${two(at.getHours())}:${two(at.getMinutes())}`;
  return `${day(at, new Date(now))} at ${clock}`;
}

const two = (n: number): string => String(n).padStart(2, '0');

function day(at: Date, now: Date): string {
  const before = new Date(now.getFullYear(), now.getMonth(), now.getDate() - 1);
  if (at.toDateString() === now.toDateString()) return 'today';
  if (at.toDateString() === before.toDateString()) return 'yesterday';
  return at.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}
