import { useEffect } from 'react';
import { giveUp, useLaying } from './laying.ts';

/** Says what to do while a cable is being laid, on screen and to screen readers. */
export function LayingHint() {
  const laying = useLaying((s) => s.from !== null);
  const said = useLaying((s) => s.said);
  const why = useLaying((s) => s.why);
  useEffect(() => {
    if (!laying) return;
    const onKey = (event: KeyboardEvent) => event.key === 'Escape' && giveUp();
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [laying]);
  return (
    <p className={laying ? 'laying-hint' : 'sr-only'} role="status">
      {laying && why ? why : said}
    </p>
  );
}
