import { isOutdoor } from '../../station/outdoors.ts';
import { kindOf } from '../../station/parts.ts';
import { defineRule } from '../rule.ts';

export const storm = defineRule({
  id: 'drawing/storm',
  severity: 'note',
  title: 'What to unplug before a storm',
  compares: 'every cable that leads outdoors, and every unit that hangs on the mains',
  why: 'A stroke nearby comes in by whatever is still plugged in: the mains, a rotator’s lead or a network lead as well as the antenna’s coax.',
  advice: 'Unplug all of these, the antennas first and well before the storm; during it touch nothing of the station.',
  source: 'common practice; local codes decide what has to be bonded and protected',
  judgesDrawing: true,
  follows: [],
  messages: {
    all: 'Before a storm unplug {cables}, which lead outdoors, and the mains plugs of {units}.',
    outdoors: 'Before a storm unplug {cables}, which lead outdoors.',
  },
  looksAt: {
    station({ station }, report) {
      const cables = station.cables.filter(({ a, b }) => [a, b].some(({ unit }) => isOutdoor(station, unit)));
      const mains = station.units.filter((unit) => kindOf(station, unit).mains);
      const [first, ...others] = cables;
      if (!first) return;
      report({
        message: mains.length > 0 ? 'all' : 'outdoors',
        severity: 'note',
        at: [{ cable: first.id }, ...others.map(({ id }) => ({ cable: id })), ...mains.map(({ id }) => ({ unit: id }))],
        values: { cables: cables.map((c) => c.number).join(', '), units: mains.map((u) => u.name).join(', ') },
      });
    },
  },
});
