import type { SampleEntry } from './menu-template.ts';

// Vite puts the titles in at build time, so that the menu needs no file of the core at run time.
const titles = import.meta.glob<string>('../core/samples/*.station.json', { eager: true, import: 'title' });

/** The samples by name of file, for the menu. */
export const samples: SampleEntry[] = Object.entries(titles).map(([file, title]) => ({
  name: file.replace(/^.*\/|\.station\.json$/g, ''),
  title,
}));
