import { useStation, useView } from '../../store/use-store.ts';
import { select } from '../../store/view.ts';
import { CableDetails } from './CableDetails.tsx';
import './details.css';
import { removeSelection } from '../../app/edit-actions.ts';
import { StationDetails } from './StationDetails.tsx';
import { UnitDetails } from './UnitDetails.tsx';

/** What is selected, with everything that can be said about it; the station itself where nothing is. */
export function DetailsSheet() {
  const { units, cables } = useView((v) => v.selection);
  const unit = useStation((s) =>
    units.length === 1 && cables.length === 0 ? s.units.find((u) => u.id === units[0]) : undefined,
  );
  const cable = useStation((s) =>
    cables.length === 1 && units.length === 0 ? s.cables.find((c) => c.id === cables[0]) : undefined,
  );
  const count = units.length + cables.length;
  return (
    <aside className="sheet details" aria-label="Details">
      {unit && <UnitDetails key={unit.id} unit={unit} />}
      {cable && <CableDetails key={cable.id} cable={cable} />}
      {!unit && !cable && (count > 1 ? <Several units={units.length} cables={cables.length} /> : <StationDetails />)}
    </aside>
  );
}

function Several({ units, cables }: { units: number; cables: number }) {
  return (
    <>
      <div className="sheet-head">
        <h2>Several selected</h2>
      </div>
      <p>
        {units} {units === 1 ? 'unit' : 'units'}, {cables} {cables === 1 ? 'cable' : 'cables'}
      </p>
      <p className="details-buttons">
        <button type="button" className="button" onClick={removeSelection}>
          Remove
        </button>
        <button type="button" className="button" onClick={() => select({})}>
          Select nothing
        </button>
      </p>
    </>
  );
}
