import { counted } from '../../../core/index.ts';
import { duplicateSelection, lockUnits, removeSelection } from '../../app/editing/edit-actions.ts';
import { cardsOf } from '../../canvas/layout.ts';
import { type Alignment, alignCards, alignments, type Move, spaceCards } from '../../canvas/paper/arrange.ts';
import { change } from '../../store/document.ts';
import { useStation } from '../../store/use-store.ts';
import { type Selection, select } from '../../store/view.ts';

/** What can be done to several things at once. */
export function SeveralDetails({ units, cables, marks }: Selection) {
  const parts = [
    ...(units.length > 0 ? [counted(units.length, 'unit')] : []),
    ...(cables.length > 0 ? [counted(cables.length, 'cable')] : []),
    ...(marks.length > 0 ? [counted(marks.length, 'note or zone', 'notes and zones')] : []),
  ];
  return (
    <>
      <div className="sheet-head">
        <h2>Several selected</h2>
      </div>
      <p>{parts.join(', ')}</p>
      {units.length > 1 && <Arrange units={units} />}
      <p className="details-buttons">
        {units.length > 0 && (
          <button type="button" className="button" onClick={duplicateSelection}>
            Duplicate
          </button>
        )}
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

const names: Record<Alignment, string> = {
  left: 'Left edges',
  centre: 'Centres',
  right: 'Right edges',
  top: 'Upper edges',
  middle: 'Middles',
  bottom: 'Lower edges',
};

function Arrange({ units }: { units: readonly string[] }) {
  const station = useStation();
  const cards = cardsOf(station).filter(({ id }) => units.includes(id));
  const locked = station.units.filter((u) => units.includes(u.id) && u.locked).length;
  const free = new Set(station.units.filter((u) => !u.locked).map((u) => u.id));
  const move = (name: string, moves: readonly Move[]) => {
    const allowed = moves.filter(({ id }) => free.has(id));
    change({ type: 'all', name, changes: [{ type: 'moveUnits', moves: allowed }] });
  };
  return (
    <>
      <fieldset className="figures">
        <legend>In line</legend>
        <p className="details-buttons">
          {alignments.map((how) => (
            <button key={how} type="button" className="button" onClick={() => move('Align', alignCards(cards, how))}>
              {names[how]}
            </button>
          ))}
        </p>
      </fieldset>
      <fieldset className="figures">
        <legend>Equal gaps</legend>
        <p className="details-buttons">
          {(['across', 'down'] as const).map((way) => (
            <button
              key={way}
              type="button"
              className="button"
              disabled={units.length < 3}
              onClick={() => move('Space evenly', spaceCards(cards, way))}
            >
              {way === 'across' ? 'Across' : 'Down'}
            </button>
          ))}
        </p>
      </fieldset>
      <p className="details-buttons">
        <button type="button" className="button" onClick={() => lockUnits(units, locked < units.length)}>
          {locked < units.length ? 'Lock in place' : 'Unlock'}
        </button>
      </p>
    </>
  );
}
