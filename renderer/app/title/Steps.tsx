import { redoStep, undoStep } from '../../store/document.ts';
import { useDocument } from '../../store/use-store.ts';
import { stepsId } from './open-steps.ts';
import { StepList } from './StepList.tsx';

/** One step back, one step on again, and the list of them all. */
export function Steps() {
  const undoName = useDocument((d) => d.history.past.at(-1)?.name);
  const redoName = useDocument((d) => d.history.future[0]?.name);
  return (
    <div className="top-buttons">
      <button type="button" disabled={!undoName} onClick={undoStep} title={undoName && `Undo: ${undoName} (Ctrl Z)`}>
        Undo
      </button>
      <button
        type="button"
        disabled={!redoName}
        onClick={redoStep}
        title={redoName && `Redo: ${redoName} (Ctrl Shift Z)`}
      >
        Redo
      </button>
      <button type="button" popoverTarget={stepsId} title="All steps, to go back and forth in (Ctrl J)">
        Steps
      </button>
      <StepList />
    </div>
  );
}
