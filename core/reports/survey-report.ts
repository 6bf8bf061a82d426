import type { Station } from '../station/schema/schema.ts';
import { type Survey, survey } from '../survey.ts';
import { budgetOf } from './budget/budget-of.ts';
import { listCables } from './cables/list-cables.ts';
import { overlaysOf } from './overlays-of.ts';
import { reportAudio } from './report-audio.ts';
import { reportKeydowns } from './report-keydowns.ts';
import type { SurveyReport } from './report-rows.ts';
import { reportRf } from './rf/report-rf.ts';

/** Surveys a station and gives all that a screen or a printed sheet shows of it. */
export const surveyReport = (station: Station): SurveyReport => reportSurvey(survey(station));

/** All that a screen or a printed sheet shows of a survey. */
export function reportSurvey(surveyed: Survey): SurveyReport {
  const { station } = surveyed;
  return {
    findings: surveyed.findings,
    cables: listCables(station),
    budget: budgetOf(surveyed),
    keydowns: reportKeydowns(surveyed),
    rf: reportRf(surveyed),
    audio: reportAudio(surveyed),
    overlays: overlaysOf(surveyed),
  };
}
