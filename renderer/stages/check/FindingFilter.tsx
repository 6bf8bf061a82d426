import { useId, useMemo } from 'react';
import { useStore } from 'zustand';
import { counted, type Station } from '../../../core/index.ts';
import { useStation, useView } from '../../store/use-store.ts';
import { filterFindings } from './filter-findings.ts';
import { findingsView, showAll, showOnly, toggleSeverity, type Wanted } from './findings-view.ts';
import type { GroupedFindings } from './group-findings.ts';
import { SeverityCounts } from './SeverityCounts.tsx';

/** Which findings are shown: by severity, and by what they are about. */
export function FindingFilter({ all, hiddenCount }: { all: GroupedFindings; hiddenCount: number }) {
  const hidden = useStore(findingsView, (v) => v.hidden);
  return (
    <>
      <SeverityCounts label="Open findings by severity" counts={all.counts} hidden={hidden} onToggle={toggleSeverity} />
      <AboutChoice all={all} />
      <p className="filter-hides small" role="status">
        {hiddenCount > 0 && (
          <>
            {counted(hiddenCount, 'finding is', 'findings are')} hidden by the filter.{' '}
            <button type="button" className="link" onClick={showAll}>
              Show all
            </button>
          </>
        )}
      </p>
    </>
  );
}

function AboutChoice({ all }: { all: GroupedFindings }) {
  const id = useId();
  const station = useStation();
  const selection = useView((v) => v.selection);
  const about = useStore(findingsView, (v) => v.about);
  const counts = useMemo(() => {
    const count = (about: Wanted) => filterFindings(station, all, { hidden: [], about }).open.length;
    return new Map(station.units.map(({ id: unit }) => [unit, count({ units: [unit], cables: [] })]));
  }, [station, all]);
  const isSame = JSON.stringify([about?.units, about?.cables]) === JSON.stringify([selection.units, selection.cables]);
  const canTake = selection.units.length + selection.cables.length > 0 && !(about?.by === 'selection' && isSame);
  const value = about === null ? 'all' : about.by === 'name' ? `unit ${about.units[0]}` : 'taken';
  const choose = (choice: string) => {
    if (choice === 'all') showOnly(null);
    else if (choice === 'selection') showOnly({ units: selection.units, cables: selection.cables, by: 'selection' });
    else if (choice.startsWith('unit ')) showOnly({ units: [choice.slice(5)], cables: [], by: 'name' });
  };
  return (
    <div className="filter-about">
      <label htmlFor={id}>About</label>
      <select id={id} className="input" value={value} onChange={(event) => choose(event.target.value)}>
        <option value="all">everything</option>
        {about?.by === 'selection' && <option value="taken">only {namesOf(station, about)}</option>}
        {canTake && <option value="selection">only what is selected: {namesOf(station, selection)}</option>}
        <optgroup label="Only one unit">
          {station.units.map((unit) => (
            <option key={unit.id} value={`unit ${unit.id}`}>
              {unit.name}, {counts.get(unit.id)}
            </option>
          ))}
        </optgroup>
      </select>
    </div>
  );
}

function namesOf(station: Station, { units, cables }: Wanted): string {
  const names = [
    ...station.units.filter((u) => units.includes(u.id)).map((u) => u.name),
    ...station.cables.filter((c) => cables.includes(c.id)).map((c) => c.number),
  ];
  return names.length > 3 ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more` : names.join(', ');
}
