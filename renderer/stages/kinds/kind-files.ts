import { plural, readKind, writeKind } from '../../../core/index.ts';
import { ask, tell } from '../../app/dialogs/questions.ts';
import { exportOrTell } from '../../app/document/export-or-tell.ts';
import { importText } from '../../shell/text-files.ts';
import { currentStation } from '../../store/document.ts';
import {
  dropKind,
  forgetUnreadable,
  freeKindId,
  keepKind,
  type OwnKind,
  ownKindsStore,
} from '../../store/own-kinds.ts';

/** Writes a kind as a file of its own, `own-keyer-blue.unit.json`. */
export async function exportKind(own: OwnKind) {
  await exportOrTell(writeKind(own), `${own.id.replace(/^own-/, '')}.unit.json`);
}

/** Asks for a unit kind's file and puts the kind on the shelf, or says all that is wrong with it. */
export async function importKind() {
  const file = await importText();
  if (file) await takeKindText(file.text, file.name);
}

/** Puts the kind that a file's text holds on the shelf. */
export async function takeKindText(text: string, fileName: string) {
  const read = readKind(text);
  if ('problems' in read) {
    const count = read.problems.length;
    const words = plural(count, 'One thing keeps', `${count} things keep`);
    await tell(`${fileName} could not be read`, `${words} it from being taken. The shelf is as it was.`, {
      problems: read.problems,
    });
    return;
  }
  const { kinds } = ownKindsStore.getState();
  const twin = kinds.find((own) => own.kind.name === read.kind.name);
  const choice = twin ? await askAboutTwin(twin) : 'beside';
  if (choice === 'stay') return;
  const id = twin && choice === 'replace' ? twin.id : freeKindId(read.kind.name, Object.keys(currentStation().kinds));
  keepKind({ id, ...read });
}

const askAboutTwin = ({ kind }: OwnKind): Promise<string> =>
  ask({
    title: `There is a kind called “${kind.name}” already`,
    text: 'The one of the file can take its place on the shelf or stand beside it. Drawings stay as they are.',
    choices: [
      { id: 'stay', label: 'Cancel' },
      { id: 'beside', label: 'Put it beside' },
      { id: 'replace', label: 'Replace' },
    ],
  });

/** Takes a kind off the shelf, once the user has said so; drawings keep theirs. */
export async function removeKind({ id, kind }: OwnKind) {
  const choice = await ask({
    title: `Remove “${kind.name}” from the shelf?`,
    text: 'Drawings keep the units of it that they have. Export it first if you may want it again.',
    choices: [
      { id: 'stay', label: 'Cancel' },
      { id: 'remove', label: 'Remove' },
    ],
  });
  if (choice === 'remove') dropKind(id);
}

/** Hands over what could not be read, as it was kept. */
export async function saveUnreadable(text: string) {
  if (await exportOrTell(text, 'kinds-that-could-not-be-read.txt')) forgetUnreadable();
}
