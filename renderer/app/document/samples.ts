// Each sample is a file of its own in the build, fetched when it is opened.
const files = import.meta.glob<string>('../../../core/samples/*.station.json', { query: '?raw', import: 'default' });

/** Samples that the first screen offers. */
export const offeredSamples = [
  { id: 'hut-first-draft', title: 'The hut, first draft: find the mistakes' },
  { id: 'hut', title: 'The hut, put right' },
] as const;

/** The text of the sample `NAME.station.json`; null where there is none of this name. */
export async function sampleText(id: string): Promise<string | null> {
  const load = files[`../../../core/samples/${id}.station.json`];
  return load ? load() : null;
}
