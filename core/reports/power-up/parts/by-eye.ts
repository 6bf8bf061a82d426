import { cablesIn, classOf, kindOf } from '../../../station/parts.ts';
import type { Context } from '../context.ts';
import { type DraftPart, doing } from '../draft.ts';
import { outdoorCables } from './storm.ts';

/** What no drawing can know and only eyes, hands and ears find; each line where the station has such a thing. */
export function byEyePart({ station, base, facts }: Context): DraftPart {
  const cables = cablesIn(station, base.hookup);
  const has = (kind: string) => cables.filter((c) => classOf(station, c) === kind);
  const outdoors = outdoorCables(station);
  const computers = station.units.filter((u) => kindOf(station, u).group === 'computer');
  const [rf, lines, data] = [has('rf'), has('control'), has('data')];
  const numbers = (list: typeof cables) => list.map((c) => c.number).join(', ');
  const sends = facts.hookups.some(({ trial }) => trial.circuit.rf.sources.length > 0);
  const steps: [id: string, text: string, wanted: boolean][] = [
    [
      'supply',
      'Whenever a supply is opened, swapped or adjusted: unplug every unit first, and read its volts unloaded.',
      true,
    ],
    [
      'points',
      'A unit that stays dead: volts at the supply, behind the fuse, at the plug, at the unit, in this order. Where they stop is the fault.',
      true,
    ],
    [
      'housings',
      'Bought-in power leads: the colour and the housing say nothing. Read plus and minus at the plug before it meets a radio.',
      true,
    ],
    [
      'shake',
      `Watch the SWR while somebody shakes ${numbers(outdoors)} at every plug: it must not move.`,
      outdoors.length > 0 && sends,
    ],
    [
      'charge',
      `Before plugging ${numbers(outdoors)} back in: touch centre to shell, away from your fingers. A line that hung open charges itself up.`,
      outdoors.length > 0,
    ],
    [
      'threads',
      'Once a year: threads and springs of every RF socket. No push-on plugs where you send.',
      rf.length > 0 && sends,
    ],
    [
      'latch',
      `Key and stop sending on every band: ${numbers(lines)} must let go each time. A line that stays down has RF on it: chokes at its unit, shorter lead.`,
      lines.length > 0 && sends,
    ],
    [
      'ferrites',
      `Send at full power and watch ${[...computers.map((u) => u.name), numbers(data)].filter(Boolean).join(', ')}: nothing may drop out. If it does: a choke on the feeder first, then ferrites on the leads.`,
      (data.length > 0 || computers.length > 0) && sends,
    ],
    [
      'boot',
      `Switch ${computers.map((u) => u.name).join(', ')} on before the radio: a line may be keyed while it starts.`,
      computers.length > 0 && sends,
    ],
    [
      'baseline',
      'Keep these readings, the noise with the antenna on, and one station’s strength: a year later they show what has died.',
      true,
    ],
  ];
  return {
    id: 'eyes',
    title: 'What a drawing can’t check',
    before: '',
    steps: steps.filter(([, , wanted]) => wanted).map(([id, text]) => doing({ id: `eyes/${id}`, text })),
  };
}
