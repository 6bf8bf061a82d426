import { type Cable, classOf, placeUnit, shelf, splitCable, throughPorts } from '../../../core/index.ts';
import { drawingView } from '../../canvas/drawing-view.ts';
import { sizeOf } from '../../canvas/layout.ts';
import { change, currentStation } from '../../store/document.ts';
import { useStation } from '../../store/use-store.ts';
import { select } from '../../store/view.ts';
import { ChoiceDialog, hasWords } from '../../widgets/ChoiceDialog.tsx';

/** The units of the shelf that a cable goes on through: a meter, a filter, a switch. */
export function SplitDialog({ cable, onClose }: { cable: Cable; onClose: () => void }) {
  const kind = useStation((s) => classOf(s, cable));
  const fitting = shelf.filter((item) => throughPorts(item.kind, kind) !== null);
  const choices = (text: string) =>
    fitting
      .filter((item) => hasWords([item.kind.name, item.kind.summary, ...(item.kind.words ?? [])].join(' '), text))
      .map((item) => ({
        key: item.id,
        what: 'new unit',
        label: item.kind.name,
        note: item.kind.summary,
        choose: () => put(cable, item.id),
      }));
  return (
    <ChoiceDialog
      title={`Put a unit into ${cable.number}`}
      fieldLabel={`Put a unit into ${cable.number}`}
      placeholder={`Put a unit into ${cable.number}…`}
      choicesFor={choices}
      noneText="No unit that a cable goes on through has these words."
      onClose={onClose}
    />
  );
}

function put(cable: Cable, kindId: string) {
  const station = currentStation();
  const kind = shelf.find((item) => item.id === kindId)?.kind;
  if (!kind) return;
  const { width, height } = sizeOf(kind, kind.name);
  const split = splitCable(station, cable.id, placeUnit(station, kindId, drawingView.freePlace(width, height)));
  if (!split) return;
  change(split);
  select({
    units: currentStation()
      .units.slice(-1)
      .map((u) => u.id),
  });
}
