import { type Place, portName, type Station } from '../../../core/index.ts';
import { drawingView } from '../../canvas/drawing-view.ts';
import { placeInView } from '../../canvas/laying/place-in-view.ts';
import { ofAnyAge } from '../../store/computed.ts';
import { allKinds } from '../../store/place-kind.ts';
import type { Results } from '../../store/results.ts';
import { showPlaces } from '../../store/view.ts';
import { type Choice, hasWords } from '../../widgets/ChoiceDialog.tsx';
import { namedActions } from '../editing/commands.ts';

const most = 60;

/** Those of the choices that have every word of the text; the first of all for an empty text. */
export const findChoices = (all: readonly Choice[], text: string): readonly Choice[] =>
  all.filter(({ what, label }) => hasWords(`${what} ${label}`, text)).slice(0, most);

const placeChoice = (key: string, what: string, label: string, places: readonly Place[]): Choice => ({
  key: `${what} ${key}`,
  what,
  label,
  choose: () => {
    showPlaces(places);
    if (places[0] && !what.endsWith('finding')) drawingView.focus(places[0]);
  },
});

/** Units, cables, findings, actions and ports, and units of the shelf to set down. */
export function allChoices(station: Station, results: Results): Choice[] {
  const units = station.units.map(({ id, name }) => placeChoice(id, 'unit', name, [{ unit: id }]));
  const cables = station.cables.map(({ id, number, a, b }) => {
    const label = `${number}, ${portName(station, a)} to ${portName(station, b)}`;
    return placeChoice(id, 'cable', label, [{ cable: id }]);
  });
  const finding = results.is === 'old' ? 'old finding' : 'finding';
  const findings = (ofAnyAge(results)?.findings ?? []).map(({ id, title, at }) => placeChoice(id, finding, title, at));
  const ports = station.units.flatMap((unit) =>
    (station.kinds[unit.kind]?.ports ?? [])
      .filter((port) => port.label !== '')
      .map((port) => {
        const ref = { unit: unit.id, port: port.id };
        return placeChoice(`${unit.id}.${port.id}`, 'port', portName(station, ref), [ref]);
      }),
  );
  const actions = namedActions.map(({ label, act }): Choice => ({ key: label, what: 'action', label, choose: act }));
  const kinds = allKinds().map(
    (item): Choice => ({
      key: `new ${item.id}`,
      what: 'new unit',
      label: item.kind.name,
      choose: () => {
        const unit = placeInView(item);
        if (unit) drawingView.focus({ unit });
      },
    }),
  );
  return [...units, ...cables, ...findings, ...actions, ...ports, ...kinds];
}
