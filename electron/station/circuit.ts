import { hookupsOf, spiceDecks } from '../../core/index.ts';
import type { Command } from './command.ts';

export const circuit: Command = {
  summary: 'the DC network as a SPICE deck (--spice), at rest or while sending',
  forms: ['spice'],
  options: ['hookup', 'moment'],
  run({ station, options }) {
    const hookup = options.hookup ?? hookupsOf(station)[0];
    if (!hookup) throw new Error('a station has a hook-up');
    return { text: spiceDecks(station, hookup)[options.moment], status: 0 };
  },
};
