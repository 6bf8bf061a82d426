import { AgeMark } from './AgeMark.tsx';
import { useIsOld } from './age-words.ts';

/** Before a figure, or a table of them, that is from before; nothing before one of now. */
export function OldFigure() {
  if (!useIsOld()) return null;
  return (
    <>
      <AgeMark size={10} />
      <span className="sr-only">old: </span>
    </>
  );
}
