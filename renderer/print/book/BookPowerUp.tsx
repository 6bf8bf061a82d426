import { useStore } from 'zustand';
import { type PowerUpSheet, startOfRound } from '../../../core/index.ts';
import { PowerUpPartSection } from '../../stages/power-up/PowerUpPartSection.tsx';
import { useStation } from '../../store/use-store.ts';
import { Aged } from '../../widgets/Aged.tsx';
import { bookStore } from './book-store.ts';
import { mostUnits } from './prepare-book.ts';

/** The steps of a power-up with boxes to write in. */
export function BookPowerUp() {
  const powerUp = useStore(bookStore, (s) => s.printing?.powerUp);
  if (!powerUp)
    return <p>With more than {mostUnits} units the sheet takes minutes: print it from the stage Power-up.</p>;
  return <Aged of={powerUp}>{(sheet) => <Steps sheet={sheet} />}</Aged>;
}

function Steps({ sheet }: { sheet: PowerUpSheet }) {
  const station = useStation();
  if (sheet.parts.length === 0) return <p>Nothing gives power yet.</p>;
  const since = startOfRound(station);
  let number = 1;
  return (
    <div className="power-up">
      <p>Hook-up: {sheet.hookup}</p>
      {sheet.first.length > 0 && <h3>Put right first</h3>}
      <ul className="book-list">
        {sheet.first.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {sheet.parts.map((part) => {
        const start = number;
        number += part.steps.length;
        return <PowerUpPartSection key={part.id} part={part} start={start} since={since} />;
      })}
    </div>
  );
}
