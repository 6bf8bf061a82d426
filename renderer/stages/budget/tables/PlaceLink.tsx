import type { Place } from '../../../../core/index.ts';
import { showPlaces } from '../../../store/view.ts';

/** A name that shows on the drawing what it stands for. */
export function PlaceLink({ places, children }: { places: readonly Place[]; children: React.ReactNode }) {
  return (
    <button type="button" className="link" onClick={() => showPlaces(places)}>
      {children}
    </button>
  );
}
