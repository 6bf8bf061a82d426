import { type Change, changeKind, type Station, type UnitKind, writeKind } from '../../../core/index.ts';
import { ask, tell } from '../../app/dialogs/questions.ts';
import { placeInView } from '../../canvas/laying/place-in-view.ts';
import { change, currentStation } from '../../store/document.ts';
import { freeKindId, keepKind, type OwnKind } from '../../store/own-kinds.ts';
import { closeEditor, type Editing } from './kind-editor.ts';

/**
 * Puts the kind on the shelf and on the drawing: a new unit, the unit that it was made from, or the units that are of
 * the kind already. The user is asked before a cable goes.
 */
export async function takeIntoUse(editing: Editing) {
  const station = currentStation();
  const kind = { ...editing.kind, name: editing.kind.name.trim() };
  const id = editing.own ?? freeKindId(kind.name, Object.keys(station.kinds));
  const used = new Set(kind.ports.map((port) => port.connector));
  const connectors = Object.fromEntries(Object.entries(editing.connectors).filter(([name]) => used.has(name)));
  const own: OwnKind = { id, kind, connectors };
  const unit = editing.unit !== null && station.units.find((u) => u.id === editing.unit);
  const becomes: Change[] = unit ? [{ type: 'updateUnit', id: unit.id, set: { kind: id, overrides: undefined } }] : [];
  const isDrawn = unit || station.units.some((u) => u.kind === id);
  const drawn = station.kinds[id];
  const isOther = drawn !== undefined && !isSame(drawn, editing.before);
  const decision = isDrawn ? await decide(station, own, becomes, isOther) : 'none';
  if (decision === 'stay') return;
  keepKind(own);
  closeEditor();
  if (typeof decision === 'object') change(decision);
  if (editing.own || unit) return;
  placeInView({ id, kind });
}

const isSame = (a: UnitKind, b: UnitKind): boolean =>
  writeKind({ kind: a, connectors: {} }) === writeKind({ kind: b, connectors: {} });

/** The change of the drawing, `none` to leave it as it is, or `stay` to go on in the editor. */
async function decide(
  station: Station,
  own: OwnKind,
  becomes: Change[],
  isOther: boolean,
): Promise<Change | 'none' | 'stay'> {
  const made = changeKind(station, own.id, own, becomes);
  if (!made) {
    await tell(
      'Only the shelf is changed',
      'Antennas of this kind are coupled to others on the drawing, at a port that would not carry RF any more. The drawing stays as it is.',
    );
    return 'none';
  }
  const { lost, rewired } = made;
  if (lost.length === 0 && rewired.length === 0 && !isOther) return made.change;
  const names = (cables: typeof lost) => cables.map((c) => c.number).join(', ');
  const lines = [
    ...(isOther ? ['The units of it on the drawing are described otherwise than on the shelf.'] : []),
    ...(lost.length > 0 ? [`${names(lost)}: the port is gone, and the cable goes with it.`] : []),
    ...(rewired.length > 0 ? [`${names(rewired)}: wired as usual again, as the contacts are other ones.`] : []),
  ];
  const choice = await ask({
    title: 'Change the units on the drawing too?',
    text: 'It is one step that can be undone.',
    lines,
    choices: [
      { id: 'stay', label: 'Cancel' },
      { id: 'none', label: 'Only the shelf' },
      { id: 'change', label: 'Change them too' },
    ],
  });
  return choice === 'change' ? made.change : choice === 'none' ? 'none' : 'stay';
}
