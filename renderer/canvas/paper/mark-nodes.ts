import type { Node, NodeChange } from '@xyflow/react';
import type { Change, Mark } from '../../../core/index.ts';
import type { DrawingState } from '../drawing-store.ts';

const prefix = 'mark:';

/** Notes and zones among the drawing's nodes: their ids could be those of units, so they are marked. */
export const markNodeId = (id: string): string => `${prefix}${id}`;

export const markOfNode = (nodeId: string): string | undefined =>
  nodeId.startsWith(prefix) ? nodeId.slice(prefix.length) : undefined;

/** A note or zone as the drawing library wants it; zones lie under all cards, even the selected one. */
export function markNode(
  mark: Mark,
  { moved, resized }: Pick<DrawingState, 'moved' | 'resized'>,
  selected: boolean,
): Node {
  const id = markNodeId(mark.id);
  const { width, height } = resized.get(mark.id) ?? mark;
  return {
    id,
    type: 'mark',
    position: moved.get(id) ?? mark.position,
    data: {},
    selected,
    width,
    height,
    measured: { width, height },
    zIndex: mark.type === 'zone' ? -3000 : -2000,
    dragHandle: '.mark-handle',
    ariaLabel: `${mark.type === 'zone' ? 'Zone' : 'Note'} ${mark.text}`,
  };
}

/** The change that writes down where marks were moved to and what size they were given; null where none was. */
export function markChanges(changes: readonly NodeChange[], sizes: DrawingState['resized']): Change[] {
  return changes.flatMap((c): Change[] => {
    const id = 'id' in c ? markOfNode(c.id) : undefined;
    if (id === undefined) return [];
    if (c.type === 'position' && c.position && !c.dragging)
      return [{ type: 'updateMark', id, set: { position: c.position } }];
    const size = c.type === 'dimensions' && c.resizing === false ? sizes.get(id) : undefined;
    return size ? [{ type: 'updateMark', id, set: size }] : [];
  });
}
