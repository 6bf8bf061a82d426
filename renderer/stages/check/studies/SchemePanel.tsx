import { useEffect, useState } from 'react';
import { applyMeasures, counted, type Measure, precautionFor, type Scheme } from '../../../../core/index.ts';
import { change, currentStation } from '../../../store/document.ts';
import { planRings } from '../../../store/view.ts';
import { useIsOld } from '../../../widgets/age-words.ts';

interface Props {
  scheme: Scheme;
  /** How many mix-ups of the study injure or destroy. */
  dangers: number;
}

/** What would keep a hand from the mix-ups that injure or destroy, to pick from and to apply as one step. */
export function SchemePanel({ scheme, dangers }: Props) {
  const { measures, left } = scheme;
  return (
    <section className="scheme" aria-labelledby="scheme-title">
      <h3 id="scheme-title">What would prevent the worst</h3>
      {dangers === 0 && <p>No mix-up that injures or destroys is left.</p>}
      {measures.length > 0 && <Measures key={measures.map((m) => m.id).join()} scheme={scheme} />}
      {left.length > 0 && <Left left={left} />}
    </section>
  );
}

function Measures({ scheme: { measures, exact } }: { scheme: Scheme }) {
  const [without, setWithout] = useState<readonly string[]>([]);
  const isOld = useIsOld();
  const picked = measures.filter((m) => !without.includes(m.id));
  const toggle = ({ id }: Measure) => {
    const next = without.includes(id) ? without.filter((w) => w !== id) : [...without, id];
    setWithout(next);
    planRings(ringsOf(measures.filter((m) => !next.includes(m.id))));
  };
  const show = () => {
    if (!isOld) planRings(ringsOf(picked));
  };
  useEffect(() => hide, []);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the rings show as the pointer or the keyboard comes in here
    <div onPointerEnter={show} onPointerLeave={hide} onFocus={show} onBlur={hide}>
      <p>
        Rings of a colour, each at a jack and on the plug that belongs there{' '}
        {exact ? '(no fewer will do)' : '(fewer may do: the search was cut short)'}. They show on the drawing.
      </p>
      <ul className="measures">
        {measures.map((measure) => (
          <li key={measure.id}>
            <label>
              <input type="checkbox" checked={!without.includes(measure.id)} onChange={() => toggle(measure)} />
              <span>
                {measure.words}
                <small className="soft">{preventsWords(measure)}</small>
              </span>
            </label>
          </li>
        ))}
      </ul>
      <button
        type="button"
        className="button main"
        disabled={isOld || picked.length === 0}
        onClick={() => {
          hide();
          change(applyMeasures(currentStation(), picked));
        }}
      >
        Apply {counted(picked.length, 'measure', 'measures')}
      </button>
    </div>
  );
}

const hide = () => planRings();

const ringsOf = (measures: readonly Measure[]) =>
  new Map(measures.flatMap(({ ports, colour }) => ports.map(({ unit, port }) => [`${unit}.${port}`, colour] as const)));

/** `Helps to prevent 4: R1 and R3 exchanged at Changeover, ...`: with its partners of the scheme. */
function preventsWords({ prevents }: Measure): string {
  const [first] = prevents;
  if (!first) return 'Keeps apart what other rings tell.';
  const more = prevents.length - 1;
  return `Helps to prevent: ${first.act.words}${more > 0 ? `, and ${more} more` : ''}.`;
}

/** What no ring tells, each with what helps. */
function Left({ left }: { left: Scheme['left'] }) {
  return (
    <>
      <p>
        {counted(left.length, 'mix-up that injures or destroys is', 'mix-ups that injure or destroy are')} left, which
        no ring tells:
      </p>
      <ul className="study-alike">
        {left.map((mixUp) => (
          <li key={mixUp.act.id}>
            {mixUp.act.words}. <span className="soft">{precautionFor(mixUp)}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
