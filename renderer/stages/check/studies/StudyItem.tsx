import { type ReactNode, useEffect } from 'react';
import { useStore } from 'zustand';
import type { Act, Finding, Place, Severity } from '../../../../core/index.ts';
import { pointAt, suppose } from '../../../store/view.ts';
import { useIsOld } from '../../../widgets/age-words.ts';
import { SeverityShape } from '../../../widgets/SeverityShape.tsx';
import { checkView, unfoldItem } from '../check-view.ts';
import { FindingPlaces } from '../FindingPlaces.tsx';
import { showFinding } from '../show-finding.ts';

interface Props {
  id: string;
  severity: Severity;
  title: string;
  /** What comes of it, worst first. */
  harms: readonly [Finding, ...Finding[]];
  /** Where the drawing has it. */
  at: readonly Place[];
  /** What a hand does, to be drawn as it would lie. */
  act?: Act;
  /** What is to be said of it besides, always and once it is unfolded. */
  always: ReactNode;
  unfolded?: ReactNode;
}

/** A mix-up or a failure: what it is and its worst harm always; all harms and places once it is chosen. */
export function StudyItem({ id, severity, title, harms, at, act, always, unfolded }: Props) {
  const open = useStore(checkView, (v) => v.unfolded === id);
  const isOld = useIsOld();
  const [worst, ...others] = harms;
  const show = () => {
    pointAt([...at, ...worst.at]);
    // What an old study moved may not be there any more.
    if (!isOld) suppose({ cables: act?.cables ?? [], change: act?.change ?? null, severity, hurt: worst.at });
  };
  useEffect(() => hide, []);
  return (
    <article className={open ? 'finding open' : 'finding'} onPointerEnter={show} onPointerLeave={hide}>
      <SeverityShape severity={severity} size={20} />
      <div className="finding-body">
        <h3>
          <button
            type="button"
            aria-expanded={open}
            data-keep={`title ${id}`}
            onClick={() => unfoldItem(open ? null : id)}
            onFocus={show}
            onBlur={hide}
          >
            {title}
          </button>
        </h3>
        <p>{worst.message}</p>
        {always}
        {open && (
          <div className="finding-reasons">
            <p>{worst.why}</p>
            {others.length > 0 && <Harms harms={others} />}
            {unfolded}
            <FindingPlaces finding={worst} at={[...at, ...worst.at]} />
            <button type="button" className="button" onClick={() => showFinding(worst, [...at, ...worst.at])}>
              Show it
            </button>
          </div>
        )}
      </div>
    </article>
  );
}

function hide() {
  pointAt([]);
  suppose(null);
}

function Harms({ harms }: { harms: readonly Finding[] }) {
  return (
    <div>
      <b>And also</b>
      <ul className="study-harms">
        {harms.map(({ id, severity, message }) => (
          <li key={id}>
            <SeverityShape severity={severity} size={12} /> <span>{message}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
