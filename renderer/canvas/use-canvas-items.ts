import type { Edge, EdgeChange, Node, NodeChange } from '@xyflow/react';
import { useCallback, useLayoutEffect, useMemo, useRef } from 'react';
import { type Change, drawnKind, type Unit, type UnitKind } from '../../core/index.ts';
import { change, documentStore } from '../store/document.ts';
import { useStation, useView } from '../store/use-store.ts';
import { select, viewStore } from '../store/view.ts';
import { toHandles } from './cards/to-handles.ts';
import { draggedTo, dragUnits, drawingStore, endDrag, resizeMark, routeStation, useDrawing } from './drawing-store.ts';
import { sizeOf } from './layout.ts';
import { markChanges, markNode, markOfNode } from './paper/mark-nodes.ts';

interface Kept {
  unit: Unit;
  kind: UnitKind;
  position: Unit['position'];
  selected: boolean;
  node: Node;
}

/** Units and cables as the drawing library wants them. An item that did not change stays the same object. */
export function useCanvasItems() {
  const station = useStation();
  const moved = useDrawing((d) => d.moved);
  const resized = useDrawing((d) => d.resized);
  const selection = useView((v) => v.selection);
  const kept = useRef(new Map<string, Kept>());
  const keptEdges = useRef(new Map<string, Edge>());

  // Before painting: a card never shows without its cables beside it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: routes depend on these parts of the station only
  useLayoutEffect(() => routeStation(station, moved), [station.units, station.cables, station.kinds, moved]);

  const nodes = useMemo(() => {
    const next = new Map<string, Kept>();
    const chosen = new Set(selection.units);
    for (const unit of station.units) {
      const kind = drawnKind(station.kinds, unit);
      if (!kind) continue;
      const position = moved.get(unit.id) ?? unit.position;
      const selected = chosen.has(unit.id);
      const old = kept.current.get(unit.id);
      const same = old?.unit === unit && old.kind === kind && old.position === position && old.selected === selected;
      next.set(unit.id, same ? old : { unit, kind, position, selected, node: nodeOf(unit, kind, position, selected) });
    }
    kept.current = next;
    return [...next.values()].map((k) => k.node);
  }, [station.units, station.kinds, moved, selection.units]);

  const marks = useMemo(
    () => (station.marks ?? []).map((mark) => markNode(mark, { moved, resized }, selection.marks.includes(mark.id))),
    [station.marks, moved, resized, selection.marks],
  );
  const all = useMemo(() => (marks.length === 0 ? nodes : [...marks, ...nodes]), [marks, nodes]);

  const edges = useMemo(() => {
    const next = new Map<string, Edge>();
    const chosen = new Set(selection.cables);
    for (const { id, number, a, b } of station.cables) {
      const selected = chosen.has(id);
      const old = keptEdges.current.get(id);
      const edge: Edge = {
        id,
        type: 'cable',
        source: a.unit,
        sourceHandle: a.port,
        target: b.unit,
        targetHandle: b.port,
        selected,
        ariaLabel: `Cable ${number}`,
      };
      next.set(id, old && sameEdge(old, edge) ? old : edge);
    }
    keptEdges.current = next;
    return [...next.values()];
  }, [station.cables, selection.cables]);

  const onNodesChange = useCallback((changes: NodeChange[]) => {
    moveItems(changes);
    const [ofMarks, ofUnits] = [changes.filter(isOfMark), changes.filter((c) => !isOfMark(c))];
    selectItems('units', ofUnits);
    selectItems('marks', ofMarks.map(withMarkId));
  }, []);
  const onEdgesChange = useCallback((changes: EdgeChange[]) => selectItems('cables', changes), []);
  return { nodes: all, edges, onNodesChange, onEdgesChange };
}

function nodeOf(unit: Unit, kind: UnitKind, position: Unit['position'], selected: boolean): Node {
  const size = sizeOf(kind, unit.name);
  const { width, height } = size;
  // Sizes and ports are known beforehand: nothing has to be measured in the page.
  return {
    id: unit.id,
    type: 'unit',
    position,
    data: { group: kind.group },
    selected,
    width,
    height,
    measured: { width, height },
    handles: toHandles(size),
    // A locked card holds still, and so does the paper under it.
    draggable: !unit.locked,
    ...(unit.locked && { className: 'nopan' }),
    ariaLabel: `${unit.name}, ${kind.name}${unit.locked ? ', locked in place' : ''}`,
  };
}

const sameEdge = (old: Edge, edge: Edge): boolean =>
  old.selected === edge.selected &&
  old.ariaLabel === edge.ariaLabel &&
  old.source === edge.source &&
  old.sourceHandle === edge.sourceHandle &&
  old.target === edge.target &&
  old.targetHandle === edge.targetHandle;

/** While a drag lasts the document stays as it is; its end, or a move by key, is one step. */
function moveItems(changes: readonly NodeChange[]) {
  const positions = changes.flatMap((c) => (c.type === 'position' && c.position ? [c] : []));
  const asMoves = (some: typeof positions) => some.flatMap(({ id, position }) => (position ? [{ id, position }] : []));
  const live = asMoves(positions.filter((c) => c.dragging));
  if (live.length > 0) dragUnits(live);
  for (const c of changes) {
    const id = c.type === 'dimensions' && c.resizing ? markOfNode(c.id) : undefined;
    if (id !== undefined && c.type === 'dimensions' && c.dimensions) resizeMark(id, c.dimensions);
  }
  const done = asMoves(positions.filter((c) => !c.dragging && markOfNode(c.id) === undefined));
  const steps: Change[] = markChanges(changes, drawingStore.getState().resized);
  if (done.length > 0) {
    // Where it was shown last: that may have been in line with something.
    const moves = done.map(({ id, position }) => ({ id, position: draggedTo(id) ?? position }));
    steps.unshift({ type: 'moveUnits', moves });
  }
  const [only] = steps;
  if (!only) return;
  change(steps.length === 1 ? only : { type: 'all', name: 'Move', changes: steps });
  endDrag();
}

const isOfMark = (c: NodeChange): boolean => 'id' in c && markOfNode(c.id) !== undefined;

const withMarkId = (c: NodeChange): NodeChange => ('id' in c ? { ...c, id: markOfNode(c.id) ?? c.id } : c);

function selectItems(list: 'units' | 'cables' | 'marks', changes: readonly (NodeChange | EdgeChange)[]) {
  const picked = changes.flatMap((c) => (c.type === 'select' ? [c] : []));
  if (picked.length === 0) return;
  const { selection } = viewStore.getState();
  const chosen = new Set(selection[list]);
  for (const { id, selected } of picked) {
    if (selected) chosen.add(id);
    else chosen.delete(id);
  }
  const known = new Set((documentStore.getState().history.station[list] ?? []).map((item) => item.id));
  select({ ...selection, [list]: [...chosen].filter((id) => known.has(id)) });
}
