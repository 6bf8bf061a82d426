import type { Place, Unit } from '../../core/index.ts';

/** What the rest of the screen may ask of the drawing; the drawing fills it in while it is there. */
export interface DrawingView {
  fit(): void;
  fitSelection(): void;
  /** Lays units out anew: the selected ones where there are several, else all. */
  tidy(): Promise<void>;
  /** Puts the keyboard on a unit, or on a port of it. */
  focus(place: Place): void;
  zoomIn(): void;
  zoomOut(): void;
  /** A free place in view for a card of this size, on the grid. */
  freePlace(width: number, height: number): Unit['position'];
}

const absent: DrawingView = {
  fit() {},
  fitSelection() {},
  tidy: async () => {},
  focus() {},
  zoomIn() {},
  zoomOut() {},
  freePlace: () => ({ x: 0, y: 0 }),
};

export const drawingView: DrawingView = { ...absent };
