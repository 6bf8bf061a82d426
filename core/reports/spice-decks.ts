import { writeSpice } from '../dc/write-spice.ts';
import type { Reach } from '../keydown/key-down.ts';
import { tryHookup } from '../keydown/try-hookup.ts';
import type { Hookup, Station } from '../station/schema/schema.ts';
import { sendingsOf } from '../trial/instants.ts';
import { busiest } from '../trial/power/battery-life.ts';

/** The DC network of a hook-up as SPICE decks: at rest, and while it sends (with the control that draws most). */
export function spiceDecks(station: Station, hookup: Hookup): Record<'receive' | 'sending', string> {
  const trial = tryHookup(station, hookup);
  const open = new Set(trial.opened.map((o) => o.part));
  const deckOf = (moment: string, { on, dc }: Reach) =>
    writeSpice(trial.circuit, `${station.title}: ${hookup.name}, ${moment}`, on, open, dc);
  return {
    receive: deckOf('receive', trial.receive),
    sending: deckOf('sending', sendingsOf(trial).length > 0 ? busiest(trial) : trial.receive),
  };
}
