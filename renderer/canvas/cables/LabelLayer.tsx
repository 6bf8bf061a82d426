import { useStore } from '@xyflow/react';
import { type ReactNode, useMemo } from 'react';
import { createPortal } from 'react-dom';

/**
 * Puts what lies on a cable into the layer over all cables. The library's own `EdgeLabelRenderer` looks for that layer
 * again for every cable at every move of the mouse.
 */
export function LabelLayer({ children }: { children: ReactNode }) {
  const flow = useStore((s) => s.domNode);
  const layer = useMemo(() => flow?.querySelector('.react-flow__edgelabel-renderer'), [flow]);
  return layer ? createPortal(children, layer) : null;
}
