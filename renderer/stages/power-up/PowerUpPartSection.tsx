import type { PowerUpPart } from '../../../core/index.ts';
import { PowerUpStepRow } from './PowerUpStepRow.tsx';

interface Props {
  part: PowerUpPart;
  /** The number of its first step. */
  start: number;
  since: string;
}

/** A part of the sheet with its numbered steps. */
export function PowerUpPartSection({ part, start, since }: Props) {
  return (
    <section className="power-up-part" aria-labelledby={`part-${part.id}`}>
      <h3 id={`part-${part.id}`} tabIndex={-1}>
        {part.title}
      </h3>
      {part.before && <p className="power-up-before">{part.before}</p>}
      <ol start={start}>
        {part.steps.map((step, i) => (
          <PowerUpStepRow key={step.id} step={step} number={start + i} since={since} />
        ))}
      </ol>
    </section>
  );
}
