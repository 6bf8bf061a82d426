import { useStore } from 'zustand';
import {
  type Expected,
  figureOfReading,
  formatDbm,
  formatQuantity,
  formatWatts,
  judgeReading,
  type OwnFigure,
  type PowerUpStep,
  takeAsFigure,
} from '../../../core/index.ts';
import { change, currentStation } from '../../store/document.ts';
import { showPlaces } from '../../store/view.ts';
import { powerUpStore } from './power-up-store.ts';

interface Props {
  step: PowerUpStep;
  expected: Expected;
  value: number;
}

/** What to make of a reading: what would cause one that is off, and the figure that it may become. */
export function ReadingRemarks({ step, expected, value }: Props) {
  const isOff = judgeReading(expected, value) !== 'right';
  return (
    <div className="power-step-remarks">
      {isOff && <Causes step={step.id} />}
      {step.figure && <OwnFigureButton step={step} expected={expected} figure={step.figure} value={value} />}
    </div>
  );
}

function Causes({ step }: { step: string }) {
  const causes = useStore(powerUpStore, (s) => s.causes[step]);
  const looking = useStore(powerUpStore, (s) => s.looking);
  const failure = useStore(powerUpStore, (s) => s.causesFailure);
  if (!causes && looking) return <p className="soft small">Looking for what would cause it…</p>;
  if (!causes) return failure && <p className="small">What would cause it could not be worked out. {failure.words}</p>;
  if (causes.length === 0)
    return (
      <p className="small">No single fault of the drawing’s parts gives this. Read it again, and check the meter.</p>
    );
  const fits = causes.some((c) => c.fits);
  return (
    <div className="power-step-causes">
      <p>
        {fits
          ? 'This would cause it, likeliest first:'
          : 'Nothing single gives this very reading; these go the same way:'}
      </p>
      <ol>
        {causes.map(({ text, at }) => (
          <li key={text}>
            <button type="button" className="link" onClick={() => showPlaces([at])}>
              {text}
            </button>
          </li>
        ))}
      </ol>
    </div>
  );
}

/** Not offered for what the unit's figure says already. */
const sameShare = 0.003;

function OwnFigureButton({ step, expected, figure, value }: Props & { figure: OwnFigure }) {
  const own = figureOfReading(step, value);
  if (own === null || Math.abs(own - figure.given) <= Math.abs(figure.given) * sameShare) return null;
  const take = () => {
    const what = takeAsFigure(currentStation(), step, value);
    if (what) change(what);
  };
  const said =
    figure.per === 'dBm'
      ? formatDbm(own)
      : figure.per === 1
        ? formatQuantity(own, expected.quantity)
        : formatWatts(own);
  return (
    <button type="button" className="link small power-step-own" onClick={take}>
      Take {said} as {figure.name}
    </button>
  );
}
