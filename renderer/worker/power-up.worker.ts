import {
  causesOf,
  draftPowerUp,
  explain,
  type PowerUpDraft,
  type Station,
  type Survey,
  shareEqual,
  sheetOf,
  survey,
} from '../../core/index.ts';
import { answerQuestions } from './answer-questions.ts';
import type { PowerUpAnswer, PowerUpRequest } from './power-up-messages.ts';

// Works out power-up sheets off the screen's thread.
answerQuestions(newAnswers());

function newAnswers() {
  const draftOf = newMemory();
  return (request: PowerUpRequest): PowerUpAnswer => {
    const draft = draftOf(request.station);
    if (request.wants === 'sheet') return { sheet: sheetOf(draft) };
    const { off, all } = request;
    const others = (step: string) => all.filter((r) => r.step !== step);
    return { causes: Object.fromEntries(off.map((r) => [r.step, causesOf(draft, r, others(r.step))])) };
  };
}

/** The draft of the station asked about before, where it is the same but for its readings. */
function newMemory() {
  let last: { readonly surveyed: Survey; readonly draft: PowerUpDraft } | null = null;
  return (asked: Station): PowerUpDraft => {
    const unread = { ...asked, readings: [] };
    const station = last ? shareEqual(last.surveyed.station, unread) : unread;
    if (last?.surveyed.station === station) return last.draft;
    const before = last?.surveyed;
    last = null;
    const surveyed = survey(station, before);
    last = { surveyed, draft: draftPowerUp(explain(surveyed)) };
    return last.draft;
  };
}
