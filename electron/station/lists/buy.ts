import { buyTable, whatToBuy } from '../../../core/index.ts';
import { isCableAsked, listCommand } from './list-command.ts';

export const buy = listCommand({
  summary: 'what to buy: cable by the metre, plugs, adapters, fuses with spares',
  name: 'buy',
  options: ['todo'],
  empty: 'Nothing is left to buy.',
  rowsOf: (given) => {
    const { station, options } = given;
    const cables = station.cables.filter((cable) => isCableAsked(given, cable.id));
    return whatToBuy({ ...station, cables }, { leaveOutDone: options.todo });
  },
  tableOf: buyTable,
});
