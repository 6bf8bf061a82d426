import { useEffect, useState } from 'react';
import { cautions } from '../app/dialogs/cautions.ts';
import { useStation } from '../store/use-store.ts';

interface Props {
  title: string;
  /** What the sheet is about, besides the station. */
  of?: string;
  children: React.ReactNode;
}

/** What is printed of a sheet: a heading with title and date, and the cautions, around what is on screen anyway. */
export function PrintFrame({ title, of, children }: Props) {
  const station = useStation((s) => s.title);
  const [date, setDate] = useState('');
  useEffect(() => {
    // The date of printing, not of the last change on screen.
    const stamp = () => setDate(new Date().toISOString().slice(0, 10));
    stamp();
    window.addEventListener('beforeprint', stamp);
    return () => window.removeEventListener('beforeprint', stamp);
  }, []);
  return (
    <div className="print-sheet">
      <header className="print-only print-head">
        <h1>
          {title}, {station}
        </h1>
        <p>
          {of && `${of} · `}
          {date}
        </p>
      </header>
      {children}
      <footer className="print-only print-foot">
        <p>{cautions.join(' ')}</p>
      </footer>
    </div>
  );
}
