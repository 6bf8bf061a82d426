import { Panel } from '@xyflow/react';
import { drawingView } from './drawing-view.ts';

/** Zoom by button, for those without a wheel. */
export function ZoomButtons() {
  return (
    <Panel position="bottom-left" className="zoom-buttons">
      <button type="button" aria-label="Zoom out" title="Zoom out" onClick={() => drawingView.zoomOut()}>
        −
      </button>
      <button type="button" onClick={() => drawingView.fit()} title="Show the whole station">
        Fit
      </button>
      <button type="button" aria-label="Zoom in" title="Zoom in" onClick={() => drawingView.zoomIn()}>
        +
      </button>
    </Panel>
  );
}
