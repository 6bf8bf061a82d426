import { buyTable, cableTable, listCables, makeTable, whatToBuy, whatToMake } from '../../../core/index.ts';
import { WiringTable } from '../../stages/cables/make/WiringTable.tsx';
import { useStation } from '../../store/use-store.ts';
import { BookTable } from './BookTable.tsx';

const everything = { leaveOutDone: false };

/** Every cable of the document, once. */
export function BookCables() {
  const station = useStation();
  const rows = listCables(station);
  if (rows.length === 0) return <p>No cable is laid.</p>;
  return <BookTable table={cableTable(rows)} without={['Conductors', 'Number locked']} />;
}

/** What to cut and fit for each cable, and a wiring table where it is not one to one. */
export function BookMake() {
  const station = useStation();
  const rows = whatToMake(station, everything);
  const wired = rows.filter((row) => !row.oneToOne || row.wiring.length > 2 || row.screen !== '');
  if (rows.length === 0) return <p>No cable is to be made.</p>;
  return (
    <>
      <BookTable table={makeTable(rows)} without={['Wiring', 'Screen', 'Conductors', 'Flags']} />
      {wired.length > 0 && <h3>Wiring</h3>}
      {wired.map((row) => (
        <WiringTable key={row.id} row={row} />
      ))}
    </>
  );
}

/** What to buy for all cables, each counted once, and a spare of each fuse. */
export function BookBuy() {
  const station = useStation();
  const rows = whatToBuy(station, everything);
  return rows.length === 0 ? <p>Nothing is to be bought.</p> : <BookTable table={buyTable(rows)} />;
}
