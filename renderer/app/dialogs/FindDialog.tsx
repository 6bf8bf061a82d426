import { useMemo } from 'react';
import { useStore } from 'zustand';
import { useShownResults, useStation } from '../../store/use-store.ts';
import { ChoiceDialog } from '../../widgets/ChoiceDialog.tsx';
import './dialog.css';
import { allChoices, findChoices } from './find-choices.ts';
import { closeFind, findStore } from './find-store.ts';

/** Finds units, ports, cables, findings and actions by name; shows or does what is chosen. */
export function FindDialog() {
  const open = useStore(findStore, (s) => s.open);
  return open && <Open />;
}

function Open() {
  const station = useStation();
  const results = useShownResults();
  // Once, not for every letter that is typed.
  const all = useMemo(() => allChoices(station, results), [station, results]);
  return (
    <ChoiceDialog
      title="Find"
      fieldLabel="Find a unit, port, cable, finding or action"
      placeholder="A unit, port, cable, finding or action"
      choicesFor={(text) => findChoices(all, text)}
      noneText={
        results.is === 'fresh' || results.is === 'passing'
          ? 'Nothing here has these words.'
          : 'Nothing here has these words. Findings are not computed.'
      }
      onClose={closeFind}
    />
  );
}
