import { formatRating } from '../quantity/format.ts';
import type { FuseFamily } from '../station/schema/unit-element.ts';

const families: Record<FuseFamily, string> = { blade: 'blade', 'glass-fast': 'F 5 × 20', 'glass-slow': 'T 5 × 20' };

/** A fuse as it is ordered: `7.5 A blade`, `2 A T 5 × 20` (F is quick, T is slow in IEC 60127). */
export const orderedFuse = (fuse: { readonly amps: number; readonly family: FuseFamily }): string =>
  `${formatRating(fuse.amps)} ${families[fuse.family]}`;

/** The holder for a fuse in a lead. */
export const holderName = (family: FuseFamily): string =>
  family === 'blade' ? 'in-line holder for a blade fuse' : 'in-line holder for a 5 × 20 mm fuse';
