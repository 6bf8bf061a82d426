import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import {
  checkKind,
  connectors,
  kindOf,
  type Problem,
  type Station,
  type Unit,
  type UnitKind,
  type WholeKind,
  withoutUndefined,
} from '../../../core/index.ts';
import { findOwnKind } from '../../store/own-kinds.ts';

/** What is being made or changed, and what becomes of it. */
export interface Editing extends WholeKind {
  /** The kind of the user's own that it takes the place of. */
  readonly own: string | null;
  /** The unit of the drawing that it is made from, and which becomes one of it. */
  readonly unit: string | null;
  readonly before: UnitKind;
  readonly problems: readonly Problem[];
}

export const editorStore = createStore<{ editing: Editing | null }>(() => ({ editing: null }));

const { getState, setState } = editorStore;

const blankKind: UnitKind = {
  name: '',
  group: 'power',
  summary: '',
  ports: [],
  elements: [],
  source: 'own figures',
};

/** Its own connectors go before the catalogue's of the same name. */
function open({ kind, connectors: brought }: WholeKind, { own, unit }: Pick<Editing, 'own' | 'unit'>) {
  const all = { ...connectors, ...brought };
  setState({ editing: { kind, connectors: all, before: kind, problems: checkKind(kind, all), own, unit } });
}

export const openBlank = () => open({ kind: blankKind, connectors: {} }, { own: null, unit: null });

export function openOwn(id: string) {
  const own = findOwnKind(id);
  if (own) open(own, { own: id, unit: null });
}

/** Opens the editor with a unit's kind and its own figures in it. */
export function openFromUnit(station: Station, unit: Unit) {
  const kind = { ...kindOf(station, unit), name: unit.name, source: 'own figures' };
  open({ kind, connectors: station.connectors }, { own: null, unit: unit.id });
}

/** Takes another kind to begin with; what becomes of it stays. */
export function startFrom(whole: WholeKind) {
  const { editing } = getState();
  if (editing) open({ ...whole, kind: { ...whole.kind, source: 'own figures' } }, editing);
}

export const closeEditor = () => setState({ editing: null });

/** Replaces the kind that is edited; everything that the form does goes through here. */
export function editKind(change: (kind: UnitKind) => UnitKind, more: WholeKind['connectors'] = {}) {
  const { editing } = getState();
  if (!editing) return;
  const kind = change(editing.kind);
  const all = { ...editing.connectors, ...more };
  setState({ editing: { ...editing, kind, connectors: all, problems: checkKind(kind, all) } });
}

export const setKindFields = (fields: Partial<UnitKind>) =>
  editKind((kind) => withoutUndefined({ ...kind, ...fields }));

/** What is edited; only for what is inside the open editor. */
export function useEditing(): Editing {
  const editing = useStore(editorStore, (s) => s.editing);
  if (!editing) throw new Error('the editor is closed');
  return editing;
}
