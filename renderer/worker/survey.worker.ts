import { type Station, surveyReport } from '../../core/index.ts';
import type { SurveyAnswer } from './survey-runner.ts';

/** Computes off the screen's thread: a station in, its report or a sentence out. */
self.onmessage = ({ data }: MessageEvent<Station>) => {
  self.postMessage(answer(data));
};

function answer(station: Station): SurveyAnswer {
  try {
    return { report: surveyReport(station) };
  } catch (error) {
    return { problem: error instanceof Error ? error.message : String(error) };
  }
}
