import { useStore } from 'zustand';
import { useShallow } from 'zustand/shallow';
import type { Station } from '../../core/index.ts';
import { documentStore, type OpenDocument } from './document.ts';
import { type Results, resultsStore } from './results.ts';
import { type ViewState, viewStore } from './view.ts';

export const useDocument = <T>(pick: (state: OpenDocument) => T): T => useStore(documentStore, pick);
export const useView = <T>(pick: (state: ViewState) => T): T => useStore(viewStore, pick);
/** A part of what the survey found: whoever takes it decides what its age means. */
export const useResults = <T>(pick: (results: Results) => T): T => useStore(resultsStore, pick);

/**
 * All of it, as it is shown: for the moment between an edit and its report the last one passes for fresh, so that
 * nothing is drawn again for it.
 */
export const useShownResults = (): Results =>
  useStore(
    resultsStore,
    useShallow((results) => (results.is === 'passing' ? { ...results, is: 'fresh' } : results)),
  );

/** A part of the station, or all of it. */
export const useStation = <T = Station>(pick: (station: Station) => T = (station) => station as T): T =>
  useStore(documentStore, (state) => pick(state.history.station));
