import { ViewportPortal } from '@xyflow/react';
import { useDrawing } from '../drawing-store.ts';
import type { Guide } from './guides.ts';

/** What shows only while something is dragged: what a card is in line with, a cable's end that is pulled. */
export function Guides() {
  const guides = useDrawing((d) => d.guides);
  const pulled = useDrawing((d) => d.pulled);
  if (guides.length === 0 && !pulled) return null;
  return (
    <ViewportPortal>
      <svg className="guides" aria-hidden="true">
        {guides.map((guide) => (
          <path key={lineOf(guide)} d={lineOf(guide)} />
        ))}
        {pulled && <path className="pulled" d={lineOf(pulled)} />}
      </svg>
    </ViewportPortal>
  );
}

const lineOf = ({ from, to }: Guide): string => `M${from.x} ${from.y}L${to.x} ${to.y}`;
