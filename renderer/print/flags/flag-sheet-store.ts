import { createStore } from 'zustand/vanilla';
import { type FlagSheet, usualFlagSheet } from '../../../core/index.ts';
import { keepChoice, keptChoice } from '../../shell/keep-choice.ts';

const key = 'stationwright.flags';
const styles: readonly unknown[] = ['label', 'wrap', 'strip'];
const pages: readonly unknown[] = ['a4', 'letter', 'own'];

/** How flags are printed: it belongs to the labels and the printer, so it is kept here and not in the document. */
export const flagSheetStore = createStore<{ sheet: FlagSheet }>(() => ({ sheet: remembered() }));

export function setFlagSheet(set: Partial<FlagSheet>) {
  const sheet = { ...flagSheetStore.getState().sheet, ...set };
  flagSheetStore.setState({ sheet });
  keepChoice(key, JSON.stringify(sheet));
}

/** What was kept, field by field; the usual where a field is missing or of another type. */
function remembered(): FlagSheet {
  try {
    const kept: unknown = JSON.parse(keptChoice(key) ?? 'null');
    return typeof kept === 'object' && kept !== null ? sheetFrom(kept as Record<string, unknown>) : usualFlagSheet;
  } catch {
    return usualFlagSheet;
  }
}

/** A sheet from what was kept of one. */
export function sheetFrom(kept: Record<string, unknown>): FlagSheet {
  const usual: Record<string, unknown> = { ...usualFlagSheet };
  const isFine = (name: string, value: unknown) => {
    if (name === 'style') return styles.includes(value);
    if (name === 'page') return pages.includes(value);
    if (typeof value !== typeof usual[name]) return false;
    return typeof value !== 'number' || (Number.isFinite(value) && value >= 0 && value <= 2000);
  };
  const fine = Object.keys(usual).filter((name) => isFine(name, kept[name]));
  return { ...usualFlagSheet, ...Object.fromEntries(fine.map((name) => [name, kept[name]])) };
}
