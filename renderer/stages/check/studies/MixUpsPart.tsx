import { useStore } from 'zustand';
import { counted, type MixUp } from '../../../../core/index.ts';
import { PrintFrame } from '../../../print/PrintFrame.tsx';
import { type MixUpResult, mixUpStore } from '../../../store/studies.ts';
import { checkView, toggleStudied } from '../check-view.ts';
import { SeverityCounts } from '../SeverityCounts.tsx';
import { grouped } from './grouped.ts';
import { countSeverities, harmsShown } from './harms-shown.ts';
import { SchemePanel } from './SchemePanel.tsx';
import { StudyBox } from './StudyBox.tsx';
import { StudyItem } from './StudyItem.tsx';
import { StudyRows } from './StudyRows.tsx';

/** What a hand could do wrong on this drawing, what hurts worst and happens most easily first. */
export function MixUpsPart() {
  return (
    <PrintFrame title="Mix-ups">
      <StudyBox
        store={mixUpStore}
        title="Mix-ups"
        about="What a hand could plug or set wrong, one thing at a time, and what would come of it."
      >
        {(result) => <MixUps result={result} />}
      </StudyBox>
    </PrintFrame>
  );
}

function MixUps({ result: { study, scheme } }: { result: MixUpResult }) {
  const { tried, harmless, prevented, mixUps } = study;
  const hidden = useStore(checkView, (v) => v.hidden);
  const rows = mixUps.filter((m) => !hidden.includes(m.severity));
  return (
    <>
      <p className="study-sum" role="status">
        {grouped(tried)} {tried === 1 ? 'thing' : 'things'} a hand could do wrong tried; {grouped(harmless)} do no harm.
        {prevented > 0 && ` ${grouped(prevented)} more are told by rings.`} Two mistakes together are not looked at.
      </p>
      {mixUps.length > 0 && (
        <div className="findings-head">
          <SeverityCounts
            label="Mix-ups by severity"
            counts={countSeverities(mixUps)}
            hidden={hidden}
            onToggle={toggleStudied}
          />
        </div>
      )}
      {rows.length < mixUps.length && (
        <p className="filter-hides small">
          {counted(mixUps.length - rows.length, 'mix-up is', 'mix-ups are')} hidden by the filter.
        </p>
      )}
      <StudyRows rows={rows} keyOf={(m) => m.act.id}>
        {(m) => <MixUpItem mixUp={m} />}
      </StudyRows>
      <SchemePanel scheme={scheme} dangers={mixUps.filter((m) => m.severity === 'danger').length} />
    </>
  );
}

function MixUpItem({ mixUp: { act, alike, severity, harms, strikes, ease } }: { mixUp: MixUp }) {
  const shown = harmsShown(harms);
  const others = shown.length - 1;
  return (
    <StudyItem
      id={act.id}
      severity={severity}
      title={act.words}
      harms={shown}
      at={act.at}
      act={act}
      always={
        <>
          <p className="soft">
            {capital(strikes)}
            {others > 0 && `, and ${counted(others, 'thing', 'things')} more`}.
            {ease.words.length > 0 && ` Easy to do: ${ease.words.join('; ')}.`}
          </p>
          {alike.length > 0 && (
            <p className="soft">{counted(alike.length, 'other comes', 'others come')} to the same.</p>
          )}
        </>
      }
      unfolded={
        alike.length > 0 && (
          <div>
            <b>The same comes of</b>
            <ul className="study-alike">
              {alike.map((other) => (
                <li key={other.id}>{other.words}</li>
              ))}
            </ul>
          </div>
        )
      }
    />
  );
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
