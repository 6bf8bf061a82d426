import { rightPlug } from '../../fixes/plugs.ts';
import { defineRule, fixed } from '../rule.ts';

export const fitsButShouldNot = defineRule({
  id: 'drawing/fits-but-should-not',
  severity: 'danger',
  title: 'The plug goes in, but not where it belongs',
  compares: 'plugs that go into a jack of another kind, and the contacts that then touch',
  why: 'Nothing stops the hand that plugs it in, and the wrong contacts are joined.',
  advice: 'Change one of the two connectors, so that the wrong plug cannot go in.',
  source: 'the connectors’ dimensions, named in the catalogue',
  follows: [],
  messages: { fits: '{cable}’s {plug} goes into {port}, which is a {jack}, but should not: {why}' },
  looksAt: {
    end({ cable, end, fit, words }, { station }, report) {
      // A mono plug in a stereo jack joins two contacts of the jack; it has a rule of its own.
      const shorts = new Set(fit.joins.map(([own]) => own)).size < fit.joins.length;
      if (fit.fit !== 'misfit' || fit.harmless || shorts) return;
      report({
        message: 'fits',
        severity: 'danger',
        at: [{ cable: cable.id, end }, cable[end]],
        values: { ...words, why: fit.why },
        ...fixed(rightPlug(station, cable, end)),
      });
    },
  },
});
