import { type Trouble, troubleReport } from '../../../core/index.ts';
import { suggestedName } from '../../shell/suggested-name.ts';
import { currentStation } from '../../store/document.ts';
import { exportOrTell } from '../document/export-or-tell.ts';

/** Writes a report on a fault of the program to a file, for the user to read and to send if they like. */
export const saveReport = (trouble: Omit<Trouble, 'where'>): Promise<boolean> =>
  exportOrTell(
    troubleReport({ ...trouble, where: navigator.userAgent }),
    suggestedName(currentStation().title).replace('.station.json', '-report.txt'),
  );
