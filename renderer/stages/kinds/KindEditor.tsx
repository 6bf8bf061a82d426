import { useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import { ask } from '../../app/dialogs/questions.ts';
import { CardPreview } from '../../canvas/cards/CardPreview.tsx';
import { useTyped } from '../../store/typed.ts';
import { ActorsSection } from './sections/ActorsSection.tsx';
import { ElementsSection } from './sections/ElementsSection.tsx';
import './kinds.css';
import './kind-rows.css';
import { closeEditor, type Editing, editorStore, useEditing } from './kind-editor.ts';
import { ProblemList } from './ProblemList.tsx';
import { StartFrom } from './StartFrom.tsx';
import { PlaceSection } from './sections/PlaceSection.tsx';
import { PortsSection } from './sections/PortsSection.tsx';
import { SettingsSection } from './sections/SettingsSection.tsx';
import { TextSection } from './sections/TextSection.tsx';
import { WordsSection } from './sections/WordsSection.tsx';
import { takeIntoUse } from './take-into-use.ts';

/** Makes or changes a unit kind, with its card beside the form. */
export function KindEditor() {
  const open = useStore(editorStore, (s) => s.editing !== null);
  return open && <Open />;
}

function Open() {
  const dialog = useRef<HTMLDialogElement>(null);
  const editing = useEditing();
  const { kind, connectors, problems } = editing;
  useTyped(kind !== editing.before);
  useEffect(() => dialog.current?.showModal(), []);
  const onKeyDown = (event: React.KeyboardEvent) => {
    if (event.key !== 'Escape') return;
    // The browser would close the dialog at a second Escape, whatever was entered.
    event.preventDefault();
    const typing = event.target instanceof HTMLElement && event.target.dataset['settled'] === 'false';
    if (!typing) void leave();
  };
  const finish = () => {
    // A field that could not take what stands in it, or text that was not taken yet: nothing of it may get lost.
    const open = dialog.current?.querySelector<HTMLElement>('[aria-invalid="true"], textarea[data-settled="false"]');
    if (!open) return void takeIntoUse(editing);
    open.focus();
    open.scrollIntoView({ block: 'nearest' });
  };
  return (
    <dialog
      ref={dialog}
      className="kind-editor"
      aria-labelledby="kind-editor-title"
      onKeyDownCapture={onKeyDown}
      onCancel={(event) => event.preventDefault()}
    >
      <header>
        <h2 id="kind-editor-title">{titleOf(editing)}</h2>
        <p className="soft small">{outcomeOf(editing)}</p>
      </header>
      <div className="kind-form">
        {editing.own === null && <StartFrom />}
        <WordsSection />
        <PortsSection />
        <ElementsSection />
        <ActorsSection />
        <SettingsSection />
        <section aria-labelledby="kind-more">
          <h3 id="kind-more">And besides</h3>
          <PlaceSection />
          <TextSection />
        </section>
      </div>
      <aside className="kind-beside" aria-label="Card and problems">
        <div className="kind-paper">
          <CardPreview kind={kind} name={kind.name || 'No name yet'} connectors={connectors} />
        </div>
        <h3>{problems.length === 0 ? 'Ready' : 'To be mended first'}</h3>
        <ProblemList />
      </aside>
      <footer>
        <button type="button" className="button" onClick={() => void leave()}>
          Cancel
        </button>
        <button type="button" className="button main" disabled={problems.length > 0} onClick={finish}>
          Use it
        </button>
      </footer>
    </dialog>
  );
}

const titleOf = ({ own, unit }: Editing): string =>
  own ? 'Change a unit kind' : unit ? 'Make this unit a kind' : 'Make a unit kind';

function outcomeOf({ own, unit }: Editing): string {
  if (own) return 'The new description takes the place of the old one on the shelf.';
  return unit
    ? 'It goes on the shelf under “Your own”, and the unit becomes one of it.'
    : 'It goes on the shelf under “Your own”, and one of it on the drawing.';
}

/** Closes the editor, once the user has decided about what was entered. */
async function leave() {
  const { editing } = editorStore.getState();
  if (!editing) return;
  const choice =
    editing.kind === editing.before
      ? 'discard'
      : await ask({
          title: 'Discard what was entered?',
          text: `“${editing.kind.name || 'The kind without a name'}” is not on the shelf as it is now.`,
          choices: [
            { id: 'stay', label: 'Go on with it' },
            { id: 'discard', label: 'Discard it' },
          ],
        });
  if (choice === 'discard') closeEditor();
}
