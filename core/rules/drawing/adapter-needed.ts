import { adapters, matesWith } from '../../catalog/adapters.ts';
import { connectors } from '../../catalog/connectors.ts';
import { fitAdapters } from '../../fixes/plugs.ts';
import { portOf } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { defineRule, fixed } from '../rule.ts';

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
    wrong:
      '{cable}’s {plug} does not reach {port}, which is a {jack}, through the adapters that are drawn ({drawn}); it needs {adapters}.',
    several: '{cable}’s {plug} reaches {port} only through several adapters: {adapters}.',
    fitted: '{cable}’s {plug} goes into {port} through an adapter: {adapters}.',
  },
  looksAt: {
    end({ cable, end, plug, fit, words }, { station }, report) {
      if (fit.fit !== 'adapter') return;
      const drawn = cable.adapters?.[end] ?? [];
      const jack = portOf(station, cable[end]).port.connector;
      const message = messageOf(drawn, isWay(station.connectors, plug.id, drawn, jack));
      const used = message === 'missing' || message === 'wrong' ? (fit.chain ?? []) : drawn;
      report({
        message,
        severity: message === 'fitted' ? 'note' : 'doubt',
        at: [{ cable: cable.id, end }, cable[end]],
        values: { ...words, adapters: namesOf(used), drawn: namesOf(drawn) },
        ...(message === 'missing' || message === 'wrong' ? fixed(fitAdapters(cable, end, used)) : {}),
      });
    },
  },
});

function messageOf(drawn: readonly string[], fits: boolean): 'missing' | 'wrong' | 'several' | 'fitted' {
  if (drawn.length === 0) return 'missing';
  if (!fits) return 'wrong';
  return drawn.length > 1 ? 'several' : 'fitted';
}

const namesOf = (ids: readonly string[]): string => ids.map((id) => adapters[id]?.name ?? id).join(', ');

/** Whether these adapters, pushed on one after the other, lead from a plug to a jack. */
function isWay(own: Station['connectors'], plug: string, drawn: readonly string[], jack: string): boolean {
  const all = { ...connectors, ...own };
  let end = plug;
  for (const id of drawn) {
    const { a, b } = adapters[id] ?? { a: '', b: '' };
    if (matesWith(all, end, a)) end = b;
    else if (matesWith(all, end, b)) end = a;
    else return false;
  }
  return matesWith(all, end, jack);
}
