import { shelf as kinds, shelfGroups } from '../../core/index.ts';
import { asJson, type Listing } from './command.ts';
import { textTable } from './text-table.ts';

export const shelf: Listing = {
  summary: 'the unit kinds that there are, by group',
  forms: ['json'],
  list(form) {
    if (form === 'json') return asJson({ kinds: kinds.map(({ id, kind }) => ({ id, ...kind })) });
    return shelfGroups
      .map(({ id, name }) => {
        const own = kinds.filter(({ kind }) => kind.group === id);
        return `${name}\n\n${textTable(
          ['Kind', 'Id', 'What it is'],
          own.map(({ id: kindId, kind }) => [kind.name, kindId, kind.summary]),
          '',
        )}`;
      })
      .join('\n');
  },
};
