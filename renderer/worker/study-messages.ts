import type { RankedFailures, Station } from '../../core/index.ts';
import type { MixUpResult } from '../store/studies.ts';
import type { Thread } from './watched-thread.ts';

/** What a study of a station comes to, by what is studied. */
export interface Studied {
  readonly mixUps: MixUpResult;
  readonly failures: RankedFailures;
}

export type StudyName = keyof Studied;

export interface StudyRequest {
  readonly wants: StudyName;
  readonly station: Station;
}

export type StudyThread<N extends StudyName = StudyName> = Thread<StudyRequest, Studied[N]>;
