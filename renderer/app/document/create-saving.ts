import { type Problem, type Station, savedText } from '../../../core/index.ts';
import type { StationFiles } from '../../shell/station-files.ts';
import { suggestedName } from '../../shell/suggested-name.ts';
import { currentStation, type DocumentFile, documentStore, markSaved } from '../../store/document.ts';
import { tell } from '../dialogs/questions.ts';
import { oneAfterAnother } from '../one-after-another.ts';
import { decideOnChange } from './decide-on-change.ts';

interface Saving {
  /** Writes the document; true when it is in its file. Never fails in silence. */
  save(askWhere: boolean): Promise<boolean>;
  /** Looks whether somebody else has changed the file. */
  look(): Promise<void>;
}

/** Tells the user why the document is not written: it could not be opened again. */
type TellUnsaveable = (station: Station, problems: readonly Problem[]) => Promise<void>;

/** Saving into these files. Saves, and looks at the file, come one after the other. */
export function createSaving(files: StationFiles, tellUnsaveable: TellUnsaveable): Saving {
  const oneAtATime = oneAfterAnother();
  let waiting: { readonly station: Station; readonly saved: Promise<boolean> } | null = null;

  async function write(askWhere: boolean): Promise<boolean> {
    const station = currentStation();
    const { file } = documentStore.getState();
    const saved = await writeOrSay(station, file, askWhere);
    if (saved === null) return false;
    if ('error' in saved) {
      await tell('Not saved', saved.error);
      return false;
    }
    if ('changed' in saved) {
      const decision = file ? await decideOnChange(file, saved, true) : 'elsewhere';
      return decision !== 'nothing' && write(decision === 'elsewhere');
    }
    markSaved(station, saved);
    return true;
  }

  async function writeOrSay(station: Station, file: DocumentFile | null, askWhere: boolean) {
    try {
      const written = savedText(station);
      if ('text' in written)
        return await files.save({ text: written.text, file, suggestedName: suggestedName(station.title), askWhere });
      await tellUnsaveable(station, written.problems);
      return null;
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      return { error: `The station could not be saved: ${reason}. It is still on the screen.` };
    }
  }

  return {
    save(askWhere) {
      const station = currentStation();
      // Asked for twice at once (a key held down): that is one save, and one question where to.
      if (!askWhere && waiting?.station === station) return waiting.saved;
      const saved = oneAtATime(() => write(askWhere)).finally(() => {
        if (waiting?.saved === saved) waiting = null;
      });
      if (!askWhere) waiting = { station, saved };
      return saved;
    },
    look: () =>
      oneAtATime(async () => {
        const { file } = documentStore.getState();
        const found = file && (await files.look(file));
        if (!found || documentStore.getState().file !== file) return;
        const decision = await decideOnChange(file, found, false);
        if (decision !== 'nothing') await write(decision === 'elsewhere');
      }),
  };
}
