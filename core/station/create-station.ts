import { currentVersion, formatName, type Plan, type Station } from './schema/schema.ts';

/** The plan of a new station: 20 m keying at 15 words a minute, sending a third of the time. */
export const initialPlan: Plan = {
  frequencyHz: 14_060_000,
  mode: 'keying',
  speedWpm: 15,
  duty: 0.4,
  sendShare: 1 / 3,
  hoursPerDay: 1,
};

/** A station with nothing in it. */
export function createStation(title = 'New station'): Station {
  return {
    format: formatName,
    version: currentVersion,
    title,
    notes: '',
    plan: initialPlan,
    units: [],
    cables: [],
    hookups: [],
    accepted: [],
    readings: [],
    settings: {},
    kinds: {},
    cableKinds: {},
    connectors: {},
  };
}
