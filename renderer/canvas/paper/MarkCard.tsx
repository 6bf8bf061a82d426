import { type NodeProps, NodeResizeControl } from '@xyflow/react';
import { memo } from 'react';
import { useStation } from '../../store/use-store.ts';
import { markOfNode } from './mark-nodes.ts';

const leastPx = 45;

/** A note on the paper, or a zone around units: a place such as the desk, the wall or the mast. */
export const MarkCard = memo(function MarkCard({ id, selected }: NodeProps) {
  const mark = useStation((s) => s.marks?.find((m) => m.id === markOfNode(id)));
  if (!mark) return null;
  return (
    <div className={`mark ${mark.type} ${selected ? 'selected' : ''}`}>
      <p className="mark-handle">{mark.text}</p>
      {selected && (
        <NodeResizeControl className="mark-corner" position="bottom-right" minWidth={leastPx} minHeight={leastPx} />
      )}
    </div>
  );
});
