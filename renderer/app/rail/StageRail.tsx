import './stage-rail.css';
import type { Finding } from '../../../core/index.ts';
import { useResults, useView } from '../../store/use-store.ts';
import { type Stage, showStage, stages } from '../../store/view.ts';

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
  const bad = useResults((r) => (r.report?.findings ?? []).filter(isPressing).length);
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
              {stage === 'check' && bad > 0 && (
                <small>
                  {bad}
                  <span className="sr-only"> open dangers and faults</span>
                </small>
              )}
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}

const isPressing = ({ severity, accepted, causedBy }: Finding): boolean =>
  accepted === undefined && causedBy === undefined && (severity === 'danger' || severity === 'fault');
