import { Panel } from '@xyflow/react';
import { useView } from '../../store/use-store.ts';
import { showMap } from '../../store/view.ts';
import { drawingView } from '../drawing-view.ts';
import { addNote, addZone } from './add-mark.ts';
import { useMapShown } from './PaperMap.tsx';

/** What is done to the paper as a whole: zoom for those without a wheel, tidying, notes and zones. */
export function PaperTools() {
  const chosen = useView((v) => v.selection.units.length + v.selection.cables.length > 0);
  const map = useMapShown();
  return (
    <Panel position="bottom-left" className="paper-tools">
      <div>
        <button type="button" aria-label="Zoom out" title="Zoom out" onClick={() => drawingView.zoomOut()}>
          −
        </button>
        <button type="button" onClick={() => drawingView.fit()} title="Show the whole station (Ctrl 0)">
          Fit
        </button>
        <button type="button" aria-label="Zoom in" title="Zoom in" onClick={() => drawingView.zoomIn()}>
          +
        </button>
        {chosen && (
          <button type="button" onClick={() => drawingView.fitSelection()} title="Show what is selected (Ctrl Shift 0)">
            Selection
          </button>
        )}
        <button type="button" aria-pressed={map} onClick={() => showMap(!map)} title="A small map of the drawing">
          Map
        </button>
      </div>
      <div>
        <button type="button" onClick={() => void drawingView.tidy()} title="Lay units out anew; locked ones stay">
          Tidy
        </button>
        <button type="button" onClick={addNote} title="Write a note on the paper">
          Note
        </button>
        <button type="button" onClick={addZone} title="Draw a zone (desk, wall, mast) around the selected units">
          Zone
        </button>
      </div>
    </Panel>
  );
}
