import { useEffect } from 'react';
import { askPartners, giveUp, useLaying } from './laying.ts';

/** Says what to do while a cable is being laid, on screen and to screen readers. */
export function LayingHint() {
  const from = useLaying((s) => s.from);
  const asked = useLaying((s) => s.asked !== null);
  const said = useLaying((s) => s.said);
  const why = useLaying((s) => s.why);
  useEffect(() => {
    if (!from || asked) return;
    const onKey = (event: KeyboardEvent) => event.key === 'Escape' && giveUp();
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [from, asked]);
  return (
    <div className={from ? 'laying-hint' : 'sr-only'}>
      <p role="status">{from && why ? why : said}</p>
      {from && (
        <button type="button" onClick={() => askPartners(from)}>
          List what fits
        </button>
      )}
    </div>
  );
}
