import { useStore } from 'zustand';
import './beginning.css';
import { showKeys } from './dialogs/show-keys.ts';
import { openFile, openSample } from './document/document-actions.ts';
import { offerStore, showOffer } from './document/offer-kept.ts';
import { offeredSamples } from './document/samples.ts';

/** What an empty sheet says: how to begin, and two stations to look at first. */
export function Beginning() {
  const kept = useStore(offerStore, (s) => s.entries.length);
  return (
    <section className="beginning" aria-labelledby="beginning-title">
      <h2 id="beginning-title">Draw your station</h2>
      <ol>
        <li>Take units from the shelf: click one, or drag it to the paper.</li>
        <li>
          Drag from port to port to lay a cable: ports that fit light up. Let it go over free paper to set down what
          belongs there.
        </li>
        <li>Look at Check: what would go wrong, and why.</li>
      </ol>
      <p className="soft small">
        By keys alone: Ctrl K finds and sets down units, Enter on a port lists what it could be joined to.{' '}
        <button type="button" className="link" onClick={showKeys}>
          All keys and gestures
        </button>
      </p>
      {kept > 0 && (
        <p>
          <button type="button" className="link" onClick={() => void showOffer()}>
            Unsaved work from before ({kept})
          </button>
        </p>
      )}
      <h3>Or look at one first</h3>
      <div className="beginning-samples">
        {offeredSamples.map(({ id, title }) => (
          <button key={id} type="button" className="button" onClick={() => void openSample(id)}>
            {title}
          </button>
        ))}
        <button type="button" className="link" onClick={() => void openFile()}>
          Open a station file
        </button>
      </div>
    </section>
  );
}
