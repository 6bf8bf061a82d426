import type { PowerUpSheet } from '../../../core/index.ts';
import { documentStore } from '../../store/document.ts';
import { keepComputed } from '../../worker/keep-computed.ts';
import { sheetLimitMs } from '../../worker/limits.ts';
import type { PowerUpThread } from '../../worker/power-up-messages.ts';
import { watchThread } from '../../worker/watched-thread.ts';
import { explainReadings } from './explain-readings.ts';
import { isSameButReadings } from './is-same-but-readings.ts';
import { powerUpStore, showPowerUp } from './power-up-store.ts';

/**
 * Keeps the sheet, and the causes of what is off, in step with the document while the stage is shown. A reading does
 * not change the sheet. Returns a function that ends it.
 */
export function runPowerUp(open: () => PowerUpThread): () => void {
  const thread = watchThread(open);
  const { opened } = documentStore.getState();
  if (powerUpStore.getState().opened !== opened) showPowerUp({ is: 'computing' }, opened);
  const endSheet = keepComputed<PowerUpSheet>({
    doing: 'working out the power-up sheet',
    begin: (station, onReply) =>
      thread.ask({ wants: 'sheet', station }, sheetLimitMs(station), (reply) => {
        if ('error' in reply) onReply(reply);
        else if ('sheet' in reply.answer) onReply({ answer: reply.answer.sheet });
      }),
    stop: thread.end,
    isSame: isSameButReadings,
    shown: () => powerUpStore.getState().sheet,
    show: (sheet) => showPowerUp(sheet, documentStore.getState().opened),
  });
  const endCauses = explainReadings(open);
  return () => {
    endCauses();
    endSheet();
  };
}
