import { makeTable, whatToMake } from '../../../core/index.ts';
import { isCableAsked, listCommand } from './list-command.ts';

export const make = listCommand({
  summary: 'what to make: cut lengths, plugs, fuses, sleeves, wiring',
  name: 'make',
  options: ['todo'],
  empty: 'No cable is left to make.',
  rowsOf: (given) => {
    const leaveOutDone = given.options.todo;
    return whatToMake(given.station, { leaveOutDone }).filter((row) => isCableAsked(given, row.id));
  },
  tableOf: makeTable,
});
