import { adapters } from '../../catalog/adapters.ts';
import { defineRule } from '../rule.ts';
import { endsAtPorts } from './each-end.ts';

export const adapterNeeded = defineRule({
  id: 'drawing/adapter-needed',
  severity: 'doubt',
  title: 'An adapter is needed',
  compares: 'plugs that reach their port only through adapters with the adapters that are drawn',
  why: 'On the day the cable is there and the adapter is not; each one is also one more joint that works loose.',
  advice: 'Fit the adapter (it then goes on the list), or better: put the right plug on the cable.',
  source: 'common practice: one adapter at a joint, none in the middle of a power lead',
  follows: [],
  messages: {
    missing:
      '{cable}’s {plug} does not go into {port}, which is a {jack}: an adapter is needed ({adapters}), and none is drawn.',
    several: '{cable}’s {plug} reaches {port} only through several adapters: {adapters}.',
    fitted: '{cable}’s {plug} goes into {port} through an adapter: {adapters}.',
  },
  check({ station }, report) {
    for (const { cable, end, fit, words, hookups } of endsAtPorts(station)) {
      if (fit.fit !== 'adapter') continue;
      const chain = fit.chain ?? [];
      const values = { ...words, adapters: chain.map((id) => adapters[id]?.name ?? id).join(', ') };
      const message = (cable.adapters?.[end] ?? []).length === 0 ? 'missing' : chain.length > 1 ? 'several' : 'fitted';
      for (const hookup of hookups) {
        report({
          message,
          severity: message === 'fitted' ? 'note' : 'doubt',
          at: [{ cable: cable.id, end }, cable[end]],
          values,
          hookup,
        });
      }
    }
  },
});
