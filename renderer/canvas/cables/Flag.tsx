import { useReactFlow } from '@xyflow/react';
import type { CSSProperties, PointerEvent } from 'react';
import type { Cable, CableEnd } from '../../../core/index.ts';
import { select } from '../../store/view.ts';
import { pullCable } from '../drawing-store.ts';
import { finishLaying, giveUp, startMoving } from '../laying/laying.ts';
import type { Point } from '../routing/geometry.ts';

interface Props {
  cable: Cable;
  end: CableEnd;
  /** Where the other end of the cable is, on the paper. */
  otherEnd: Point;
  className: string;
  style: CSSProperties;
}

/** The pointer has to go so far before a press becomes a pull. */
const pullPx = 5;

/**
 * The label on an end of a cable: a click selects the cable, pulling it takes that end to another port. It is a mouse's
 * way; the keyboard has the cable list and the details.
 */
export function Flag({ cable, end, otherEnd, className, style }: Props) {
  const { screenToFlowPosition } = useReactFlow();

  const press = (down: PointerEvent) => {
    if (down.button !== 0) return;
    let pulling = false;
    const move = (event: globalThis.PointerEvent) => {
      if (!pulling && Math.hypot(event.clientX - down.clientX, event.clientY - down.clientY) < pullPx) return;
      if (!pulling) startMoving(cable, end);
      pulling = true;
      pullCable({ from: otherEnd, to: screenToFlowPosition({ x: event.clientX, y: event.clientY }) });
    };
    const stop = (event: globalThis.PointerEvent) => {
      window.removeEventListener('pointermove', move);
      window.removeEventListener('pointerup', stop);
      window.removeEventListener('pointercancel', stop);
      if (!pulling) return select({ cables: [cable.id] });
      pullCable(null);
      const port = event.type === 'pointerup' ? portAt(event) : undefined;
      if (port) finishLaying(port);
      else giveUp();
    };
    window.addEventListener('pointermove', move);
    window.addEventListener('pointerup', stop);
    window.addEventListener('pointercancel', stop);
  };

  return (
    <span
      className={`${className} nodrag nopan`}
      style={style}
      title={`${cable.number}: pull it to plug this end in elsewhere`}
      onPointerDown={press}
    >
      {cable.number}
    </span>
  );
}

/** The port under the pointer. */
function portAt({ clientX, clientY }: { clientX: number; clientY: number }) {
  const handle = document.elementFromPoint(clientX, clientY)?.closest('.react-flow__handle');
  if (!(handle instanceof HTMLElement)) return undefined;
  const { nodeid: unit, handleid: port } = handle.dataset;
  return unit && port ? { unit, port } : undefined;
}
