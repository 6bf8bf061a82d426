import { expect, test } from './browser.ts';
import { stage } from './drawing.ts';

test('the built screen runs under its page policy without a violation', async ({ page, address }) => {
  test.slow();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(address);
  const policy = page.locator('meta[http-equiv="Content-Security-Policy"]');
  await expect(policy).toHaveAttribute('content', /default-src 'none'.*connect-src 'none'/);
  // A sample brings the drawing, its fonts and the worker that computes it; tidying up the one that finds places.
  await page.getByRole('button', { name: /^The hut, first draft/ }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/hut/i);
  await page.getByRole('button', { name: 'Tidy', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Undo' })).toHaveAttribute('title', /Tidy up/, { timeout: 60_000 });
  await stage(page, 'Check').click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/hut/i);
  await expect(page.getByText(/danger/i).first()).toBeVisible();
  expect(complaints).toEqual([]);
});

test('the policy refuses what it should', async ({ page, address }) => {
  await page.goto(address);
  const refused = await page.evaluate(async () => {
    const violations: string[] = [];
    document.addEventListener('securitypolicyviolation', (event) => violations.push(event.effectiveDirective));
    await fetch('https://example.invalid/').catch(() => null);
    const script = document.createElement('script');
    script.textContent = 'window.ran = true';
    document.body.append(script);
    await new Promise((done) => setTimeout(done, 100));
    // The page's own policy and the server's say it both.
    return { violations: [...new Set(violations)], ran: 'ran' in window };
  });
  expect(refused).toEqual({ violations: ['connect-src', 'script-src-elem'], ran: false });
});

test('the policy comes as a header too, for workers as well, and no other page may frame ours', async ({
  page,
  address,
}) => {
  const answer = await page.goto(address);
  const inPage = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  expect(answer?.headers()['content-security-policy']).toBe(`${inPage}; frame-ancestors 'none'`);
  // By its other name the server is another origin; even a page of the very same one may not.
  const other = address.replace('127.0.0.1', 'localhost');
  for (const outer of [other, address]) {
    await page.route('**/outer', (route) =>
      route.fulfill({ contentType: 'text/html', body: `<iframe src="${address}"></iframe>` }),
    );
    await page.goto(`${outer}outer`);
    await expect.poll(() => page.frames().at(-1)?.url()).toBe('chrome-error://chromewebdata/');
  }
});
