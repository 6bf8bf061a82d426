import { useEffect } from 'react';
import { useStore } from 'zustand';
import type { PowerUpSheet as Sheet } from '../../../core/index.ts';
import { printSheet } from '../../app/document/print-actions.ts';
import { FailureLine } from '../../app/trouble/FailureLine.tsx';
import { PrintFrame } from '../../print/PrintFrame.tsx';
import { ofAnyAge } from '../../store/computed.ts';
import { useDocument, useStation } from '../../store/use-store.ts';
import { Aged } from '../../widgets/Aged.tsx';
import { useIsOld } from '../../widgets/age-words.ts';
import { openPowerUpWorker } from '../../worker/open-power-up-worker.ts';
import { PowerUpPartSection } from './PowerUpPartSection.tsx';
import { PowerUpProgress } from './PowerUpProgress.tsx';
import './power-up.css';
import { powerUpStore } from './power-up-store.ts';
import { shownSince } from './round.ts';
import { runPowerUp } from './run-power-up.ts';

/** What to do and to read when the station is switched on for the first time, or again. */
export function PowerUpSheet() {
  useEffect(() => runPowerUp(openPowerUpWorker), []);
  const sheet = useStore(powerUpStore, (s) => s.sheet);
  const hookup = ofAnyAge(sheet)?.hookup;
  return (
    <aside className="sheet power-up" aria-label="Power-up">
      <div className="sheet-head">
        <h2>Power-up</h2>
        <button type="button" className="button" onClick={() => void printSheet()}>
          Print the sheet
        </button>
      </div>
      <PrintFrame title="Power-up sheet" of={hookup ? `Hook-up: ${hookup}` : ''}>
        <Aged of={sheet}>{(value) => <Steps sheet={value} />}</Aged>
        <FailureLine of={sheet} />
      </PrintFrame>
    </aside>
  );
}

function Steps({ sheet }: { sheet: Sheet }) {
  useStore(powerUpStore, (s) => s.round);
  useDocument((d) => d.opened);
  const station = useStation();
  const since = shownSince(station);
  const isOld = useIsOld();
  if (sheet.parts.length === 0)
    return !isOld && <p className="soft">Nothing gives power yet. Draw a supply, and what hangs on it.</p>;
  let number = 1;
  return (
    <>
      <PowerUpProgress sheet={sheet} since={since} />
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
            {sheet.cautions.map(({ units, text }) => (
              <li key={text}>
                <b>{units}</b> {text}
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
