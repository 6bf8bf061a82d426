import { reportSurvey, type Station, type Survey, type SurveyReport, shareEqual, survey } from '../../core/index.ts';
import { answerQuestions } from './answer-questions.ts';

// Computes off the screen's thread: a station in, its report out.
answerQuestions(newAnswers());

/** Each survey is kept for the next: an edit costs what it touches. After one that threw the next is from scratch. */
function newAnswers() {
  let last: Survey | null = null;
  return (station: Station): SurveyReport => {
    const before = last;
    last = null;
    last = survey(before ? shareEqual(before.station, station) : station, before);
    return reportSurvey(last);
  };
}
