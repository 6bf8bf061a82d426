import { formatHertz, limits, type Plan, type Station } from '../../../../core/index.ts';
import { showCautions } from '../../../app/dialogs/cautions.ts';
import { showKeys } from '../../../app/dialogs/show-keys.ts';
import { change } from '../../../store/document.ts';
import { useStation } from '../../../store/use-store.ts';
import { QuantityField } from '../../../widgets/QuantityField.tsx';
import { SelectField } from '../../../widgets/SelectField.tsx';
import { TextField } from '../../../widgets/TextField.tsx';
import { Hookups } from './Hookups.tsx';

const modes = [
  { id: 'keying', label: 'keying' },
  { id: 'voice', label: 'voice' },
  { id: 'data', label: 'data' },
];
const percent = (share: number): string => `${Number((share * 100).toFixed(1))} %`;

/** The station as a whole: title, plan, hook-ups, notes. */
export function StationDetails() {
  const title = useStation((s) => s.title);
  const notes = useStation((s) => s.notes);
  const setWords = (set: Partial<Pick<Station, 'title' | 'notes'>>) => {
    change({ type: 'describe', set });
    return undefined;
  };
  return (
    <>
      <div className="sheet-head">
        <h2>Station</h2>
      </div>
      <TextField
        label="Title"
        value={title}
        onCommit={(text) => (text.trim() ? setWords({ title: text.trim() }) : 'A station needs a title.')}
      />
      <PlanFields />
      <Hookups />
      <TextField label="Notes" value={notes} onCommit={(text) => setWords({ notes: text })} multiline />
      <Limits />
      <p className="details-buttons">
        <button type="button" className="link small" onClick={showCautions}>
          Cautions
        </button>
        <button type="button" className="link small" onClick={showKeys}>
          Keys and gestures
        </button>
      </p>
    </>
  );
}

function PlanFields() {
  const plan = useStation((s) => s.plan);
  const set = (fields: Partial<Plan>) => change({ type: 'setPlan', set: fields });
  return (
    <section>
      <h3>Plan</h3>
      <QuantityField
        label="Frequency"
        value={plan.frequencyHz}
        limit={limits.planHertz}
        format={formatHertz}
        onCommit={(frequencyHz) => set({ frequencyHz })}
      />
      <SelectField
        label="Mode"
        value={plan.mode}
        options={modes}
        onChoose={(mode) => set({ mode: mode as Plan['mode'] })}
      />
      {plan.mode === 'keying' && (
        <QuantityField
          label="Speed, WPM"
          value={plan.speedWpm}
          limit={limits.speedWpm}
          onCommit={(speedWpm) => set({ speedWpm })}
        />
      )}
      <QuantityField
        label="RF on while sending"
        value={plan.duty}
        limit={limits.share}
        format={percent}
        onCommit={(duty) => set({ duty })}
      />
      <QuantityField
        label="Time spent sending"
        value={plan.sendShare}
        limit={limits.share}
        format={percent}
        onCommit={(sendShare) => set({ sendShare })}
      />
      <QuantityField
        label="Hours a day"
        value={plan.hoursPerDay}
        limit={limits.hoursPerDay}
        onCommit={(hoursPerDay) => set({ hoursPerDay })}
      />
    </section>
  );
}

function Limits() {
  const settings = useStation((s) => s.settings);
  const set = (fields: Station['settings']) =>
    change({ type: 'describe', set: { settings: { ...settings, ...fields } } });
  return (
    <section>
      <h3>Limits</h3>
      <QuantityField
        label="Voltage drop up to"
        value={settings.maxDrop ?? 0.05}
        limit={limits.share}
        format={percent}
        onCommit={(maxDrop) => set({ maxDrop })}
      />
      <QuantityField
        label="Air around the leads, °C"
        value={settings.ambientCelsius ?? 20}
        limit={limits.celsius}
        onCommit={(ambientCelsius) => set({ ambientCelsius })}
      />
      <QuantityField
        label="Loaded conductors in a bundle"
        value={settings.bundled ?? 1}
        limit={limits.bundled}
        onCommit={(bundled) => set({ bundled })}
      />
    </section>
  );
}
