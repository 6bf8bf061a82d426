import { judgeReading, type PowerUpSheet as Sheet } from '../../../core/index.ts';
import { useStation } from '../../store/use-store.ts';
import { beginRound, roundReadings } from './round.ts';

/** How far it has come: readings written down, and those that are off. */
export function PowerUpProgress({ sheet, since }: { sheet: Sheet; since: string }) {
  const station = useStation();
  const expected = new Map(sheet.parts.flatMap((p) => p.steps).map((s) => [s.id, s.expected]));
  const all = [...expected.values()].filter((e) => e !== null).length;
  const read = roundReadings(sheet, station, since);
  const off = read.filter(({ step, value }) => {
    const right = expected.get(step);
    return right && judgeReading(right, value) !== 'right';
  }).length;
  return (
    <div className="power-up-progress">
      <p>
        <b>
          {read.length} of {all} done
        </b>
        {off > 0 && `, ${off} off`}
        {since !== '' && <span className="soft">, since {since.slice(0, 10)}</span>}
      </p>
      <progress value={read.length} max={Math.max(1, all)} aria-label="Readings written down" />
      {read.length > 0 && (
        <button type="button" className="link small" onClick={() => beginRound(new Date())}>
          Begin a new round
        </button>
      )}
      <ul className="power-up-jumps" aria-label="Parts of the sheet">
        {sheet.parts.map((part) => {
          const ids = part.steps.flatMap((s) => (s.expected ? [s.id] : []));
          const done = read.filter((r) => ids.includes(r.step)).length;
          return (
            <li key={part.id}>
              <button type="button" className="link small" onClick={() => goToPart(part.id)}>
                {part.title}
              </button>
              {ids.length > 0 && ` ${done}/${ids.length}`}
            </li>
          );
        })}
      </ul>
    </div>
  );
}

/** The keyboard goes along, so that Tab goes on from there. */
function goToPart(id: string) {
  const heading = document.getElementById(`part-${id}`);
  heading?.scrollIntoView({ block: 'start' });
  heading?.focus({ preventScroll: true });
}
