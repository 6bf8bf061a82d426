import type { KeyboardEvent } from 'react';
import './tabs.css';

interface Props<T extends string> {
  /** What they are together, for those who hear it. */
  label: string;
  /** Begins the ids of the tabs; `-part` behind it is the panel's. */
  prefix: string;
  tabs: readonly T[];
  tab: T;
  nameOf: (tab: T) => string;
  onShow: (tab: T) => void;
}

/** Tabs over a panel: arrow keys, Home and End go from one to the other. */
export function Tabs<T extends string>({ label, prefix, tabs, tab, nameOf, onShow }: Props<T>) {
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    const to = step === undefined ? { Home: 0, End: tabs.length - 1 }[event.key] : tabs.indexOf(tab) + step;
    const next = to === undefined ? undefined : tabs[(to + tabs.length) % tabs.length];
    if (!next) return;
    event.preventDefault();
    onShow(next);
    event.currentTarget.querySelector<HTMLElement>(`#${prefix}-tab-${next}`)?.focus();
  };
  return (
    <div className="tabs" role="tablist" aria-label={label} onKeyDown={onKeyDown}>
      {tabs.map((id) => (
        <button
          key={id}
          id={`${prefix}-tab-${id}`}
          type="button"
          role="tab"
          aria-selected={id === tab}
          aria-controls={`${prefix}-part`}
          tabIndex={id === tab ? 0 : -1}
          onClick={() => onShow(id)}
        >
          {nameOf(id)}
        </button>
      ))}
    </div>
  );
}
