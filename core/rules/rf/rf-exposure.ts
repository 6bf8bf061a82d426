import { keepAway } from '../../rf/keep-away.ts';
import { unitName } from '../../station/parts.ts';
import { defineRule } from '../rule.ts';

export const rfExposure = defineRule({
  id: 'rf/rf-exposure',
  severity: 'note',
  title: 'Keep away from the antenna',
  compares: 'the average power at each antenna, its gain and common ground against the limits for anyone nearby',
  why: 'RF warms people before they feel it; touching the wire burns.',
  advice:
    'Keep everyone so far from every part of the antenna while it sends. A caution, not an assessment: the rules of your country decide.',
  source: '47 CFR 1.1310, FCC OET Bulletin 65 (far field, common ground)',
  follows: ['rf/transmit-into-nothing', 'rf/changeover-reversed'],
  messages: {
    keep: '{antenna} gets {watts W} on average at this plan: keep everyone {length m} away from it; those who know of it and can step back, {controlled m}.',
  },
  looksAt: {
    chain({ chain, touches }, { station, trial }, report) {
      const { hertz } = trial.circuit.rf;
      for (const { load, watts } of chain.ends) {
        if (load.spec.role !== 'antenna') continue;
        const { averageWatts, uncontrolled, controlled } = keepAway(station.plan, watts, load.spec.gainDbi, hertz);
        // Nearer than that nobody touches an antenna anyway.
        if (uncontrolled === null || controlled === null || uncontrolled < 0.5) continue;
        report({
          message: 'keep',
          severity: 'note',
          at: [{ unit: load.unit }],
          values: { antenna: unitName(station, load.unit), watts: averageWatts, length: uncontrolled, controlled },
          weight: uncontrolled,
          touches,
        });
      }
    },
  },
});
