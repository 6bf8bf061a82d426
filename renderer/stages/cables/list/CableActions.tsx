import type { Cable, Change } from '../../../../core/index.ts';
import { change } from '../../../store/document.ts';
import { useStation } from '../../../store/use-store.ts';
import { select } from '../../../store/view.ts';
import { statuses } from '../class-names.ts';

/** What can be done to the chosen cables at once. */
export function CableActions({ ids }: { ids: readonly string[] }) {
  const cables = useStation((s) => s.cables);
  const chosen = cables.filter((cable) => ids.includes(cable.id));
  const allLocked = chosen.every((cable) => cable.numberLocked);
  const setAll = (name: string, set: Partial<Omit<Cable, 'id'>>) =>
    change({ type: 'all', name, changes: chosen.map(({ id }): Change => ({ type: 'updateCable', id, set })) });
  const lock = () =>
    setAll(allLocked ? 'Free numbers' : 'Lock numbers', {
      numberLocked: allLocked ? undefined : true,
    } as Partial<Cable>);
  return (
    <fieldset className="list-actions" aria-label="The chosen cables">
      <span className="small">{chosen.length} chosen</span>
      {statuses.map(({ id, label }) => (
        <button key={id} type="button" className="button" onClick={() => setAll('Set status', { status: id })}>
          {label}
        </button>
      ))}
      <button type="button" className="button" onClick={lock}>
        {allLocked ? 'Free numbers' : 'Lock numbers'}
      </button>
      <button type="button" className="button" onClick={() => select({})}>
        Choose none
      </button>
    </fieldset>
  );
}
