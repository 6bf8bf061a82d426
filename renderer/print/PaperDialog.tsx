import { useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { useShownResults } from '../store/use-store.ts';
import { AgeLine } from '../widgets/AgeLine.tsx';
import { SelectField } from '../widgets/SelectField.tsx';
import { bookStore, closePaper, type PaperSize, type PartId, type PreparedBook, partIds } from './book/book-store.ts';
import { parts } from './book/parts.tsx';
import { type Preparing, prepareBook } from './book/prepare-book.ts';
import { exportPng, exportSvg } from './drawing/export-drawing.ts';
import { printBook, saveBook } from './print-book.ts';

const papers = [
  { id: 'a4', label: 'A4' },
  { id: 'letter', label: 'Letter' },
];

/** Asks what is to leave the screen: the station book or parts of it, or the drawing as a picture. */
export function PaperDialog() {
  const asking = useStore(bookStore, (s) => s.asking);
  return asking && <Open />;
}

function Open() {
  const dialog = useRef<HTMLDialogElement>(null);
  const [chosen, setChosen] = useState<readonly PartId[]>(partIds);
  const [paper, setPaper] = useState<PaperSize>('a4');
  const { preparing, prepare } = usePreparing();
  useEffect(() => dialog.current?.showModal(), []);
  const toggle = (id: PartId) =>
    setChosen(chosen.includes(id) ? chosen.filter((other) => other !== id) : [...chosen, id]);
  const make = (act: (book: PreparedBook) => Promise<void>) => () => prepare({ parts: chosen, paper }, act);
  const cannot = chosen.length === 0 || preparing !== null;
  return (
    <dialog ref={dialog} className="dialog" aria-labelledby="paper-title" onClose={closePaper}>
      <h2 id="paper-title">Station book</h2>
      <AgeLine of={useShownResults()}>What rests on it says so on paper.</AgeLine>
      <fieldset className="figures">
        <legend>What goes on paper</legend>
        {partIds.map((id) => (
          <label key={id} className="check-line">
            <input type="checkbox" checked={chosen.includes(id)} onChange={() => toggle(id)} />
            {parts[id].label}
          </label>
        ))}
      </fieldset>
      <SelectField label="Paper" value={paper} options={papers} onChoose={(id) => setPaper(id as PaperSize)} />
      {preparing && (
        <p className="age-soon" role="status">
          It is being computed, and goes on paper once it is there.{' '}
          <button type="button" className="link" onClick={preparing.hurry}>
            Don’t wait: print what there is
          </button>
        </p>
      )}
      <div className="dialog-choices">
        <button type="button" className="button" onClick={() => void exportSvg()}>
          Drawing as SVG
        </button>
        <button type="button" className="button" onClick={() => void exportPng()}>
          Drawing as PNG
        </button>
        {window.stationwright && (
          <button type="button" className="button" disabled={cannot} onClick={make(saveBook)}>
            Save as PDF
          </button>
        )}
        <button type="button" className="button main" disabled={cannot} onClick={make(printBook)}>
          Print
        </button>
      </div>
    </dialog>
  );
}

/** One book at a time is made ready; closing the dialog calls it off. */
function usePreparing() {
  const [preparing, setPreparing] = useState<Preparing | null>(null);
  useEffect(() => preparing?.cancel, [preparing]);
  const prepare = (request: Parameters<typeof prepareBook>[0], act: (book: PreparedBook) => Promise<void>) =>
    setPreparing(prepareBook(request, (book) => void act(book)));
  return { preparing, prepare };
}
