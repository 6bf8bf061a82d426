import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import type axe from 'axe-core';

// Half as long as what the package hands out.
const axeSource = readFileSync(path.join(import.meta.dirname, '../node_modules/axe-core/axe.min.js'), 'utf8');

/** What axe calls serious or critical on the page or in a part of it, with the places; an empty list where there is nothing. */
export async function seriousProblems(page: Page, within = 'html') {
  // Once for a page: the script is large, and to read it takes a good part of what a look takes.
  if (!(await page.evaluate('"axe" in window'))) await page.evaluate(axeSource);
  return page.evaluate(async (part) => {
    // All rules run, but what passes is not put into words, which would take most of the time.
    const { violations } = await window.axe.run(part, { resultTypes: ['violations'] });
    return violations
      .filter((v) => v.impact === 'serious' || v.impact === 'critical')
      .map(
        (v) =>
          `${v.id}: ${v.nodes
            .map((n) => n.target.join(' '))
            .slice(0, 5)
            .join('; ')}`,
      );
  }, within);
}

declare global {
  interface Window {
    axe: typeof axe;
  }
}
