import { useStore } from 'zustand';
import { leaveOutDone, listsView } from './lists-view.ts';

/** Whether cables that are made or tested count. */
export function LeaveOutDone() {
  const is = useStore(listsView, (v) => v.leaveOutDone);
  return (
    <label className="check-line">
      <input type="checkbox" checked={is} onChange={(event) => leaveOutDone(event.target.checked)} />
      Leave out what is made or tested
    </label>
  );
}
