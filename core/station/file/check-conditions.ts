import type { Condition, UnitKind } from '../schema/unit-kind.ts';
import type { Report } from './references.ts';

/** Reports conditions that name an actor, a setting or a position of it that the kind does not have. */
export function checkConditions(kind: UnitKind, report: Report): void {
  const check = (condition: Condition | undefined, path: readonly PropertyKey[]) => {
    for (const way of ['on', 'off'] as const) {
      condition?.[way]?.forEach((actor, i) => {
        if (!kind.actors?.some((a) => a.id === actor))
          report([...path, way, i], `Nothing called “${actor}” switches in it.`);
      });
    }
    for (const [id, position] of Object.entries(condition?.settings ?? {})) {
      const setting = kind.settings?.find((s) => s.id === id);
      if (!setting) report([...path, 'settings', id], `The kind has no setting “${id}”.`);
      else if (!setting.options.some((o) => o.id === position))
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
