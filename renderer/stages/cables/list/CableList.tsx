import { useMemo, useState } from 'react';
import { useStore } from 'zustand';
import { cableTable, listCables } from '../../../../core/index.ts';
import { PrintFrame } from '../../../print/PrintFrame.tsx';
import { useStation, useView } from '../../../store/use-store.ts';
import { ListHead } from '../ListHead.tsx';
import { listsView } from '../lists-view.ts';
import { arrangeCables } from './arrange-cables.ts';
import { CableActions } from './CableActions.tsx';
import { CableFilterBar } from './CableFilterBar.tsx';
import { CableTable } from './CableTable.tsx';
import { filterWords } from './filter-words.ts';
import { NumberDialog } from './NumberDialog.tsx';

/** The cable list: where each cable goes, edited in its own cells. */
export function CableList() {
  const station = useStation();
  const { filter, sort } = useStore(listsView);
  const chosen = useView((v) => v.selection.cables);
  const [numbering, setNumbering] = useState(false);
  const all = useMemo(() => listCables(station), [station]);
  const rows = useMemo(() => arrangeCables(all, filter, sort), [all, filter, sort]);
  const ids = rows.map((row) => row.id);
  const chosenHere = ids.filter((id) => chosen.includes(id));
  return (
    <>
      <ListHead title="Cables" what="the cable list" file="cables" tableOf={() => cableTable(rows)}>
        <button type="button" className="button" disabled={ids.length === 0} onClick={() => setNumbering(true)}>
          Number…
        </button>
      </ListHead>
      {all.length > 0 && <CableFilterBar hiddenCount={all.length - rows.length} />}
      {chosen.length > 0 && <CableActions ids={chosen} />}
      <PrintFrame title="Cable list" of={filterWords(filter)}>
        {all.length === 0 ? (
          <p className="soft">No cable is laid yet.</p>
        ) : (
          <CableTable rows={rows} chosen={chosen} sort={sort} />
        )}
      </PrintFrame>
      {numbering && <NumberDialog listed={ids} chosen={chosenHere} onClose={() => setNumbering(false)} />}
    </>
  );
}
