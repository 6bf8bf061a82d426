import { copyHookup, type Hookup } from '../../../../core/index.ts';
import { currentHookup } from '../../../store/current.ts';
import { change, currentStation } from '../../../store/document.ts';
import { useStation } from '../../../store/use-store.ts';
import { chooseHookup, viewStore } from '../../../store/view.ts';
import { TextField } from '../../../widgets/TextField.tsx';
import { CompareHookups } from './CompareHookups.tsx';
import './hookups.css';

/** The ways in which the station is plugged together. */
export function Hookups() {
  const hookups = useStation((s) => s.hookups);
  return (
    <section className="hookups">
      <h3>Hook-ups</h3>
      <p className="soft small">
        {hookups.length === 0
          ? 'One way to plug it together, as drawn. Add another for the dummy load, or for another antenna.'
          : 'Which cables are plugged in for each is said at the cable.'}
      </p>
      {hookups.map((hookup, i) => (
        <Row key={hookup.id} hookup={hookup} number={i + 1} />
      ))}
      <p className="details-buttons">
        <button type="button" className="button" onClick={addHookup}>
          Add a hook-up
        </button>
      </p>
      {hookups.length > 1 && <CompareHookups hookups={hookups} />}
    </section>
  );
}

function Row({ hookup, number }: { hookup: Hookup; number: number }) {
  const rename = (name: string) => {
    if (name.trim() === '') return 'A hook-up needs a name.';
    if (currentStation().hookups.some((h) => h.id !== hookup.id && h.name === name.trim()))
      return `There is a hook-up “${name.trim()}” already.`;
    change({ type: 'updateHookup', id: hookup.id, set: { name: name.trim() } });
    return undefined;
  };
  const buttons = (
    <>
      <button
        type="button"
        className="link small"
        title="Another one with the same cables and settings"
        aria-label={`Copy hook-up ${hookup.name}`}
        onClick={() => copy(hookup.id)}
      >
        Copy
      </button>
      <button
        type="button"
        className="link small"
        title="Remove it, with the cables that are in no other"
        aria-label={`Remove hook-up ${hookup.name}`}
        onClick={() => change({ type: 'removeHookup', id: hookup.id })}
      >
        Remove
      </button>
    </>
  );
  return <TextField label={`Hook-up ${number}`} value={hookup.name} onCommit={rename} after={buttons} />;
}

/** The copy is what is looked at next: it is there to be changed. */
function copy(id: string) {
  const made = copyHookup(currentStation(), id);
  if (!made) return;
  change(made.change);
  chooseHookup(made.copy.id);
}

/** A new hook-up begins with the settings of the one looked at; the first one is the station as drawn. */
function addHookup() {
  const station = currentStation();
  const { hookups } = station;
  const taken = new Set(hookups.map((h) => h.id));
  let count = hookups.length + 1;
  while (taken.has(`hookup-${count}`)) count++;
  const id = `hookup-${count}`;
  const { settings } = currentHookup(station, viewStore.getState());
  const hookup: Hookup = {
    id,
    name: hookups.length === 0 ? 'On the air' : `Hook-up ${count}`,
    ...(settings && { settings }),
  };
  change({ type: 'addHookup', hookup });
  chooseHookup(id);
}
