import { useEffect } from 'react';
import { useStore } from 'zustand';
import { judgeReading, type PowerUpSheet as Sheet } from '../../../core/index.ts';
import { printSheet } from '../../app/print-actions.ts';
import { PrintFrame } from '../../print/PrintFrame.tsx';
import { useDocument, useStation } from '../../store/use-store.ts';
import { openPowerUpWorker } from '../../worker/open-power-up-worker.ts';
import { PowerUpPartSection } from './PowerUpPartSection.tsx';
import './power-up.css';
import { runPowerUp } from './power-up-runner.ts';
import { powerUpStore } from './power-up-store.ts';
import { beginRound, roundReadings, shownSince } from './round.ts';

/** What to do and to read when the station is switched on for the first time, or again. */
export function PowerUpSheet() {
  useEffect(() => runPowerUp(openPowerUpWorker), []);
  const sheet = useStore(powerUpStore, (s) => s.sheet);
  const problem = useStore(powerUpStore, (s) => s.problem);
  return (
    <aside className="sheet power-up" aria-label="Power-up">
      <div className="sheet-head">
        <h2>Power-up</h2>
        <button type="button" className="button" onClick={() => void printSheet()}>
          Print the sheet
        </button>
      </div>
      {problem && <p role="alert">{problem}</p>}
      {sheet ? <Steps sheet={sheet} /> : !problem && <p className="soft">Working out the readings…</p>}
    </aside>
  );
}

function Steps({ sheet }: { sheet: Sheet }) {
  useStore(powerUpStore, (s) => s.round);
  useDocument((d) => d.opened);
  const station = useStation();
  const since = shownSince(station);
  if (sheet.parts.length === 0)
    return <p className="soft">Nothing gives power yet. Draw a supply, and what hangs on it.</p>;
  let number = 1;
  return (
    <PrintFrame title="Power-up sheet" of={`Hook-up: ${sheet.hookup}`}>
      <Progress sheet={sheet} since={since} />
      {sheet.first.length > 0 && (
        <section className="power-up-first">
          <h3>Put right first</h3>
          <ul>
            {sheet.first.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      )}
      {sheet.parts.map((part) => {
        const start = number;
        number += part.steps.length;
        return <PowerUpPartSection key={part.id} part={part} start={start} since={since} />;
      })}
      {sheet.cautions.length > 0 && (
        <section className="power-up-part">
          <h3>Cautions</h3>
          <ul className="power-up-cautions">
            {sheet.cautions.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      )}
    </PrintFrame>
  );
}

/** How far it has come: readings written down, and those that are off. */
function Progress({ sheet, since }: { sheet: Sheet; since: string }) {
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
    </div>
  );
}
