import { createStation, readStation, type Station, writeStation } from '../../../core/index.ts';
import { currentStation } from '../../store/document.ts';
import { viewStore } from '../../store/view.ts';
import { addCopies, removeSelection } from './edit-actions.ts';
import { isField } from './listen-to-keys.ts';

/** Cut, copy and paste of units, between windows too: what is copied is a small station file as text. */
export function listenToClipboard() {
  const copy = (event: ClipboardEvent): boolean => {
    const { units } = viewStore.getState().selection;
    if (isField(event.target) || units.length === 0 || !document.getSelection()?.isCollapsed) return false;
    event.preventDefault();
    event.clipboardData?.setData('text/plain', writeStation(pieceOf(currentStation(), units)));
    return true;
  };
  document.addEventListener('copy', copy);
  document.addEventListener('cut', (event) => {
    if (copy(event)) removeSelection();
  });
  document.addEventListener('paste', (event) => {
    if (isField(event.target)) return;
    const read = readStation(event.clipboardData?.getData('text/plain') ?? '');
    if (!('station' in read)) return;
    event.preventDefault();
    addCopies(
      'Paste',
      read.station,
      read.station.units.map((u) => u.id),
    );
  });
}

/** Units and the cables among them as a station of their own, with the kinds that they use. */
function pieceOf(station: Station, ids: readonly string[]): Station {
  const units = station.units.filter((u) => ids.includes(u.id));
  const cables = station.cables
    .filter((c) => ids.includes(c.a.unit) && ids.includes(c.b.unit))
    .map(({ hookups: _, ...cable }) => cable);
  const used = <T>(record: Record<string, T>, keys: readonly string[]): Record<string, T> =>
    Object.fromEntries(Object.entries(record).filter(([key]) => keys.includes(key)));
  return {
    ...createStation('Copied units'),
    units,
    cables,
    kinds: used(
      station.kinds,
      units.map((u) => u.kind),
    ),
    cableKinds: used(
      station.cableKinds,
      cables.map((c) => c.kind),
    ),
    connectors: station.connectors,
  };
}
