import { useStation, useView } from '../../store/use-store.ts';
import { CableDetails } from './cable/CableDetails.tsx';
import './details.css';
import { MarkDetails } from './MarkDetails.tsx';
import { SeveralDetails } from './SeveralDetails.tsx';
import { StationDetails } from './station/StationDetails.tsx';
import { UnitDetails } from './unit/UnitDetails.tsx';

/** What is selected, with everything that can be said about it; the station itself where nothing is. */
export function DetailsSheet() {
  const selection = useView((v) => v.selection);
  const { units, cables, marks } = selection;
  const count = units.length + cables.length + marks.length;
  const unit = useStation((s) => s.units.find((u) => count === 1 && u.id === units[0]));
  const cable = useStation((s) => s.cables.find((c) => count === 1 && c.id === cables[0]));
  const mark = useStation((s) => s.marks?.find((m) => count === 1 && m.id === marks[0]));
  return (
    <aside className="sheet details" aria-label="Details">
      {unit && <UnitDetails key={unit.id} unit={unit} />}
      {cable && <CableDetails key={cable.id} cable={cable} />}
      {mark && <MarkDetails key={mark.id} mark={mark} />}
      {!unit && !cable && !mark && (count > 1 ? <SeveralDetails {...selection} /> : <StationDetails />)}
    </aside>
  );
}
