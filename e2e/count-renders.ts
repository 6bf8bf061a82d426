import type { Page } from '@playwright/test';

/** What is read of React's own record of a component; flags and tags as React's developer tools read them. */
interface Fiber {
  readonly flags: number;
  readonly child: Fiber | null;
  readonly sibling: Fiber | null;
  readonly alternate: Fiber | null;
  readonly type: unknown;
  readonly memoizedProps: { id?: unknown; className?: unknown } | null;
}

declare global {
  interface Window {
    cardRenders: Record<string, number>;
  }
}

/**
 * Counts how often each unit's card is rendered, from before the page loads, without a counter in the program: React
 * tells its developer tools of every commit. A card is a component with an id that renders an element of class `unit`.
 */
export async function countCardRenders(page: Page) {
  await page.addInitScript(() => {
    const performedWork = 1;
    window.cardRenders = {};
    const isCard = ({ type, child }: Fiber) =>
      typeof type !== 'string' && /^unit( |$)/.test(String(child?.memoizedProps?.className ?? ''));
    const visit = (fiber: Fiber) => {
      const id = fiber.memoizedProps?.id;
      if (isCard(fiber) && typeof id === 'string' && fiber.flags & performedWork)
        window.cardRenders[id] = (window.cardRenders[id] ?? 0) + 1;
      // Where nothing below was touched both trees have the same children.
      if (fiber.child === fiber.alternate?.child) return;
      for (let child = fiber.child; child; child = child.sibling) visit(child);
    };
    const hook = {
      supportsFiber: true,
      inject: () => 1,
      onCommitFiberRoot: (_: number, root: { current: Fiber }) => visit(root.current),
      onCommitFiberUnmount() {},
      onPostCommitFiberRoot() {},
    };
    Object.defineProperty(window, '__REACT_DEVTOOLS_GLOBAL_HOOK__', { value: hook });
  });
}

/** How often each card was rendered since the last call, by the unit's id; then counts from nothing. */
export const takeCardRenders = (page: Page): Promise<Record<string, number>> =>
  page.evaluate(() => {
    const taken = window.cardRenders;
    window.cardRenders = {};
    return taken;
  });
