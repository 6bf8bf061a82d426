import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** What axe calls serious or critical on the page or in a part of it, with the places; an empty list where there is nothing. */
export async function seriousProblems(page: Page, within = 'html') {
  const { violations } = await new AxeBuilder({ page })
    .include(within)
    // All rules run, but what passes is not put into words; and no other page is opened, which only frames of other
    // origins need. Both take most of the time.
    .options({ resultTypes: ['violations'] })
    .setLegacyMode()
    .analyze();
  return violations
    .filter((v) => v.impact === 'serious' || v.impact === 'critical')
    .map(
      (v) =>
        `${v.id}: ${v.nodes
          .map((n) => n.target.join(' '))
          .slice(0, 5)
          .join('; ')}`,
    );
}
