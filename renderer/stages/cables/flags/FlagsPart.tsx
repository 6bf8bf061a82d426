import { useMemo, useState } from 'react';
import { useStore } from 'zustand';
import { counted, flagsOf, flagTable, layOutFlags } from '../../../../core/index.ts';
import { FlagSheets } from '../../../print/flags/FlagSheets.tsx';
import { flagSheetStore } from '../../../print/flags/flag-sheet-store.ts';
import { textMeasure } from '../../../print/flags/measure-text.ts';
import { useStation, useView } from '../../../store/use-store.ts';
import { ListHead } from '../ListHead.tsx';
import { FlagSettings } from './FlagSettings.tsx';

/** Flags for both ends of the cables, as they will be printed. */
export function FlagsPart() {
  const station = useStation();
  const sheet = useStore(flagSheetStore, (s) => s.sheet);
  const chosen = useView((v) => v.selection.cables);
  const [onlyChosen, setOnlyChosen] = useState(false);
  const [test, setTest] = useState(false);
  const measure = useMemo(textMeasure, []);
  const ids = onlyChosen && chosen.length > 0 ? chosen : undefined;
  const flags = useMemo(() => flagsOf(station, ids), [station, ids]);
  const pages = useMemo(() => layOutFlags(flags, sheet, measure), [flags, sheet, measure]);
  return (
    <>
      <ListHead title="Flags" what={test ? 'the test page' : 'the flags'} file="flags" tableOf={() => flagTable(flags)}>
        <button type="button" className="button" aria-pressed={test} onClick={() => setTest(!test)}>
          Test page
        </button>
      </ListHead>
      <FlagSettings sheet={sheet} />
      <label className="check-line screen-only">
        <input
          type="checkbox"
          checked={onlyChosen}
          disabled={chosen.length === 0}
          onChange={(event) => setOnlyChosen(event.target.checked)}
        />
        Only the chosen cables ({chosen.length})
      </label>
      <div className="flag-problems" role="status">
        {pages.problems.map((problem) => (
          <p key={problem} className="field-problem">
            {problem}
          </p>
        ))}
        <p className="small soft">
          {counted(flags.length, 'flag')} on {counted(pages.pages.length, 'page')}
        </p>
      </div>
      <p className="small soft screen-only">
        Rings from the plug on: a wide one for the class, then one for each digit of the number by IEC 60062; their
        letters are those of IEC 60757. Where a jack has a ring of its own, it stands beside the number on the flag at
        that end: the plug carries the same one.
      </p>
      <FlagSheets pages={pages} test={test} outlined={sheet.style === 'strip'} />
    </>
  );
}
