import type { Cable } from '../../../../core/index.ts';
import { change } from '../../../store/document.ts';
import { useStation } from '../../../store/use-store.ts';

/** The hook-ups that a cable is plugged in for; at least one. */
export function CableHookups({ cable }: { cable: Cable }) {
  const hookups = useStation((s) => s.hookups);
  if (hookups.length === 0) return null;
  const all = hookups.map((h) => h.id);
  const chosen = cable.hookups ?? all;
  const toggle = (id: string) => {
    const next = all.filter((h) => (h === id ? !chosen.includes(h) : chosen.includes(h)));
    if (next.length === 0) return;
    change({ type: 'updateCable', id: cable.id, set: { hookups: next.length === all.length ? undefined : next } });
  };
  return (
    <fieldset className="figures">
      <legend>Plugged in for</legend>
      {hookups.map(({ id, name }) => {
        const only = chosen.length === 1 && chosen[0] === id;
        return (
          <label key={id} className="check-line">
            <input type="checkbox" checked={chosen.includes(id)} disabled={only} onChange={() => toggle(id)} />
            {name}
            {only && <span className="tag">its only one</span>}
          </label>
        );
      })}
    </fieldset>
  );
}
