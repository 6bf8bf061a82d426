import { useEffect, useState } from 'react';
import { createPortal } from 'react-dom';
import { useStore } from 'zustand';
import { formatHertz, formatPercent, hookupsOf, type Station, writeStation } from '../../../core/index.ts';
import { useStation } from '../../store/use-store.ts';
import { isNothingMixedUp } from './BookMixUps.tsx';
import { bookStore, partIds } from './book-store.ts';
import './book.css';
import { parts } from './parts.tsx';

/** The station on paper: on the page only while it is printed, beside the app, which paper does not show then. */
export function Book() {
  const printing = useStore(bookStore, (s) => s.printing);
  const station = useStation();
  useEffect(() => {
    document.documentElement.classList.toggle('printing-book', printing !== null);
  }, [printing]);
  if (!printing) return null;
  const chosen = partIds
    .filter((id) => printing.parts.includes(id) && !(id === 'mix-ups' && isNothingMixedUp(station, printing)))
    .map((id) => ({ id, ...parts[id] }));
  return createPortal(
    <article className={`book paper-${printing.paper}`}>
      <Cover station={station} parts={chosen.map((p) => p.label)} />
      {chosen.map(({ id, label, Part }) => (
        <section key={id} className={`book-part part-${id}`}>
          <h2>{label}</h2>
          <Part paper={printing.paper} />
        </section>
      ))}
    </article>,
    document.body,
  );
}

function Cover({ station, parts: names }: { station: Station; parts: readonly string[] }) {
  const { plan } = station;
  const speed = plan.mode === 'keying' ? ` at ${plan.speedWpm} WPM` : '';
  const version = useVersion(station);
  return (
    <header className="book-cover">
      <h1>{station.title}</h1>
      <dl>
        <dt>Printed</dt>
        <dd>{new Date().toISOString().slice(0, 10)}</dd>
        <dt>Drawing</dt>
        <dd>
          <code>{version}</code>: two papers with the same mark show the same station
        </dd>
        <dt>Plan</dt>
        <dd>
          {formatHertz(plan.frequencyHz)}, {plan.mode}
          {speed}; sending {formatPercent(plan.sendShare)} of the time, RF on for {formatPercent(plan.duty)} of that,{' '}
          {plan.hoursPerDay} h a day
        </dd>
        <dt>Hook-ups</dt>
        <dd>
          {hookupsOf(station)
            .map((h) => h.name)
            .join(', ')}
        </dd>
        {names.length > 1 && (
          <>
            <dt>In here</dt>
            <dd>{names.join(', ')}</dd>
          </>
        )}
      </dl>
      {station.notes && <p className="book-notes">{station.notes}</p>}
      <p className="book-estimate">
        All results are estimates from the figures entered. Local electrical codes, the licence conditions and the
        maker’s manuals stand above them.
      </p>
    </header>
  );
}

/** The first eight digits of the document's SHA-256: it tells whether two papers show the same drawing. */
function useVersion(station: Station): string {
  const [version, setVersion] = useState('');
  useEffect(() => {
    let gone = false;
    void digestOf(writeStation(station)).then((digest) => gone || setVersion(digest));
    return () => {
      gone = true;
    };
  }, [station]);
  return version;
}

async function digestOf(text: string): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)));
  return [...bytes.slice(0, 4)].map((b) => b.toString(16).padStart(2, '0')).join('');
}
