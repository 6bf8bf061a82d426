import { BookCautions } from './BookCautions.tsx';
import { BookDrawing } from './BookDrawing.tsx';
import { BookFindings } from './BookFindings.tsx';
import { BookTypical } from './BookTypical.tsx';
import { BookUnits } from './BookUnits.tsx';
import type { PaperSize, PartId } from './book-store.ts';

/** What each part of the book is called, and what it shows. */
export const parts: Record<PartId, { readonly label: string; readonly Part: React.FC<{ paper: PaperSize }> }> = {
  drawing: { label: 'Drawing', Part: BookDrawing },
  units: { label: 'Units', Part: BookUnits },
  findings: { label: 'Findings', Part: BookFindings },
  typical: { label: 'Typical figures', Part: BookTypical },
  cautions: { label: 'Cautions', Part: BookCautions },
};
