import { createStore } from 'zustand/vanilla';
import type { Severity } from '../../../core/index.ts';
import { documentStore } from '../../store/document.ts';

export const checkTabs = ['findings', 'mixUps', 'failures'] as const;
export type CheckTab = (typeof checkTabs)[number];

/** Which of Check's lists is looked at, and how the two studies are. It ends with the document. */
export interface CheckView {
  readonly tab: CheckTab;
  /** The mix-up or failure of which all is shown. */
  readonly unfolded: string | null;
  /** Severities of mix-ups and failures that are not shown. */
  readonly hidden: readonly Severity[];
}

const fresh: CheckView = { tab: 'findings', unfolded: null, hidden: [] };

export const checkView = createStore<CheckView>(() => fresh);

const { setState } = checkView;

documentStore.subscribe((now, before) => {
  if (now.opened !== before.opened) setState(fresh);
});

export const showCheckTab = (tab: CheckTab) => setState({ tab, unfolded: null });
export const unfoldItem = (unfolded: string | null) => setState({ unfolded });

export const toggleStudied = (severity: Severity) =>
  setState(({ hidden }) => ({
    hidden: hidden.includes(severity) ? hidden.filter((s) => s !== severity) : [...hidden, severity],
  }));
