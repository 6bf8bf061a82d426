import { suggestedName } from '../../shell/files.ts';
import { currentStation } from '../../store/document.ts';

/** `hut-30-m-supplies.csv` for the station that is open. */
export const exportName = (ending: string): string =>
  suggestedName(currentStation().title).replace('.station.json', `-${ending}`);
