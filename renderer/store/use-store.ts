import { useStore } from 'zustand';
import type { Station } from '../../core/index.ts';
import { type DocumentState, documentStore } from './document.ts';
import { type ResultsState, resultsStore } from './results.ts';
import { type ViewState, viewStore } from './view.ts';

export const useDocument = <T>(pick: (state: DocumentState) => T): T => useStore(documentStore, pick);
export const useView = <T>(pick: (state: ViewState) => T): T => useStore(viewStore, pick);
export const useResults = <T>(pick: (state: ResultsState) => T): T => useStore(resultsStore, pick);

/** A part of the station, or all of it. */
export const useStation = <T = Station>(pick: (station: Station) => T = (station) => station as T): T =>
  useStore(documentStore, (state) => pick(state.history.station));
