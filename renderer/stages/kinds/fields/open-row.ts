/** Opens the row that a place is in, once it is drawn, and puts the focus on it; the place of a problem will do. */
export function openRow(place: string) {
  setTimeout(() => {
    const [list = place, index = ''] = place.split(/(?=\[)|\./);
    const found = document.getElementById(`kind-${list}${index}`) ?? document.getElementById(`kind-${list}`);
    if (found instanceof HTMLDetailsElement) found.open = true;
    found?.querySelector<HTMLElement>('summary, input, textarea, select, button')?.focus();
    found?.scrollIntoView({ block: 'nearest' });
  });
}
