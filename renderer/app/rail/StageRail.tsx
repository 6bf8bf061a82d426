import './stage-rail.css';
import { isPressing } from '../../../core/index.ts';
import { useShownResults, useView } from '../../store/use-store.ts';
import { type Stage, showStage, stages } from '../../store/view.ts';
import { AgeMark } from '../../widgets/AgeMark.tsx';
import { notSince } from '../../widgets/age-words.ts';

const names: Record<Stage, string> = {
  draw: 'Draw',
  check: 'Check',
  cables: 'Cables',
  budget: 'Budget',
  'power-up': 'Power-up',
};

/** The stages of the job, in its order. */
export function StageRail() {
  const here = useView((v) => v.stage);
  return (
    <nav className="rail" aria-label="Stages">
      <ol>
        {stages.map((stage, i) => (
          <li key={stage}>
            <button
              type="button"
              className={stage === here ? 'rail-stage here' : 'rail-stage'}
              aria-current={stage === here ? 'step' : undefined}
              title={`${names[stage]} (${i + 1})`}
              onClick={() => showStage(stage)}
            >
              <b aria-hidden="true">{i + 1}</b>
              <span>{names[stage]}</span>
              {stage === 'check' && <CheckBadge />}
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}

/** How many dangers and faults are open; a clock where that is not known, with how many there were. */
function CheckBadge() {
  const results = useShownResults();
  if (results.is === 'computing') return <UnknownBadge words="computing" />;
  if (results.is === 'missing') return <UnknownBadge words="not computed" />;
  const bad = results.value.findings.filter(isPressing).length;
  if (results.is === 'old') {
    const before = bad > 0 ? `${bad} open dangers and faults before` : '';
    return <UnknownBadge words={[notSince(results), before].filter(Boolean).join('; ')} before={bad} />;
  }
  return (
    bad > 0 && (
      <small>
        {bad}
        <span className="sr-only"> open dangers and faults</span>
      </small>
    )
  );
}

const UnknownBadge = ({ words, before = 0 }: { words: string; before?: number }) => (
  <small className="not-computed age-soon">
    <AgeMark size={12} />
    {before > 0 && <span aria-hidden="true">{before}</span>}
    <span className="sr-only"> {words}</span>
  </small>
);
