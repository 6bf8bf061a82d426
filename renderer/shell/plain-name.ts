/** `Hut, 30 m` gives `hut-30-m`: at most so many letters and digits, empty where there are none. */
export const plainName = (text: string, most: number): string =>
  text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, most);
