import { type Problem, placeInFile } from '../problem.ts';

/** Tells something wrong at a path of keys. */
export type ReportProblem = (path: readonly PropertyKey[], message: string) => void;

/** A report that puts what it is told on a list. */
export const reportTo =
  (problems: Problem[]): ReportProblem =>
  (path, message) =>
    problems.push({ place: placeInFile(path), message });

/** Reports every id that an earlier item of the list has already. */
export function reportTwins(items: readonly { id: string }[], list: string, report: ReportProblem) {
  const first = new Map<string, number>();
  items.forEach((item, i) => {
    const twin = first.get(item.id);
    if (twin === undefined) first.set(item.id, i);
    else report([list, i, 'id'], `The id “${item.id}” is already taken by ${list}[${twin}].`);
  });
}
