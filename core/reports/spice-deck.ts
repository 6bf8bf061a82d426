import { writeSpice } from '../dc/write-spice.ts';
import { tryHookup } from '../keydown/try-hookup.ts';
import { sendingsOf } from '../rules/instants.ts';
import { busiest } from '../rules/power/battery-life.ts';
import type { Hookup, Station } from '../station/schema/schema.ts';

/** The DC network of a hook-up at rest or while it sends (with the control that draws most) as a SPICE deck. */
export function spiceDeck(station: Station, hookup: Hookup, moment: 'receive' | 'sending'): string {
  const trial = tryHookup(station, hookup);
  const reach = moment === 'sending' && sendingsOf(trial).length > 0 ? busiest(trial) : trial.receive;
  const open = new Set(trial.opened.map((o) => o.part));
  return writeSpice(trial.circuit, `${station.title}: ${hookup.name}, ${moment}`, reach.on, open, reach.dc);
}
