import { ViewportPortal } from '@xyflow/react';
import { useDrawing } from './drawing-store.ts';

/** Thin lines that show what a dragged card is in line with. */
export function Guides() {
  const guides = useDrawing((d) => d.guides);
  if (guides.length === 0) return null;
  return (
    <ViewportPortal>
      <svg className="guides" aria-hidden="true">
        {guides.map(({ from, to }) => (
          <path key={`${from.x} ${from.y} ${to.x} ${to.y}`} d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
        ))}
      </svg>
    </ViewportPortal>
  );
}
