import type { UnitKind } from '../../schema/unit-kind.ts';
import type { ReportProblem } from './report-to.ts';

/** Pairs of figures of which the second may not be the smaller one. */
const rising: readonly (readonly [low: string, high: string])[] = [
  ['minV', 'maxV'],
  ['maxV', 'absMaxV'],
  ['minHz', 'maxHz'],
  ['amps', 'peakAmps'],
  ['volts', 'maxVolts'],
  ['dbm', 'maxDbm'],
  ['minOhms', 'maxOhms'],
  ['minWatts', 'maxWatts'],
];

/** Pairs of ends that may not be one and the same. */
const apart: readonly (readonly [from: string, to: string])[] = [
  ['from', 'to'],
  ['plus', 'minus'],
  ['anode', 'cathode'],
  ['outPlus', 'outMinus'],
  ['a', 'b'],
];

/** Reports figures that contradict each other, and parts whose two ends are the same contact or port. */
export function checkFigures(kind: UnitKind, report: ReportProblem): void {
  kind.ports.forEach((port, i) => {
    checkRising(port, ['ports', i], report);
  });
  kind.elements.forEach((element, i) => {
    const values: Record<string, unknown> = element;
    checkRising(values, ['elements', i], report);
    for (const [from, to] of apart) {
      if (values[from] !== undefined && values[from] === values[to])
        report(['elements', i, to], `It begins and ends at “${values[to]}”.`);
    }
    if (element.type !== 'rfLoad') return;
    element.table?.forEach(({ hz }, k) => {
      if (hz <= (element.table?.[k - 1]?.hz ?? -1))
        report(['elements', i, 'table', k, 'hz'], 'The frequencies have to rise from row to row.');
    });
  });
}

function checkRising(values: Record<string, unknown>, path: readonly PropertyKey[], report: ReportProblem) {
  for (const [lowName, highName] of rising) {
    const [low, high] = [values[lowName], values[highName]];
    if (typeof low === 'number' && typeof high === 'number' && low > high)
      report([...path, highName], `It has to be at least ${low}, as “${lowName}” is.`);
  }
}
