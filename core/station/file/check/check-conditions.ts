import type { Condition, UnitKind } from '../../schema/unit-kind.ts';
import type { KindNames } from './names-in.ts';
import type { ReportProblem } from './report-to.ts';

/** Reports conditions that name an actor, a setting or a position of it that the kind does not have. */
export function checkConditions(kind: UnitKind, { actors, settings }: KindNames, report: ReportProblem): void {
  const check = (condition: Condition | undefined, path: readonly PropertyKey[]) => {
    for (const way of ['on', 'off'] as const) {
      condition?.[way]?.forEach((actor, i) => {
        if (!actors.has(actor)) report([...path, way, i], `Nothing called “${actor}” switches in it.`);
      });
    }
    for (const [id, position] of Object.entries(condition?.settings ?? {})) {
      const positions = settings.get(id);
      if (!positions) report([...path, 'settings', id], `The kind has no setting “${id}”.`);
      else if (!positions.has(position))
        report([...path, 'settings', id], `The setting “${id}” has no position “${position}”.`);
    }
  };
  kind.elements.forEach((element, i) => {
    check(element.when, ['elements', i, 'when']);
    if (element.type !== 'load') return;
    element.states?.forEach((state, k) => {
      check(state.when, ['elements', i, 'states', k, 'when']);
    });
  });
  kind.actors?.forEach((actor, i) => {
    check(actor.when, ['actors', i, 'when']);
  });
}
