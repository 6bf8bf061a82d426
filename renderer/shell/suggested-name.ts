import { plainName } from './plain-name.ts';

/** `Hut, 30 m` gives `hut-30-m.station.json`. */
export function suggestedName(title: string): string {
  return `${plainName(title, 60) || 'station'}.station.json`;
}
