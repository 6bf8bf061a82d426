import { createStore } from 'zustand/vanilla';
import type { Finding, Severity } from '../../../core/index.ts';
import { documentStore } from '../../store/document.ts';
import type { Selection } from '../../store/view.ts';

/** Units and cables whose findings are wanted. */
export type Wanted = Pick<Selection, 'units' | 'cables'>;

/** The same, and how they were chosen. */
export interface About extends Wanted {
  readonly by: 'selection' | 'name';
}

/** How the findings are looked at. It outlasts a look at another stage, and ends with the document. */
export interface FindingsView {
  /** The finding whose reason and advice are shown. */
  readonly unfolded: string | null;
  /** Severities that are not shown. */
  readonly hidden: readonly Severity[];
  /** Null for everything. */
  readonly about: About | null;
  /** Reasons that are being typed, by finding: a report that arrives meanwhile must not lose them. */
  readonly typed: Readonly<Record<string, TypedReason>>;
}

export interface TypedReason {
  readonly finding: Finding;
  readonly text: string;
}

const fresh: FindingsView = { unfolded: null, hidden: [], about: null, typed: {} };

export const findingsView = createStore<FindingsView>(() => fresh);

const { setState } = findingsView;

documentStore.subscribe((now, before) => {
  if (now.opened !== before.opened) setState(fresh);
});

export const unfold = (unfolded: string | null) => setState({ unfolded });
export const showOnly = (about: About | null) => setState({ about });
export const showAll = () => setState({ hidden: [], about: null });

export const toggleSeverity = (severity: Severity) =>
  setState(({ hidden }) => ({
    hidden: hidden.includes(severity) ? hidden.filter((s) => s !== severity) : [...hidden, severity],
  }));

export const typeReason = (finding: Finding, text: string) =>
  setState(({ typed }) => ({ typed: { ...typed, [finding.id]: { finding, text } } }));

export const forgetReason = (id: string) => setState(({ typed: { [id]: _, ...typed } }) => ({ typed }));
