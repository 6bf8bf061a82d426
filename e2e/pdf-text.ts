import { execFileSync, spawnSync } from 'node:child_process';
import type { Page } from '@playwright/test';

/** Whether the machine can read PDFs. */
export const hasPdfReader = spawnSync('pdftotext', ['-v']).status === 0;

/** A word on paper: millimetres from the upper left corner of its page. */
export interface PdfWord {
  readonly text: string;
  readonly xMm: number;
  readonly yMm: number;
}

export interface PdfPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly words: readonly PdfWord[];
}

const pointMm = 25.4 / 72;

/** The pages that the print stylesheet makes, read back from a PDF; the paper's size is the sheet's own, or the format's. */
export async function printedPages(page: Page, file: string, format?: 'A4' | 'Letter'): Promise<PdfPage[]> {
  await page.pdf({ path: file, ...(format ? { format } : { preferCSSPageSize: true }) });
  const text = execFileSync('pdftotext', ['-bbox', file, '-'], { encoding: 'utf8' });
  return text
    .split('<page ')
    .slice(1)
    .map((part) => ({
      widthMm: number(part, /width="([\d.]+)"/),
      heightMm: number(part, /height="([\d.]+)"/),
      words: [...part.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)"[^>]*>([^<]*)</g)].map(([, x, y, word]) => ({
        text: word ?? '',
        xMm: Number(x) * pointMm,
        yMm: Number(y) * pointMm,
      })),
    }));
}

const number = (text: string, pattern: RegExp): number => Number(pattern.exec(text)?.[1]) * pointMm;
