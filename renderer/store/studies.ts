import { createStore, type StoreApi } from 'zustand/vanilla';
import type { MixUpStudy, RankedFailures, Scheme, Station } from '../../core/index.ts';
import type { Computed } from './computed.ts';

/** Where a study is. Nothing is tried while nobody looks at its list, or what it came to is there. */
export type StudyPhase =
  | { readonly is: 'resting' | 'waiting' }
  | { readonly is: 'running' | 'stopped'; readonly done: number; readonly of: number };

/** A study of the document that takes its time. */
export interface StudyState<T> {
  readonly phase: StudyPhase;
  /** What it came to, of this document or an earlier one. */
  readonly shown: Computed<T>;
  /** Whether its list is in view: it is begun then alone. */
  readonly inView: boolean;
  /** The document for which the user stopped it. */
  readonly stoppedFor: Station | null;
}

/** What a hand could do wrong, and what would keep it from the worst of that. */
export interface MixUpResult {
  readonly study: MixUpStudy;
  readonly scheme: Scheme;
}

export type StudyStore<T> = StoreApi<StudyState<T>>;

const newStore = <T>(): StudyStore<T> =>
  createStore<StudyState<T>>(() => ({
    phase: { is: 'resting' },
    shown: { is: 'computing' },
    inView: false,
    stoppedFor: null,
  }));

export const mixUpStore: StudyStore<MixUpResult> = newStore();
export const failureStore: StudyStore<RankedFailures> = newStore();

export const viewStudy = <T>(store: StudyStore<T>, inView: boolean) => store.setState({ inView });

/** Stops a study of this document until it is begun again. */
export const stopStudy = <T>(store: StudyStore<T>, station: Station) => store.setState({ stoppedFor: station });

export const beginStudy = <T>(store: StudyStore<T>) => store.setState({ stoppedFor: null });
