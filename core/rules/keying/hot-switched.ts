import type { Circuit, RfEdge } from '../../circuit/circuit.ts';
import type { ActorEvent, KeyDown, Reach } from '../../keydown/key-down.ts';
import { wattsFromDbm } from '../../quantity/decibel.ts';
import { unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { ownedBy } from '../../trial/owned-by.ts';
import { defineRule } from '../rule.ts';

/** Above a watt a small relay's contacts burn when they move; a tenth of one only wears them. */
const burnsDbm = 30;
const wearsDbm = 20;

export const hotSwitched = defineRule({
  id: 'keying/hot-switched',
  severity: 'danger',
  title: 'Contacts move while they carry RF',
  compares: 'the moment at which each antenna contact moves, its bounce included, with the RF on it',
  why: 'Each time the contacts burn a little; one day they weld together or stay open, and the transmitter sends into the wrong place.',
  advice:
    'Let the changeover move first: key the transmitter from the changeover’s delayed contact or from a sequencer.',
  source: 'common practice: small relays are not switched under more than a watt',
  follows: ['rf/changeover-reversed', 'rf/no-changeover'],
  messages: {
    before: '{actor} moves {time ms} after RF has started, with {watts W} on its contacts.',
    after: '{actor} moves {time ms} before RF has ended, with {watts W} on its contacts.',
    bounce: '{actor} still bounces when RF starts, with {watts W} on its contacts.',
  },
  looksAt: {
    press(keyDown, { station, trial: { circuit } }, report) {
      for (const event of keyDown.events) {
        const actor = circuit.actors[event.actor];
        const edges = edgesMovedBy(circuit, event.actor);
        if (!actor || edges.length === 0) continue;
        const hot = hottest(keyDown, event, edges, actor.bounceMs);
        if (!hot) continue;
        const span = rfSpan(keyDown, edges);
        const going = event.atMs < keyDown.releasedMs;
        const time = going ? event.atMs - span.fromMs : span.toMs - event.atMs;
        report({
          message: time < 0 ? 'bounce' : going ? 'before' : 'after',
          severity: hot > burnsDbm ? 'danger' : 'doubt',
          at: [{ unit: actor.unit }],
          values: {
            actor: `${unitName(station, actor.unit)} ${actor.label}`,
            time: Math.max(0, time),
            watts: wattsFromDbm(hot),
          },
          weight: hot,
          moment: going ? 'going over' : 'going back',
          touches: edges.flatMap((e) => [e.a, e.b].map((port) => `unit:${rfPortRef(circuit, port).unit}`)),
        });
      }
    },
  },
});

/** The highest level on the contacts from just before they move until they are still, or null where it does no harm. */
function hottest(keyDown: KeyDown, event: ActorEvent, edges: readonly RfEdge[], bounceMs: number): number | null {
  const { moments } = keyDown;
  let most = Number.NEGATIVE_INFINITY;
  moments.forEach((moment, i) => {
    const endMs = moments[i + 1]?.startMs ?? keyDown.endMs;
    if (moment.startMs > event.atMs + bounceMs || endMs < event.atMs) return;
    for (const edge of edges) most = Math.max(most, levelOn(moment.reach, edge));
  });
  return most > wearsDbm ? most : null;
}

const levelOn = (reach: Reach, edge: RfEdge): number =>
  Math.max(...[edge.a, edge.b].map((port) => reach.rf.levelAt(port)?.dbm ?? Number.NEGATIVE_INFINITY));

/** The RF paths that an actor moves: they are in its own unit. */
const edgesMovedBy = (circuit: Circuit, actor: number): RfEdge[] =>
  ownedBy(circuit, circuit.actors[actor]?.unit ?? '').rfEdges.filter((e) => e.gate.some((g) => g.actor === actor));

/** From the first to the last millisecond in which a transmitter makes RF that can come to these contacts. */
function rfSpan(keyDown: KeyDown, edges: readonly RfEdge[]): { fromMs: number; toMs: number } {
  const on = keyDown.moments.filter((m) => edges.some((edge) => m.reach.rf.fieldsAt(edge.a).length > 0));
  const last = on.at(-1);
  const after = last && keyDown.moments[keyDown.moments.indexOf(last) + 1];
  return { fromMs: on[0]?.startMs ?? 0, toMs: after?.startMs ?? keyDown.endMs };
}
