import { type Actor, formatMs, isOutdoor, type Unit, type UnitKind } from '../../../../core/index.ts';
import { lockUnits, removeSelection } from '../../../app/editing/edit-actions.ts';
import { change, currentStation } from '../../../store/document.ts';
import { useStation } from '../../../store/use-store.ts';
import { TextField } from '../../../widgets/TextField.tsx';
import { openFromUnit } from '../../kinds/kind-editor.ts';
import { UnitFigures } from './UnitFigures.tsx';
import { UnitLive } from './UnitLive.tsx';
import { UnitPorts } from './UnitPorts.tsx';
import { UnitSettings } from './UnitSettings.tsx';

/** Everything about one unit: name, live values, settings, figures, what switches in it. */
export function UnitDetails({ unit }: { unit: Unit }) {
  const kind = useStation((s) => s.kinds[unit.kind]);
  if (!kind) return null;
  const rename = (name: string) => {
    if (name.trim() === '') return 'A unit needs a name.';
    change({ type: 'updateUnit', id: unit.id, set: { name: name.trim() } });
    return undefined;
  };
  const setNote = (note: string) => {
    change({ type: 'updateUnit', id: unit.id, set: { note: note.trim() === '' ? undefined : note } });
    return undefined;
  };
  return (
    <>
      <div className="sheet-head">
        <h2>{unit.name}</h2>
        <span className={`kind-pill g-${kind.group}`}>{kind.name}</span>
      </div>
      <p className="soft small">{kind.summary}</p>
      <TextField label="Name" value={unit.name} onCommit={rename} />
      <Outdoors unit={unit} />
      <UnitSettings unit={unit} kind={kind} />
      <UnitLive unit={unit} kind={kind} />
      <UnitPorts unit={unit} kind={kind} />
      <UnitFigures unit={unit} kind={kind} />
      <Switching kind={kind} />
      <Cautions kind={kind} />
      <TextField label="Note" value={unit.note ?? ''} onCommit={setNote} multiline />
      <p className="details-buttons">
        <button type="button" className="button" onClick={() => lockUnits([unit.id], !unit.locked)}>
          {unit.locked ? 'Unlock' : 'Lock in place'}
        </button>
        <button type="button" className="button" onClick={() => openFromUnit(currentStation(), unit)}>
          Make this a kind
        </button>
        <button type="button" className="button" onClick={removeSelection}>
          Remove unit
        </button>
      </p>
    </>
  );
}

/** Nobody is sent to what stands outdoors while the station sends, and before a storm it is unplugged. */
function Outdoors({ unit: { id } }: { unit: Unit }) {
  const outdoor = useStation((station) => isOutdoor(station, id));
  return (
    <label className="check-line">
      <input
        type="checkbox"
        checked={outdoor}
        onChange={(event) => change({ type: 'updateUnit', id, set: { outdoor: event.target.checked } })}
      />
      It stands outdoors
    </label>
  );
}

function Switching({ kind }: { kind: UnitKind }) {
  const actors = (kind.actors ?? []).filter((a) => a.operateMs > 0 || a.releaseMs > 0 || a.hang);
  if (actors.length === 0) return null;
  return (
    <section>
      <h3>What switches in it</h3>
      <dl className="pairs">
        {actors.map((actor) => (
          <div key={actor.id}>
            <dt>{actor.label}</dt>
            <dd>{timesOf(actor)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function timesOf({ operateMs, releaseMs, hang }: Actor): string {
  const held = [
    hang?.ms && formatMs(hang.ms),
    hang?.dits && `${hang.dits} dits`,
    hang?.wordSpaces && `${hang.wordSpaces} word spaces`,
  ];
  const hold = held.filter(Boolean).join(' and ');
  return `on after ${formatMs(operateMs)}, off after ${formatMs(releaseMs)}${hold ? `, held for ${hold}` : ''}`;
}

function Cautions({ kind }: { kind: UnitKind }) {
  if (!kind.cautions?.length) return null;
  return (
    <section>
      <h3>Take care</h3>
      <ul className="cautions">
        {kind.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </section>
  );
}
