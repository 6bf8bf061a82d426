import { BookCautions } from './BookCautions.tsx';
import { BookDrawing } from './BookDrawing.tsx';
import { BookFindings } from './BookFindings.tsx';
import { BookTypical } from './BookTypical.tsx';
import { BookUnits } from './BookUnits.tsx';

/** The parts of a station book in their order; each can be printed alone. */
export const parts = [
  { id: 'drawing', label: 'Drawing', Part: BookDrawing },
  { id: 'units', label: 'Units', Part: BookUnits },
  { id: 'findings', label: 'Findings', Part: BookFindings },
  { id: 'typical', label: 'Typical figures', Part: BookTypical },
  { id: 'cautions', label: 'Cautions', Part: BookCautions },
] as const;

export type PartId = (typeof parts)[number]['id'];
