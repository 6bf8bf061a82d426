import { wiringOf } from '../../../catalog/cables/wiring-of.ts';
import { isOutdoor } from '../../../station/outdoors.ts';
import { classOf, portName } from '../../../station/parts.ts';
import { plugOf } from '../../../station/plug-of.ts';
import type { Cable, CableEnd, Station } from '../../../station/schema/schema.ts';
import { type DraftStep, reading } from '../draft-step.ts';
import { ohmsBetween } from '../probes.ts';
import type { Probe, Setup } from '../setup.ts';

/** Insulation of a lead or an empty holder; anything less is dirt, water or a whisker of wire. Common practice. */
export const insulationOhms = 1e6;

/** What a hand ohmmeter shows of a sound core, whose leads and last digit it cannot tell from it. Common practice. */
const soundOhms = 0.5;

/** Two readings of a power lead or coax that lies unplugged: end to end, and core to core. Tested ones are left out. */
export function leadSteps(station: Station, setup: Setup, cable: Cable): DraftStep[] {
  const kind = classOf(station, cable);
  if ((kind !== 'dc' && kind !== 'rf') || cable.status === 'tested') return [];
  const rows = wiringOf(station, cable);
  const [one, two] = rows.filter((row) => row.role !== 'second');
  if (!one) return [];
  const node = (end: CableEnd, contact: string) => `cable ${cable.id}.${end}.${contact}`;
  const through: Probe = (seen) => {
    const ohms = rows.map((row) => ohmsBetween(node('a', row.a), node('b', row.b), cable.id)(seen));
    return ohms.includes(null) ? null : Math.max(...ohms.map(Number));
  };
  const names = kind === 'dc' ? 'plus and minus' : 'centre and braid';
  const isUp = [cable.a, cable.b].some(({ unit }) => isOutdoor(station, unit));
  const shared = {
    where: `${portName(station, cable.a)} to ${portName(station, cable.b)}`,
    at: [{ cable: cable.id }],
    quantity: 'ohm',
    openFrom: insulationOhms,
  } as const;
  const across = two && ohmsBetween(node('a', one.a), node('a', two.a), cable.id);
  return [
    ...reading({
      ...shared,
      id: `lead/${cable.id}/through`,
      text: `${cable.number}, ${isUp ? 'before it goes up (once up, leave this out)' : 'unplugged'}: each core end to end${contactWords(station, cable)}. Write down the higher.`,
      taking: { setup, probe: through },
      range: (ohms) => ({ from: 0, to: Math.max(soundOhms, 1.2 * ohms + 0.3) }),
    }),
    ...(across
      ? reading({
          ...shared,
          id: `lead/${cable.id}/across`,
          text: `${cable.number}, ${isUp ? 'before it goes up (once up, leave this out)' : 'unplugged'}: between ${names}.${isUp ? '' : ' Bend it at both plugs meanwhile.'}`,
          taking: { setup, probe: across },
        })
      : []),
  ];
}

/** Which contact goes to which, where the plugs name them differently: `, plus to shell and minus to centre`. */
function contactWords(station: Station, cable: Cable): string {
  const name = (end: CableEnd, id: string) =>
    plugOf(station, cable, end)
      ?.contacts.find((c) => c.id === id)
      ?.name.toLowerCase() ?? id;
  const rows = wiringOf(station, cable).map(({ a, b }) => [name('a', a), name('b', b)] as const);
  if (rows.every(([a, b]) => a === b)) return '';
  return `, ${rows.map(([a, b]) => `${a} to ${b}`).join(' and ')}`;
}
