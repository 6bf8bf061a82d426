import type { Page } from '@playwright/test';

/** How threads do: as they are, throwing for real, never answering, or answering what nobody can draw. */
type Mode = 'good' | 'throw' | 'hang' | 'nonsense';

/** Before the page is opened: its threads do as they are told. */
export async function troubleThreads(page: Page, first: Mode = 'good') {
  await page.addInitScript((mode) => {
    Object.assign(window, { threads: mode });
    const Plain = window.Worker;
    window.Worker = class extends Plain {
      override postMessage(question: unknown) {
        const now = (window as unknown as { threads: Mode }).threads;
        if (now === 'good') super.postMessage(question);
        // Nothing can be made of this: the thread itself throws.
        if (now === 'throw') super.postMessage(null);
        if (now === 'nonsense')
          setTimeout(() => this.onmessage?.(new MessageEvent('message', { data: { answer: {} } })));
      }
    };
  }, first);
}

export const setThreads = (page: Page, mode: Mode) =>
  page.evaluate((now) => {
    Object.assign(window, { threads: now });
  }, mode);
