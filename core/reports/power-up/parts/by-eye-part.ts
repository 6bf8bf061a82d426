import { cablesIn, classOf, kindOf, unitName } from '../../../station/parts.ts';
import type { Cable } from '../../../station/schema/schema.ts';
import { isLive } from '../coming-in.ts';
import type { Context } from '../context.ts';
import { type DraftPart, doing } from '../draft-step.ts';
import { formatQuantity } from '../format-quantity.ts';
import { cablesToDummy, loadedLeads, passingUnpowered } from './in-line.ts';

/** What no drawing can know and only eyes, hands and ears find; each line where the station has such a thing. Common practice. */
export function byEyePart(context: Context): DraftPart {
  const { station, base, facts } = context;
  const cables = cablesIn(station, base.hookup);
  const has = (kind: string) => cables.filter((c) => classOf(station, c) === kind);
  const { comers } = context;
  const live = comers.filter(isLive);
  const dead = comers.filter((one) => !isLive(one));
  const antennas = dead.filter((one) => one.class === 'rf').map(({ cable }) => cable);
  const others = dead.filter((one) => one.class !== 'rf').map(({ cable }) => cable);
  const inLine = cablesToDummy(context);
  const passing = passingUnpowered(context);
  const { cables: loaded, seconds } = loadedLeads(context);
  const computers = station.units.filter((unit) => {
    const { group, ports } = kindOf(station, unit);
    return group === 'computer' && ports.some((port) => port.class === 'data');
  });
  const sounding = station.units.filter((unit) => {
    const { group, elements, ports } = kindOf(station, unit);
    return (
      group === 'audio' && elements.some((e) => e.type === 'audioSource') && ports.some((port) => port.class === 'data')
    );
  });
  const [rf, lines, data] = [has('rf'), has('control'), has('data')];
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
      `At the lowest power into the dummy load, indoors: move ${numbers(inLine)} at both plugs. Watts and SWR stay where they are.`,
      inLine.length > 0,
    ],
    [
      'unpowered',
      `At the lowest power into the dummy load, one after the other: ${passing.map(({ unit, cable }) => `${unitName(station, unit)} with ${cable.number} out`).join(', ')}. The meter still shows a line that is right, with no more SWR: so it is when a fuse goes.`,
      passing.length > 0,
    ],
    [
      'warmth',
      `${seconds < 60 ? `After ${seconds} s` : 'After a minute'} at full power into the dummy load: power off, then feel the plugs of ${numbers(loaded)}. One that is warmer than its lead is half seated or badly crimped.`,
      loaded.length > 0,
    ],
    [
      'outdoors',
      `All off, ${numbers(others)} out at the house: an ohmmeter between two cores at a time, while somebody moves the lead outdoors at every plug within reach from the ground. Nothing changes by jumps.`,
      others.length > 0,
    ],
    [
      'live',
      `${live.map(({ cable, volts }) => `${cable.number} (${formatQuantity(volts, 'V')})`).join(', ')}: volts stand on the loose plug that comes in from outdoors, whatever is off in the house. Never touch its contacts together and put no ohmmeter on it.`,
      live.length > 0,
    ],
    [
      'charge',
      `Before plugging ${numbers(antennas)} back in: touch centre to shell, away from your fingers. A line that hung open charges itself up.`,
      antennas.length > 0,
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
      `While you send as you always do, on the air: watch ${[...computers.map((u) => u.name), numbers(data)].filter(Boolean).join(', ')}. Nothing may drop out; if it does: a choke on the feeder first, then ferrites on the leads.`,
      (data.length > 0 || computers.length > 0) && sends,
    ],
    [
      'sound',
      `${sounding.map((u) => u.name).join(', ')}: sound level from zero up, into the dummy load, until the power rises no more, then a little back; the ALC stays still. More makes a wide signal.`,
      sounding.length > 0 && sends,
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

const numbers = (list: readonly Cable[]): string => list.map((c) => c.number).join(', ');
