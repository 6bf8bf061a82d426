import type { Mark } from '../../../core/index.ts';
import { removeSelection } from '../../app/editing/edit-actions.ts';
import { change } from '../../store/document.ts';
import { TextField } from '../../widgets/TextField.tsx';

const usualZones = ['Desk', 'Wall', 'Mast', 'Outdoors', 'Field table'];

/** The words of a note, or the name of a zone. */
export function MarkDetails({ mark }: { mark: Mark }) {
  const zone = mark.type === 'zone';
  const write = (text: string) => {
    if (text.trim() === '') return zone ? 'A zone needs a name.' : 'A note without words can be removed instead.';
    change({ type: 'updateMark', id: mark.id, set: { text: text.trim() } });
    return undefined;
  };
  return (
    <>
      <div className="sheet-head">
        <h2>{zone ? 'Zone' : 'Note'}</h2>
      </div>
      <p className="soft small">
        {zone
          ? 'A place around units. It is drawn, and changes nothing of the station. Pull its corner to size it.'
          : 'Words on the paper. Pull the corner to size it.'}
      </p>
      <TextField label={zone ? 'Name' : 'Words'} value={mark.text} onCommit={write} multiline={!zone} />
      {zone && (
        <p className="details-buttons">
          {usualZones
            .filter((name) => name !== mark.text)
            .map((name) => (
              <button key={name} type="button" className="button" onClick={() => write(name)}>
                {name}
              </button>
            ))}
        </p>
      )}
      <p className="details-buttons">
        <button type="button" className="button" onClick={removeSelection}>
          {zone ? 'Remove zone' : 'Remove note'}
        </button>
      </p>
    </>
  );
}
