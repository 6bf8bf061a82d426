import { useEffect } from 'react';
import { askPartners, giveUp, useLaying } from './laying.ts';
import { useForetold } from './use-foretold.ts';

/** Says what to do while a cable is being laid, and what it would do at the port pointed at, on screen and to screen readers. */
export function LayingHint() {
  const from = useLaying((s) => s.from);
  const asked = useLaying((s) => s.asked !== null);
  const said = useLaying((s) => s.said);
  const why = useLaying((s) => s.why);
  const over = useLaying((s) => s.over);
  const foretold = useForetold(from && !asked ? over : null);
  useEffect(() => {
    if (!from || asked) return;
    const onKey = (event: KeyboardEvent) => event.key === 'Escape' && giveUp();
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [from, asked]);
  return (
    <div className={from ? 'laying-hint' : 'sr-only'}>
      <div>
        <p role="status">{from && why ? why : said}</p>
        <p className="laying-effect" aria-live="polite">
          {foretold}
        </p>
      </div>
      {from && (
        <button type="button" onClick={() => askPartners(from)}>
          List what fits
        </button>
      )}
    </div>
  );
}
