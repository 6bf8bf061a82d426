import { useState } from 'react';
import { useStore } from 'zustand';
import { counted } from '../../../core/index.ts';
import './dialog.css';
import './kept-dialog.css';
import {
  bringAllBack,
  bringBack,
  type Offered,
  offerStore,
  putOff,
  saveAsItIs,
  throwAway,
} from '../document/offer-kept.ts';
import { whenKept } from '../document/when-kept.ts';
import { useShown } from './use-shown.ts';

/** What was not saved when its window was last open, to be brought back or thrown away. */
export function KeptDialog() {
  const open = useStore(offerStore, (s) => s.open);
  return open && <Open />;
}

function Open() {
  const dialog = useShown();
  const entries = useStore(offerStore, (s) => s.entries);
  const hasWindows = useStore(offerStore, (s) => s.work?.hasWindows ?? false);
  const readable = entries.filter(({ station }) => station);
  return (
    <dialog
      ref={dialog}
      className="dialog kept-dialog"
      aria-labelledby="kept-title"
      onCancel={(event) => {
        event.preventDefault();
        putOff();
      }}
    >
      <h2 id="kept-title">Bring back unsaved work?</h2>
      <p>
        {entries.length === 1
          ? 'It was not saved when last open, and stays kept until saved or thrown away.'
          : `These ${entries.length} were not saved when last open, and stay kept until saved or thrown away.`}
      </p>
      <ul className="kept-list" aria-label="Unsaved work">
        {entries.map((entry) => (
          <KeptRow key={entry.id} entry={entry} first={entry === (readable[0] ?? entries[0])} />
        ))}
      </ul>
      <div className="dialog-choices">
        <button type="button" className="button" onClick={putOff}>
          Decide later
        </button>
        {hasWindows && readable.length > 1 && (
          <button type="button" className="button" onClick={() => void bringAllBack()}>
            Bring all back
          </button>
        )}
      </div>
    </dialog>
  );
}

function KeptRow({ entry, first }: { readonly entry: Offered; readonly first: boolean }) {
  const [throwing, setThrowing] = useState(false);
  const { about, station } = entry;
  const title = station?.title ?? about?.title ?? 'Unsaved work';
  const units = station?.units.length ?? about?.units;
  const cables = station?.cables.length ?? about?.cables;
  return (
    <li>
      <div className="kept-about">
        <strong>{title}</strong>
        <span className="small">
          {whenKept(entry.keptAt, Date.now())}
          {units !== undefined && `, ${counted(units, 'unit')}, ${counted(cables ?? 0, 'cable')}`}
        </span>
        {about && <span className="small soft">{about.file?.name ?? 'not in a file yet'}</span>}
        {entry.fileChanged && <span className="small">The file has been changed since this was kept.</span>}
        {!station && <span className="small">It can’t be shown, but it can be saved as it is: {entry.refusal}</span>}
      </div>
      {throwing ? (
        <div className="kept-choices">
          <span className="small">Throw it away for good?</span>
          <button type="button" className="button" onClick={() => void throwAway(entry)}>
            Throw away
          </button>
          {/* biome-ignore lint/a11y/noAutofocus: the answer that Enter gives, to a question that just came up */}
          <button type="button" className="button main" autoFocus onClick={() => setThrowing(false)}>
            Keep it
          </button>
        </div>
      ) : (
        <div className="kept-choices">
          <button type="button" className="button" aria-label={`Throw away ${title}`} onClick={() => setThrowing(true)}>
            Throw away…
          </button>
          <button
            type="button"
            className={first ? 'button main' : 'button'}
            aria-label={`${station ? 'Bring back' : 'Save as a file'} ${title}`}
            onClick={() => void (station ? bringBack(entry) : saveAsItIs(entry))}
          >
            {station ? 'Bring back' : 'Save as a file…'}
          </button>
        </div>
      )}
    </li>
  );
}
