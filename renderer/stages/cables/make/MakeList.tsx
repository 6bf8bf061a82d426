import { useStore } from 'zustand';
import { makeTable, whatToMake } from '../../../../core/index.ts';
import { PrintFrame } from '../../../print/PrintFrame.tsx';
import { useStation } from '../../../store/use-store.ts';
import { LeaveOutDone } from '../LeaveOutDone.tsx';
import { ListHead } from '../ListHead.tsx';
import { listsView } from '../lists-view.ts';
import { MakeTable } from './MakeTable.tsx';
import { WiringTable } from './WiringTable.tsx';

/** Each cable that is made by hand: what to cut and fit, and how it is wired. */
export function MakeList() {
  const station = useStation();
  const leaveOut = useStore(listsView, (v) => v.leaveOutDone);
  const rows = whatToMake(station, { leaveOutDone: leaveOut });
  // Two conductors straight through need no table.
  const wired = rows.filter((row) => !row.oneToOne || row.wiring.length > 2 || row.screen !== '');
  return (
    <>
      <ListHead title="What to make" what="what to make" file="make" tableOf={() => makeTable(rows)} />
      <div className="list-filter">
        <LeaveOutDone />
      </div>
      <PrintFrame title="What to make" of={leaveOut ? 'Without cables that are made' : ''}>
        {rows.length === 0 ? <p className="soft">No cable is left to make.</p> : <MakeTable rows={rows} />}
        {wired.length > 0 && <h3 className="table-title">Wiring</h3>}
        {wired.map((row) => (
          <WiringTable key={row.id} row={row} />
        ))}
      </PrintFrame>
    </>
  );
}
