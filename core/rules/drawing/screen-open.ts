import { wiringOf } from '../../catalog/cables/wiring-of.ts';
import { plugOf } from '../../station/plug-of.ts';
import { defineRule } from '../rule.ts';

export const screenOpen = defineRule({
  id: 'drawing/screen-open',
  severity: 'doubt',
  title: 'A screen that is connected nowhere',
  compares: 'the wiring of each screened cable, whether its screen is on a contact at either end',
  why: 'A screen that hangs in the air screens nothing: RF and hum get in, and a microphone’s electronics has no ground.',
  advice: 'Join the screen to the shell or the common contact at the radio’s end at least.',
  source: 'common practice: audio screens at the radio’s end at least, RF screens at both',
  judgesDrawing: true,
  follows: ['drawing/does-not-mate'],
  messages: { open: 'The screen of {cable} is connected at neither end.' },
  looksAt: {
    // How a cable is made does not depend on a hook-up.
    station({ station }, report) {
      for (const cable of station.cables) {
        const isScreened = station.cableKinds[cable.kind]?.screen !== undefined;
        if (!isScreened || !cable.wiring || cable.screenAt !== undefined) continue;
        const hasReturn = (['a', 'b'] as const).every((end) =>
          plugOf(station, cable, end)?.contacts.some((c) => c.role === 'return'),
        );
        if (!hasReturn || wiringOf(station, cable).some((row) => row.role === 'return')) continue;
        report({ message: 'open', severity: 'doubt', at: [{ cable: cable.id }], values: { cable: cable.number } });
      }
    },
  },
});
