import {
  adapters,
  type Cable,
  type CableEnd,
  connectors,
  neededAdapters,
  plugOf,
  portName,
  type Station,
} from '../../../../core/index.ts';
import { askPartners, startMoving } from '../../../canvas/laying/laying.ts';
import { change } from '../../../store/document.ts';
import { showPlaces } from '../../../store/view.ts';
import { SelectField } from '../../../widgets/SelectField.tsx';

interface Props {
  station: Station;
  cable: Cable;
  end: CableEnd;
}

/** One end of a cable: where it goes, its plug, and the adapters that it needs or has there. */
export function CableEndDetails({ station, cable, end }: Props) {
  const ref = cable[end];
  const name = end === 'a' ? 'From' : 'To';
  const setPlug = (id: string) => {
    const connector = connectors[id];
    const plugs = { ...cable.plugs, [end]: id };
    const set = { plugs, wiring: undefined, adapters: withoutEnd(cable.adapters, end) } as Partial<Cable>;
    change({ type: 'updateCable', id: cable.id, set, carried: connector ? { connectors: { [id]: connector } } : {} });
  };
  const move = () => {
    startMoving(cable, end);
    askPartners(end === 'a' ? cable.b : cable.a);
  };
  return (
    <>
      <div className="field">
        <span className="field-name">{name}</span>
        <div className="cable-end">
          <button type="button" className="link" onClick={() => showPlaces([ref, { cable: cable.id }])}>
            {portName(station, ref)}
          </button>
          <button type="button" className="tag" aria-label={`Move the end at ${portName(station, ref)}`} onClick={move}>
            move
          </button>
        </div>
      </div>
      <SelectField
        label={end === 'a' ? 'Plug, from' : 'Plug, to'}
        value={plugOf(station, cable, end)?.id ?? ''}
        options={plugChoices(station, cable, end)}
        onChoose={setPlug}
      />
      <Adapters station={station} cable={cable} end={end} />
    </>
  );
}

function Adapters({ station, cable, end }: Props) {
  const needed = neededAdapters(station, cable, end);
  const fitted = cable.adapters?.[end] ?? [];
  const nameOf = (ids: readonly string[]) => ids.map((id) => adapters[id]?.name ?? id).join(', then ');
  const setAdapters = (ids: readonly string[] | undefined) => {
    const set = { adapters: ids ? { ...cable.adapters, [end]: [...ids] } : withoutEnd(cable.adapters, end) };
    change({ type: 'updateCable', id: cable.id, set: set as Partial<Cable> });
  };
  const missing = needed !== null && needed.length > 0 && needed.join() !== fitted.join();
  return (
    <>
      {fitted.length > 0 && (
        <p className="end-note">
          Adapter fitted: {nameOf(fitted)}{' '}
          <button type="button" className="tag" onClick={() => setAdapters(undefined)}>
            take off
          </button>
        </p>
      )}
      {missing && (
        <p className="end-note">
          It needs an adapter: {nameOf(needed)}{' '}
          <button type="button" className="tag" onClick={() => setAdapters(needed)}>
            fit it
          </button>
        </p>
      )}
      {needed === null && <p className="end-note">It does not go in here, and no adapter is known.</p>}
    </>
  );
}

function withoutEnd(all: Cable['adapters'], end: CableEnd): Cable['adapters'] {
  const { [end]: _, ...rest } = all ?? {};
  return Object.keys(rest).length > 0 ? rest : undefined;
}

/** What a cable can end in: the mates of the port first, then what an adapter takes there, then all the rest. */
function plugChoices(station: Station, cable: Cable, end: CableEnd) {
  const all = { ...connectors, ...station.connectors };
  const choices = Object.entries(all)
    .filter(([id, { gender }]) => gender !== 'jack' || id.endsWith('socket'))
    .map(([id, { name }]) => {
      const chain = neededAdapters(station, { ...cable, plugs: { ...cable.plugs, [end]: id } }, end);
      const rank = chain === null ? 2 : Math.min(1, chain.length);
      return { id, rank, label: `${name}${['', ', by an adapter', ', does not fit'][rank]}` };
    });
  return choices.sort((a, b) => a.rank - b.rank || (a.label < b.label ? -1 : 1));
}
