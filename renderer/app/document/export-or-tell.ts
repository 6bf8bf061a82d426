import { exportText } from '../../shell/text-files.ts';
import { tell } from '../dialogs/questions.ts';

/** Writes a text to a new file, or says why it can't be: true when it is there. */
export async function exportOrTell(text: string, name: string): Promise<boolean> {
  const done = await exportText(text, name);
  if (typeof done === 'boolean') return done;
  await tell('Not saved', done.error);
  return false;
}
