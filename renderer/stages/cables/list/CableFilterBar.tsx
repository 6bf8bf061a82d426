import { useId } from 'react';
import { useStore } from 'zustand';
import { counted, portClasses } from '../../../../core/index.ts';
import { useStation } from '../../../store/use-store.ts';
import { classNames, statuses } from '../class-names.ts';
import { filterBy, listsView, showWholeList } from '../lists-view.ts';
import type { CableFilter } from './arrange-cables.ts';

/** Which cables are listed: by words, class, status and hook-up. */
export function CableFilterBar({ hiddenCount }: { hiddenCount: number }) {
  const filter = useStore(listsView, (v) => v.filter);
  const hookups = useStation((s) => s.hookups);
  return (
    <div className="list-filter">
      <input
        className="input"
        type="search"
        aria-label="Filter the cables"
        placeholder="Filter by words"
        value={filter.words}
        onChange={(event) => filterBy({ words: event.target.value })}
      />
      <Choice
        label="Class"
        value={filter.class}
        all="every class"
        options={portClasses.map((id) => ({ id, label: classNames[id] }))}
        onChoose={(id) => filterBy({ class: id as CableFilter['class'] })}
      />
      <Choice
        label="Status"
        value={filter.status}
        all="any status"
        options={statuses.map(({ label }) => ({ id: label, label }))}
        onChoose={(status) => filterBy({ status })}
      />
      {hookups.length > 0 && (
        <Choice
          label="Hook-up"
          value={filter.hookup}
          all="every hook-up"
          options={hookups.map(({ name }) => ({ id: name, label: name }))}
          onChoose={(hookup) => filterBy({ hookup })}
        />
      )}
      <p className="small" role="status">
        {hiddenCount > 0 && (
          <>
            {counted(hiddenCount, 'cable is', 'cables are')} hidden by the filter.{' '}
            <button type="button" className="link" onClick={showWholeList}>
              Show all
            </button>
          </>
        )}
      </p>
    </div>
  );
}

interface ChoiceProps {
  label: string;
  value: string;
  all: string;
  options: readonly { readonly id: string; readonly label: string }[];
  onChoose: (id: string) => void;
}

function Choice({ label, value, all, options, onChoose }: ChoiceProps) {
  const id = useId();
  return (
    <>
      <label className="sr-only" htmlFor={id}>
        {label}
      </label>
      <select id={id} className="input" value={value} onChange={(event) => onChoose(event.target.value)}>
        <option value="all">{all}</option>
        {options.map((option) => (
          <option key={option.id} value={option.id}>
            {option.label}
          </option>
        ))}
      </select>
    </>
  );
}
