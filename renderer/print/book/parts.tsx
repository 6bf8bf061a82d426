import { BookBudget } from './BookBudget.tsx';
import { BookCautions } from './BookCautions.tsx';
import { BookDrawing } from './BookDrawing.tsx';
import { BookFindings } from './BookFindings.tsx';
import { BookBuy, BookCables, BookMake } from './BookLists.tsx';
import { BookMixUps } from './BookMixUps.tsx';
import { BookPowerUp } from './BookPowerUp.tsx';
import { BookTypical } from './BookTypical.tsx';
import { BookUnits } from './BookUnits.tsx';
import type { PaperSize, PartId } from './book-store.ts';

/** What each part of the book is called, and what it shows. */
export const parts: Record<PartId, { readonly label: string; readonly Part: React.FC<{ paper: PaperSize }> }> = {
  drawing: { label: 'Drawing', Part: BookDrawing },
  units: { label: 'Units', Part: BookUnits },
  cables: { label: 'Cables', Part: BookCables },
  make: { label: 'What to make', Part: BookMake },
  buy: { label: 'What to buy', Part: BookBuy },
  budget: { label: 'Current budget', Part: BookBudget },
  'power-up': { label: 'Power-up', Part: BookPowerUp },
  findings: { label: 'Findings', Part: BookFindings },
  'mix-ups': { label: 'Plugs that must not be exchanged', Part: BookMixUps },
  typical: { label: 'Typical figures', Part: BookTypical },
  cautions: { label: 'Cautions', Part: BookCautions },
};
