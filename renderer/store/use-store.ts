import { useStore } from 'zustand';
import type { Station } from '../../core/index.ts';
import { type DocumentState, documentStore } from './document.ts';
import { type Results, resultsStore } from './results.ts';
import { type ViewState, viewStore } from './view.ts';

export const useDocument = <T>(pick: (state: DocumentState) => T): T => useStore(documentStore, pick);
export const useView = <T>(pick: (state: ViewState) => T): T => useStore(viewStore, pick);
/** What the survey found, or a part of it: whoever takes it decides what its age means. */
export const useResults = <T = Results>(pick: (results: Results) => T = (results) => results as T): T =>
  useStore(resultsStore, pick);

/** A part of the station, or all of it. */
export const useStation = <T = Station>(pick: (station: Station) => T = (station) => station as T): T =>
  useStore(documentStore, (state) => pick(state.history.station));
