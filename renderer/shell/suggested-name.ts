/** `Hut, 30 m` gives `hut-30-m.station.json`. */
export function suggestedName(title: string): string {
  const plain = title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return `${plain.slice(0, 60) || 'station'}.station.json`;
}
