import { useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { SelectField } from '../widgets/SelectField.tsx';
import { bookStore, closePaper, type PaperSize, type PartId, partIds } from './book/book-store.ts';
import { parts } from './book/parts.tsx';
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
  useEffect(() => dialog.current?.showModal(), []);
  const toggle = (id: PartId) =>
    setChosen(chosen.includes(id) ? chosen.filter((other) => other !== id) : [...chosen, id]);
  const request = { parts: chosen, paper };
  return (
    <dialog ref={dialog} className="dialog" aria-labelledby="paper-title" onClose={closePaper}>
      <h2 id="paper-title">Station book</h2>
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
      <div className="dialog-choices">
        <button type="button" className="button" onClick={() => void exportSvg()}>
          Drawing as SVG
        </button>
        <button type="button" className="button" onClick={() => void exportPng()}>
          Drawing as PNG
        </button>
        {window.stationwright && (
          <button
            type="button"
            className="button"
            disabled={chosen.length === 0}
            onClick={() => void saveBook(request)}
          >
            Save as PDF
          </button>
        )}
        <button
          type="button"
          className="button main"
          disabled={chosen.length === 0}
          onClick={() => void printBook(request)}
        >
          Print
        </button>
      </div>
    </dialog>
  );
}
