import { type Cable, classOf, type ShelfKind, splitCable, throughPorts } from '../../../../core/index.ts';
import { drawingView } from '../../../canvas/drawing-view.ts';
import { sizeOf } from '../../../canvas/layout.ts';
import { currentStation } from '../../../store/document.ts';
import { allKinds, placeBy, placing } from '../../../store/place-kind.ts';
import { useStation } from '../../../store/use-store.ts';
import { ChoiceDialog, hasWords } from '../../../widgets/ChoiceDialog.tsx';

/** The units of the shelf that a cable goes on through: a meter, a filter, a switch. */
export function SplitDialog({ cable, onClose }: { cable: Cable; onClose: () => void }) {
  const kind = useStation((s) => classOf(s, cable));
  const fitting = allKinds().filter((item) => throughPorts(item.kind, kind) !== null);
  const choices = (text: string) =>
    fitting
      .filter((item) => hasWords([item.kind.name, item.kind.summary, ...(item.kind.words ?? [])].join(' '), text))
      .map((item) => ({
        key: item.id,
        what: 'new unit',
        label: item.kind.name,
        note: item.kind.summary,
        choose: () => put(cable, item),
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

function put(cable: Cable, { id, kind }: ShelfKind) {
  const station = currentStation();
  const { width, height } = sizeOf(kind, kind.name);
  const split = splitCable(station, cable.id, placing(station, id, drawingView.freePlace(width, height)));
  if (split) placeBy(split);
}
