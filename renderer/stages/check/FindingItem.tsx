import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { type Finding, plural } from '../../../core/index.ts';
import { useStation } from '../../store/use-store.ts';
import { pointAt } from '../../store/view.ts';
import { SeverityShape } from '../../widgets/SeverityShape.tsx';
import { AcceptForm } from './AcceptForm.tsx';
import { FindingPlaces } from './FindingPlaces.tsx';
import { FixPreview } from './FixPreview.tsx';
import { findingsView, unfold } from './findings-view.ts';
import { showFinding } from './show-finding.ts';

interface Props {
  finding: Finding;
  consequences?: readonly Finding[];
  /** The newest report no longer has it; it stays while its reason is being typed. */
  gone?: boolean;
}

/** One finding: its sentence always, its reason and advice once it is chosen, and what follows from it under a fold. */
export function FindingItem({ finding, consequences = [], gone = false }: Props) {
  const [wanted, setFollows] = useState(false);
  const open = useStore(findingsView, (v) => v.unfolded === finding.id);
  // One that came to follow from another while it was looked at stays in view.
  const holds = useStore(findingsView, (v) => consequences.some((c) => c.id === v.unfolded && c.id in v.typed));
  const follows = wanted || holds;
  const show = () => {
    if (!open) showFinding(finding);
    unfold(open ? null : finding.id);
  };
  // Nothing says that the pointer has left what is no longer there.
  useEffect(() => () => pointAt([]), []);
  const count = consequences.length;
  return (
    <article
      className={open ? 'finding open' : 'finding'}
      onPointerEnter={() => pointAt(finding.at)}
      onPointerLeave={() => pointAt([])}
    >
      <SeverityShape severity={finding.severity} size={20} />
      <div className="finding-body">
        <h3>
          <button
            type="button"
            aria-expanded={open}
            data-keep={`title ${finding.id}`}
            onClick={show}
            onFocus={() => pointAt(finding.at)}
            onBlur={() => pointAt([])}
          >
            {finding.title}
          </button>
        </h3>
        <p>{finding.message}</p>
        <FindingPlaces finding={finding} />
        {gone && <p className="soft">It is no longer found: there is nothing to accept.</p>}
        {open && <Reasons finding={finding} gone={gone} />}
        {count > 0 && (
          <button type="button" className="link small" aria-expanded={follows} onClick={() => setFollows(!follows)}>
            {follows
              ? `Fold the ${count} that ${plural(count, 'follows', 'follow')} from it`
              : `and ${count} more that ${plural(count, 'follows', 'follow')} from it`}
          </button>
        )}
        {follows && (
          <ol className="consequences">
            {consequences.map((c) => (
              <li key={c.id}>
                <FindingItem finding={c} />
              </li>
            ))}
          </ol>
        )}
      </div>
    </article>
  );
}

function Reasons({ finding, gone }: { finding: Finding; gone: boolean }) {
  const station = useStation();
  const names = finding.hookups.map((id) => station.hookups.find((h) => h.id === id)?.name).filter(Boolean);
  const fixes = [finding.fix, ...(finding.orFix ?? [])].flatMap((fix) => fix ?? []);
  // An act is no danger of its own to live with: what follows from it is accepted where it is.
  const isAct = finding.rule.startsWith('act/');
  return (
    <div className="finding-reasons">
      <p>{finding.why}</p>
      <p>
        <b>What to do.</b> {finding.advice}
      </p>
      {names.length > 0 && names.length < station.hookups.length && (
        <p className="soft">In hook-up {names.join(', ')}.</p>
      )}
      {!gone && fixes.map((fix) => <FixPreview key={fix.name} finding={finding} fix={fix} />)}
      {!isAct && <AcceptForm finding={finding} gone={gone} />}
    </div>
  );
}
