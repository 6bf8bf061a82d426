import { type Problem, type Station, writeStation } from '../../../core/index.ts';
import { suggestedName } from '../../shell/files.ts';
import { ask, tell } from '../dialogs/questions.ts';
import { exportOrTell } from './export-or-tell.ts';

/** Says once, on opening, what in the file names nothing. */
export async function tellRemarks(remarks: readonly Problem[]) {
  if (remarks.length === 0) return;
  const count = remarks.length;
  const words =
    count === 1
      ? 'One thing in the file names nothing that is there, and so changes nothing. The file keeps it as it is.'
      : `${count} things in the file name nothing that is there, and so change nothing. The file keeps them as they are.`;
  await tell('It is open', words, { problems: remarks });
}

/** Says why the document is not written over its file, and offers a copy of it as it is. */
export async function tellUnsaveable(station: Station, problems: readonly Problem[]) {
  const choice = await ask({
    title: 'Not saved',
    text: 'What is on the screen could not be opened again from a file, so the file is left as it was. Put right what is named here, or undo the last steps; a copy keeps it as it is.',
    problems,
    choices: [
      { id: 'stay', label: 'Close' },
      { id: 'copy', label: 'Write a copy all the same' },
    ],
  });
  if (choice === 'copy') await exportOrTell(writeStation(station), suggestedName(`${station.title} copy`));
}
