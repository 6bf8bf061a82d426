import { rightPlug } from '../../fixes/plugs.ts';
import { defineRule, fixed } from '../rule.ts';

export const doesNotMate = defineRule({
  id: 'drawing/does-not-mate',
  severity: 'fault',
  title: 'The plug does not go in',
  compares: 'the family and gender of a plug with those of the port it is drawn into',
  why: 'The cable can’t be plugged in as drawn.',
  advice: 'Give the cable the plug that the port asks for.',
  source: 'the connectors’ standards, named in the catalogue',
  follows: [],
  messages: { apart: '{cable}’s {plug} does not go into {port}, which is a {jack}, and no adapter joins the two.' },
  looksAt: {
    end({ cable, end, fit, words }, { station }, report) {
      if (fit.fit !== 'none') return;
      report({
        message: 'apart',
        severity: 'fault',
        at: [{ cable: cable.id, end }, cable[end]],
        values: words,
        ...fixed(rightPlug(station, cable, end)),
      });
    },
  },
});
