import {
  type Expected,
  formatExpected,
  formatQuantity,
  judgeReading,
  nowAndBefore,
  type PowerUpStep,
  parseReading,
  writeReading,
} from '../../../core/index.ts';
import { change, currentStation } from '../../store/document.ts';
import { useStation } from '../../store/use-store.ts';
import { pointAt, showPlaces } from '../../store/view.ts';
import { SeverityShape } from '../../widgets/SeverityShape.tsx';
import { TextField } from '../../widgets/TextField.tsx';
import { ReadingRemarks } from './ReadingRemarks.tsx';
import { sinceForWriting } from './round.ts';

interface Props {
  step: PowerUpStep;
  number: number;
  since: string;
}

/** One step: what to do, where, what to expect, the box for the reading, and what to make of it. */
export function PowerUpStepRow({ step, number, since }: Props) {
  const { expected, at, where } = step;
  const readings = useStation((s) => s.readings);
  const { now, before } = nowAndBefore({ readings }, step.id, since);
  return (
    <li
      className={expected ? 'power-step' : 'power-step to-do'}
      onPointerEnter={() => pointAt(at)}
      onPointerLeave={() => pointAt([])}
      onFocus={() => pointAt(at)}
      onBlur={() => pointAt([])}
    >
      <b className="power-step-number">{number}</b>
      <div className="power-step-text">
        <p>{step.text}</p>
        {step.warning && (
          <p className="power-step-warning">
            <SeverityShape severity="danger" size={15} /> {step.warning}
          </p>
        )}
        <p className="power-step-where">
          {at.length > 0 && (
            <button type="button" className={where ? 'link' : 'link screen-only'} onClick={() => showPlaces(at)}>
              {where || 'Show it'}
            </button>
          )}
        </p>
      </div>
      {expected ? (
        <div className="power-step-box">
          <p className="power-step-expect">Expect {formatExpected(expected)}</p>
          <Box step={step} expected={expected} number={number} value={now?.value ?? null} since={since} />
          {before && (
            <p className="power-step-before">
              Last time {formatQuantity(before.value, expected.quantity)}, {before.when.slice(0, 10)}
            </p>
          )}
        </div>
      ) : (
        <span className="power-step-tick print-only" aria-hidden="true" />
      )}
      {expected && now && <ReadingRemarks step={step} expected={expected} value={now.value} />}
    </li>
  );
}

interface BoxProps extends Props {
  expected: Expected;
  value: number | null;
}

function Box({ step, expected, number, value, since }: BoxProps) {
  const { quantity } = expected;
  const commit = (text: string) => {
    const station = currentStation();
    if (text.trim() === '') {
      const { now } = nowAndBefore(station, step.id, since);
      if (now) change({ type: 'removeReading', step: step.id, when: now.when });
      return undefined;
    }
    const read = parseReading(text, quantity);
    if ('problem' in read) return read.problem;
    const clock = new Date();
    const written = { value: read.value, when: clock.toISOString(), since: sinceForWriting(station, clock) };
    change(writeReading(station, step, written));
    return undefined;
  };
  const verdict = value === null ? null : judgeReading(expected, value);
  const after = verdict && (
    <span className={verdict === 'right' ? 'verdict right' : 'verdict off'} role="status">
      {verdict === 'right' ? (
        <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true">
          <path d="M2 7.5L5.5 11L12 3" />
        </svg>
      ) : (
        <SeverityShape severity="fault" size={14} />
      )}
      {verdict}
    </span>
  );
  return (
    <TextField
      label={`Reading ${number}`}
      value={value === null ? '' : formatQuantity(value, quantity)}
      onCommit={commit}
      after={after}
      figures
    />
  );
}
