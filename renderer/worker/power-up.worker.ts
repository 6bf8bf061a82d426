import { causesOf, powerUpSheet, type Station } from '../../core/index.ts';
import { answerQuestions } from './answer-questions.ts';
import type { PowerUpAnswer, PowerUpRequest } from './power-up-messages.ts';

// Works out power-up sheets off the screen's thread.
answerQuestions(newAnswers());

function newAnswers() {
  const known = newMemory();
  return (request: PowerUpRequest): PowerUpAnswer => {
    if (request.wants === 'sheet') return { sheet: powerUpSheet(request.station) };
    const { off, all } = request;
    const station = known(request.station);
    const others = (step: string) => all.filter((r) => r.step !== step);
    return { causes: Object.fromEntries(off.map((r) => [r.step, causesOf(station, r, others(r.step))])) };
  };
}

/** The station asked about before where it is the same but for its readings: what was worked out of that is known. */
function newMemory() {
  let last: { readonly text: string; readonly station: Station } | null = null;
  return (station: Station): Station => {
    const text = JSON.stringify({ ...station, readings: [] });
    if (last?.text !== text) last = { text, station };
    return last.station;
  };
}
