import { useStore } from 'zustand';
import { forgetUnreadable, type OwnKind, ownKindsStore } from '../../../store/own-kinds.ts';
import { openBlank, openOwn } from '../../kinds/kind-editor.ts';
import { exportKind, importKind, removeKind, saveUnreadable } from '../../kinds/kind-files.ts';
import { ShelfRow } from './ShelfRow.tsx';

/** The user's own kinds on the shelf, and what to do with them. */
export function OwnKinds({ kinds }: { kinds: readonly OwnKind[] }) {
  const { unreadable, problem } = useStore(ownKindsStore);
  return (
    <section>
      <div className="shelf-make">
        <h2>Your own</h2>
        <button type="button" className="link small" onClick={openBlank}>
          Make a kind
        </button>
        <button
          type="button"
          className="link small"
          onClick={() => void importKind()}
          title="Import a kind from its file"
        >
          Import
        </button>
      </div>
      {problem && (
        <p className="shelf-problem" role="alert">
          {problem}
        </p>
      )}
      {unreadable !== null && <Unreadable text={unreadable} />}
      <ul>
        {kinds.map((own) => (
          <li key={own.id}>
            <ShelfRow item={own} />
            <p className="shelf-own">
              <button
                type="button"
                className="link"
                aria-label={`Edit ${own.kind.name}`}
                onClick={() => openOwn(own.id)}
              >
                Edit
              </button>
              <button
                type="button"
                className="link"
                aria-label={`Export ${own.kind.name}`}
                onClick={() => void exportKind(own)}
              >
                Export
              </button>
              <button
                type="button"
                className="link"
                aria-label={`Remove ${own.kind.name}`}
                onClick={() => void removeKind(own)}
              >
                Remove
              </button>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Unreadable({ text }: { text: string }) {
  return (
    <div className="shelf-problem" role="alert">
      <p>Some of your own kinds could not be read. Their text is still kept.</p>
      <p className="shelf-own">
        <button type="button" className="link" onClick={() => void saveUnreadable(text)}>
          Save the text
        </button>
        <button type="button" className="link" onClick={forgetUnreadable}>
          Forget it
        </button>
      </p>
    </div>
  );
}
