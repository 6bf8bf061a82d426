import { flagsOf, flagTable } from '../../../core/index.ts';
import { isCableAsked, listCommand } from './list-command.ts';

export const flags = listCommand({
  summary: 'the text and colour rings of both flags of each cable',
  name: 'flags',
  empty: 'No cable is drawn yet.',
  rowsOf: (given) => flagsOf(given.station).filter((flag) => isCableAsked(given, flag.cable)),
  tableOf: flagTable,
});
