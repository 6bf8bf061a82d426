import { rankFailures, schemeFor, studyFailures, studyMixUps } from '../../core/index.ts';
import { answerQuestions, type Tell } from './answer-questions.ts';
import type { Studied, StudyName, StudyRequest } from './study-messages.ts';

// Tries what a hand could do wrong, or what could fail, off the screen's thread.
answerQuestions(({ wants, station }: StudyRequest, tell): Studied[StudyName] => {
  const tellNow = nowAndThen(tell);
  if (wants === 'failures') return rankFailures(studyFailures(station, tellNow));
  const study = studyMixUps(station, tellNow);
  return { study, scheme: schemeFor(study, station) };
});

/** Nobody reads faster than this. */
const leastMs = 100;

function nowAndThen(tell: Tell): (done: number, of: number) => void {
  let told = 0;
  return (done, of) => {
    const now = Date.now();
    if (now - told < leastMs) return;
    told = now;
    tell({ done, of });
  };
}
