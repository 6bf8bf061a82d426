import type { Station } from '../station/schema/schema.ts';
import { survey } from '../survey.ts';
import { reportAudio } from './audio.ts';
import { budgetOf } from './budget/budget.ts';
import { listCables } from './cables/cable-list.ts';
import { reportKeydowns } from './keydown-report.ts';
import { overlaysOf } from './overlay.ts';
import type { SurveyReport } from './report.ts';
import { reportRf } from './rf/rf.ts';

/** Surveys a station and gives all that a screen or a printed sheet shows of it. */
export function surveyReport(station: Station): SurveyReport {
  const surveyed = survey(station);
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
