import { difference, type Finding, isOpenCause, type Severity, severities } from '../../../core/index.ts';

/**
 * What a cable would do to the findings, in a sentence: the worst that it brings; where that is no danger or fault, the
 * worst that it ends. What follows from another finding, or was accepted, is left out. Findings are those of the station
 * before, and of the station with the cable laid.
 */
export function layingEffect(before: readonly Finding[], after: readonly Finding[]): string {
  const { come, gone } = difference(before, after);
  const [brought, ended] = [worstOf(come), worstOf(gone)];
  if (brought && isGrave(brought.severity)) return `It would bring a ${brought.severity}: ${brought.message}`;
  if (ended && isGrave(ended.severity)) return `It would end a ${ended.severity}: ${ended.message}`;
  if (brought?.severity === 'doubt') return `It would bring a doubt: ${brought.message}`;
  return 'It would bring no danger and no fault, and end none.';
}

const isGrave = (severity: Severity): boolean => severity === 'danger' || severity === 'fault';

/** Findings come as the survey ranks them; here the severity alone decides, then that order. */
function worstOf(findings: readonly Finding[]): Finding | undefined {
  const causes = findings.filter(isOpenCause);
  for (const severity of severities) {
    const worst = causes.find((f) => f.severity === severity);
    if (worst) return worst;
  }
  return undefined;
}
