import type { Finding } from '../../../core/index.ts';
import { change } from '../../store/document.ts';
import { SeverityShape } from '../../widgets/SeverityShape.tsx';
import { showFinding } from './show-finding.ts';

/** Findings that the user lives with, each with the reason given. */
export function AcceptedList({ findings }: { findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <section aria-labelledby="accepted-title">
      <h3 id="accepted-title" className="accepted-title">
        Accepted
      </h3>
      <ol>
        {findings.map((finding) => (
          <li key={finding.id} className="finding">
            <SeverityShape severity={finding.severity} size={16} />
            <div className="finding-body">
              <h4>
                <button type="button" onClick={() => showFinding(finding)}>
                  {finding.title}
                </button>
              </h4>
              <p className="soft">{finding.message}</p>
              <p>Accepted: {finding.accepted}</p>
              <button
                type="button"
                className="link small"
                onClick={() => change({ type: 'takeBack', finding: finding.id })}
              >
                Take back
              </button>
            </div>
          </li>
        ))}
      </ol>
    </section>
  );
}
