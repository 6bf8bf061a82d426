import { hookupsOf } from '../../../core/index.ts';
import { askPaper } from '../../print/book/book-store.ts';
import { isUnderWay, ofAnyAge } from '../../store/computed.ts';
import { keydownsOf, useHookup, useKeydown } from '../../store/current.ts';
import { isEdited } from '../../store/document.ts';
import { useDocument, useResults, useStation, useView } from '../../store/use-store.ts';
import { chooseControl, chooseHookup, chooseMoment } from '../../store/view.ts';
import { openFind } from '../dialogs/find-store.ts';
import { newStation, openFile, save } from '../document/document-actions.ts';
import { OpenFindings } from './OpenFindings.tsx';
import { Picker } from './Picker.tsx';
import { Steps } from './Steps.tsx';
import './title-bar.css';

/** What is open and what is looked at: title, hook-up, control and moment; file and step buttons. */
export function TitleBar() {
  const title = useStation((s) => s.title);
  return (
    <header className="top-bar">
      <div className="top-title">
        <h1 title={title}>{title}</h1>
        <SavedState />
      </div>
      <LookedAt />
      <span className="grow" />
      <OpenFindings />
      <Steps />
      <div className="top-buttons">
        <button type="button" onClick={() => void newStation()}>
          New
        </button>
        <button type="button" onClick={() => void openFile()} title="Open a station file (Ctrl O)">
          Open
        </button>
        <button type="button" onClick={() => void save()} title="Save (Ctrl S)">
          Save
        </button>
        <button type="button" onClick={askPaper} title="Put the station on paper (Ctrl B)">
          Book
        </button>
        <button type="button" onClick={openFind} title="Find a unit, port, cable or finding (Ctrl K)">
          Find
        </button>
      </div>
    </header>
  );
}

function SavedState() {
  const edited = useDocument(isEdited);
  const file = useDocument((d) => d.file?.name);
  const running = useResults(isUnderWay);
  const text = edited ? 'not saved yet' : file ? 'saved' : '\u00a0';
  return (
    <span className="top-saved" title={file}>
      {text}
      {running && <span className="top-running">computing</span>}
    </span>
  );
}

function LookedAt() {
  const station = useStation();
  const hookup = useHookup();
  const keydown = useKeydown();
  const report = useResults(ofAnyAge);
  const moment = useView((v) => v.moment);
  const controls = keydownsOf(report, hookup.id).map((k) => ({ id: k.control, label: k.controlName }));
  const hookups = hookupsOf(station).map((h) => ({ id: h.id, label: h.name }));
  return (
    <>
      <Picker label="Hook-up" value={hookup.id} options={hookups} onChoose={chooseHookup} />
      {keydown && <Picker label="Control" value={keydown.control} options={controls} onChoose={chooseControl} />}
      <fieldset className="moment">
        <legend>Moment</legend>
        {(['receive', 'sending'] as const).map((m) => (
          <label key={m} className={m === moment ? 'here' : ''}>
            <input type="radio" name="moment" checked={m === moment} onChange={() => chooseMoment(m)} />
            {m === 'receive' ? 'Receive' : 'Sending'}
          </label>
        ))}
      </fieldset>
    </>
  );
}
