import { Component, createRef } from 'react';

interface Props {
  label: string;
  className: string;
  children: React.ReactNode;
}

/** What was on screen before an update, and where. */
interface Before {
  readonly spots: readonly { readonly element: Element; readonly top: number }[];
  /** The element with the focus, where it is in here, and how to find its heir. */
  readonly focus: {
    readonly element: Element;
    readonly keep: string | undefined;
    readonly index: number;
    readonly seen: boolean;
  } | null;
}

/**
 * A sheet whose list may change under the reader's eyes: what has the focus, or is open, or is at the top stays where
 * it is on the screen, and the focus goes on to a neighbour where its place is gone. React reads the page before an
 * update only for a class.
 */
export class Steady extends Component<Props> {
  private readonly box = createRef<HTMLElement>();

  override getSnapshotBeforeUpdate(): Before | null {
    const box = this.box.current;
    if (!box) return null;
    const articles = [...box.querySelectorAll('article')];
    const active = box.contains(document.activeElement) ? document.activeElement : null;
    const { top, bottom } = box.getBoundingClientRect();
    const isSeen = (element: Element) => {
      const rect = element.getBoundingClientRect();
      return rect.bottom > top && rect.top < bottom;
    };
    // At the very top nothing is held but what is in use: what is new and worst comes into view there.
    const used = [active, box.querySelector('article.open')].filter((e) => e !== null);
    const read = articles.filter((article) => article.getBoundingClientRect().top >= top);
    const spots = [...used, ...(box.scrollTop > 0 ? [...read, ...articles] : [])].filter(isSeen);
    return {
      spots: spots.map((element) => ({ element, top: element.getBoundingClientRect().top })),
      focus: active && {
        element: active,
        keep: active.closest<HTMLElement>('[data-keep]')?.dataset['keep'],
        index: articles.findIndex((article) => article.contains(active)),
        seen: isSeen(active),
      },
    };
  }

  override componentDidUpdate(_props: Props, _state: unknown, before: Before | null) {
    const box = this.box.current;
    if (!box || !before) return;
    const { focus } = before;
    const isLost = focus && !focus.element.isConnected && document.activeElement === document.body;
    const heir = isLost ? heirOf(box, focus) : null;
    heir?.focus({ preventScroll: true });
    const spot = before.spots.find(({ element }) => element.isConnected);
    if (spot) box.scrollTop += spot.element.getBoundingClientRect().top - spot.top;
    // Who had scrolled away from the focus stays where they read.
    if (focus?.seen) heir?.scrollIntoView({ block: 'nearest' });
  }

  override render() {
    const { label, className, children } = this.props;
    return (
      <aside ref={this.box} className={`sheet ${className}`} aria-label={label}>
        {children}
      </aside>
    );
  }
}

/** The same control made anew elsewhere, else the title of what is now at its place in the list, else the heading. */
function heirOf(box: HTMLElement, { keep, index }: NonNullable<Before['focus']>): HTMLElement | null {
  const same = [...box.querySelectorAll<HTMLElement>('[data-keep]')].find((e) => e.dataset['keep'] === keep);
  if (same && keep) return same;
  const articles = [...box.querySelectorAll('article')];
  const article = articles[Math.min(Math.max(0, index), articles.length - 1)];
  return article?.querySelector('button') ?? box.querySelector('h2');
}
