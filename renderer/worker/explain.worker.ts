import { explain, type Finding, type Station, type Survey, shareEqual, survey } from '../../core/index.ts';
import { answerQuestions } from './answer-questions.ts';

// Looks for what a hand did wrong, beside the surveys: a station in, its findings with that on top out.
answerQuestions(newAnswers());

function newAnswers() {
  let last: Survey | null = null;
  return (station: Station): readonly Finding[] => {
    const before = last;
    last = null;
    last = survey(before ? shareEqual(before.station, station) : station, before);
    return explain(last).findings;
  };
}
