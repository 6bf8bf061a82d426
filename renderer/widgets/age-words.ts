import { createContext, useContext } from 'react';
import { type Computed, type Old, timeOf } from '../store/computed.ts';

/** What is to be said of the age of everything in here; null while it is of the document as it is. */
export const AgeContext = createContext<string | null>(null);

export const useIsOld = (): boolean => useContext(AgeContext) !== null;

/** `Old, from 14:32: not computed since “Lay D4”`; null for what is not old. */
export const oldWords = <T>(computed: Computed<T>): string | null =>
  computed.is === 'old' ? `Old, from ${timeOf(computed.at)}: ${notSince(computed)}` : null;

export const notSince = ({ failure, since }: Pick<Old<unknown>, 'failure' | 'since'>): string =>
  failure ? `not computed since ${since}` : `still computing since ${since}`;
