/** Opens the row that a place is in, once it is drawn, and puts the focus on it; the place of a problem will do. */
export function openRow(place: string) {
  setTimeout(() => {
    const [, row = place] = /^(\w+\[\d+\])/.exec(place) ?? [];
    const found = document.getElementById(`kind-${row}`);
    if (found instanceof HTMLDetailsElement) {
      found.open = true;
      found.querySelector('summary')?.focus();
    } else (found?.querySelector<HTMLElement>('input, textarea, select, button') ?? found)?.focus();
    found?.scrollIntoView({ block: 'nearest' });
  });
}
