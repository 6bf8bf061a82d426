import { useStore } from 'zustand';
import { counted, type FailureGroup, type HarmfulFailure, type RankedFailures } from '../../../../core/index.ts';
import { PrintFrame } from '../../../print/PrintFrame.tsx';
import { failureStore } from '../../../store/studies.ts';
import { useStation } from '../../../store/use-store.ts';
import { checkView, toggleStudied } from '../check-view.ts';
import { SeverityCounts } from '../SeverityCounts.tsx';
import { grouped } from './grouped.ts';
import { countSeverities } from './harms-shown.ts';
import { StudyBox } from './StudyBox.tsx';
import { StudyItem } from './StudyItem.tsx';
import { StudyRows } from './StudyRows.tsx';

/** What comes of each single failure, by the weakness that it lays open, the worst first. */
export function FailuresPart() {
  return (
    <PrintFrame title="If it fails">
      <StudyBox
        store={failureStore}
        title="If it fails"
        about="A core, a contact, a fuse, a relay, a unit or a supply fails, one at a time, and what would come of it."
      >
        {(ranked) => <Failures ranked={ranked} />}
      </StudyBox>
    </PrintFrame>
  );
}

function Failures({ ranked: { tried, harmless, groups } }: { ranked: RankedFailures }) {
  const hidden = useStore(checkView, (v) => v.hidden);
  const all = groups.flatMap((g) => g.failures);
  const hiddenCount = all.filter((f) => hidden.includes(f.severity)).length;
  return (
    <>
      <p className="study-sum" role="status">
        {grouped(tried)} single {tried === 1 ? 'failure' : 'failures'} tried; {grouped(harmless)} show nothing beyond
        what the sound station shows. Two together are not looked at.
      </p>
      {all.length > 0 && (
        <div className="findings-head">
          <SeverityCounts
            label="Failures by severity"
            counts={countSeverities(all)}
            hidden={hidden}
            onToggle={toggleStudied}
          />
        </div>
      )}
      {hiddenCount > 0 && (
        <p className="filter-hides small">{counted(hiddenCount, 'failure is', 'failures are')} hidden by the filter.</p>
      )}
      {groups.map((group) => (
        <Group
          key={group.weakness}
          group={group}
          failures={group.failures.filter((f) => !hidden.includes(f.severity))}
        />
      ))}
    </>
  );
}

function Group({ group: { title, cure }, failures }: { group: FailureGroup; failures: readonly HarmfulFailure[] }) {
  if (failures.length === 0) return null;
  return (
    <section className="failure-group">
      <h3>{title}</h3>
      <p>
        <b>What would cure it.</b> {cure}
      </p>
      <StudyRows rows={failures} keyOf={(f) => f.failure.id}>
        {(f) => <FailureItem study={f} />}
      </StudyRows>
    </section>
  );
}

function FailureItem({ study: { failure, severity, harms, hookups } }: { study: HarmfulFailure }) {
  const station = useStation();
  const names = hookups.map((id) => station.hookups.find((h) => h.id === id)?.name).filter(Boolean);
  const others = harms.length - 1;
  const isPart = names.length > 0 && names.length < station.hookups.length;
  return (
    <StudyItem
      id={failure.id}
      severity={severity}
      title={failure.text}
      harms={harms}
      at={[failure.at]}
      always={
        (others > 0 || isPart) && (
          <p className="soft">
            {others > 0 && `${counted(others, 'thing', 'things')} more. `}
            {isPart && `In hook-up ${names.join(', ')}.`}
          </p>
        )
      }
    />
  );
}
