import type { FlagPages } from '../../../core/index.ts';
import { FlagLabel } from './FlagLabel.tsx';
import { FlagTestPage } from './FlagTestPage.tsx';
import { MmPage } from './MmPage.tsx';
import { usePageRule } from './use-page-rule.ts';

interface Props {
  pages: FlagPages;
  /** The test page in place of the flags. */
  test: boolean;
  /** Strips are cut from the sheet, so their outline is printed. */
  outlined: boolean;
}

/** The pages of flags as they are printed. */
export function FlagSheets({ pages, test, outlined }: Props) {
  usePageRule(pages.widthMm, pages.heightMm);
  return (
    <div className="flag-sheets">
      {test ? (
        <FlagTestPage pages={pages} />
      ) : (
        pages.pages.map((page, i) => (
          <MmPage
            // biome-ignore lint/suspicious/noArrayIndexKey: pages have no name but their number
            key={i}
            widthMm={pages.widthMm}
            heightMm={pages.heightMm}
            label={`Flags, page ${i + 1} of ${pages.pages.length}`}
          >
            {pages.labels.map((label) => (
              <rect
                key={`${label.x} ${label.y}`}
                className={outlined ? 'label-outline' : 'label-outline on-screen'}
                {...label}
              />
            ))}
            {page.map((placed) => (
              <FlagLabel key={`${placed.flag.cable} ${placed.flag.end}`} placed={placed} />
            ))}
          </MmPage>
        ))
      )}
    </div>
  );
}
