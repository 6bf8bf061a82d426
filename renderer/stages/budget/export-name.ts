import { suggestedName } from '../../shell/suggested-name.ts';
import { currentStation } from '../../store/document.ts';

/** `hut-30-m-supplies.csv` for the station that is open. */
export const exportName = (ending: string): string =>
  suggestedName(currentStation().title).replace('.station.json', `-${ending}`);
