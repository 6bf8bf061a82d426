import { dataLevels } from '../../catalog/data-levels.ts';
import type { Circuit, CircuitActor, SignalEnd } from '../../circuit/circuit.ts';
import { metalGroups } from '../../circuit/metal-groups.ts';
import { unitName } from '../../station/parts.ts';
import { signalName, signalPort } from '../../trial/audio-levels.ts';
import { defineRule } from '../rule.ts';

type DataEnd = SignalEnd<'dataEnd'>;
type Message = 'fight' | 'pushed' | 'different' | 'overdriven' | 'unread' | 'unreferenced';

export const logicLevels = defineRule({
  id: 'keying/logic-levels',
  severity: 'danger',
  title: 'The two ends of a data line do not suit each other',
  compares: 'who drives a data wire, at what levels, against what the ends on it read and stand',
  why: 'RS-232 swings far below zero and far above 5 V, which kills a logic input; a logic output in turn is never read by an RS-232 input.',
  advice:
    'Put a level converter between the two, use the lead made for this interface, or cross over the two data wires.',
  source: 'EIA RS-232; logic levels from memory',
  follows: ['drawing/fits-but-should-not', 'drawing/does-not-mate'],
  messages: {
    double: '{two} is keyed by a wire that {one} uses for data: it sends whenever a program opens the port.',
    fight: '{one} and {two} both drive the same wire.',
    pushed: '{one} drives the bus at {two} both ways; only what pulls down may share it.',
    different: '{one} and {two} are on one wire and do not speak the same language.',
    overdriven: '{one} drives {two} to {volts V}; it stands {limit V}.',
    unread: '{two} never sees the {limit V} that it needs: {one} drives from {low V} to {high V}.',
    unreferenced: '{one} and {two} have no common ground: the data line has nothing to count from.',
  },
  looksAt: {
    // Any two data ends of a hook-up may be on one wire.
    hookup(_, { station, trial: { circuit } }, report) {
      if (circuit.signals.data.length === 0) return;
      for (const { data, actor } of keyedByData(circuit)) {
        report({
          message: 'double',
          severity: 'doubt',
          at: [{ unit: actor.unit }, signalPort(data)],
          values: { one: signalName(station, data), two: unitName(station, actor.unit) },
        });
      }
      for (const [one, two] of pairsOf(circuit)) {
        const found = judge(circuit, one, two);
        if (!found) continue;
        const harms = found.message === 'overdriven' || found.message === 'fight';
        report({
          message: found.message,
          severity: harms ? 'danger' : 'fault',
          at: [signalPort(two), signalPort(one)],
          values: { one: signalName(station, one), two: signalName(station, two), ...found.values },
        });
      }
    },
  },
});

/** Transmitters whose key line hangs on a wire on which a data end puts out levels. */
function keyedByData(circuit: Circuit): { data: DataEnd; actor: CircuitActor }[] {
  const groupOf = metalGroups(circuit);
  const keyed = circuit.actors.filter((a) => a.does === 'sends' || a.does === 'keys');
  return circuit.signals.data.flatMap((data) => {
    if (data.spec.role !== 'drives') return [];
    const group = groupOf(data.node);
    const feels = (actor: CircuitActor) =>
      actor.feels.some((f) => (f.type === 'voltageBelow' || f.type === 'voltageAbove') && groupOf(f.node) === group);
    return keyed.filter((actor) => actor.unit !== data.unit && feels(actor)).map((actor) => ({ data, actor }));
  });
}

/** Each two ends of different units on one wire; of two of which one drives, that one first. */
function pairsOf(circuit: Circuit): [DataEnd, DataEnd][] {
  const groupOf = metalGroups(circuit);
  const groups = new Map<number, DataEnd[]>();
  for (const end of circuit.signals.data) {
    const group = groupOf(end.node);
    groups.set(group, [...(groups.get(group) ?? []), end]);
  }
  return [...groups.values()].flatMap((ends) => {
    const sorted = [...ends].sort(
      (a, b) => ranks[a.spec.role] - ranks[b.spec.role] || nameOf(a).localeCompare(nameOf(b)),
    );
    return sorted.flatMap((one, i) =>
      sorted.slice(i + 1).flatMap((two): [DataEnd, DataEnd][] => (one.unit === two.unit ? [] : [[one, two]])),
    );
  });
}

const ranks = { drives: 0, bus: 1, listens: 2 } as const;
const nameOf = ({ unit, spec }: DataEnd): string => `${unit} ${spec.contact}`;

function judge(
  circuit: Circuit,
  one: DataEnd,
  two: DataEnd,
): { message: Message; values?: Record<string, number> } | null {
  const [from, to] = [dataLevels[one.spec.standard], dataLevels[two.spec.standard]];
  if (!from || !to) return one.spec.standard === two.spec.standard ? null : { message: 'different' };
  if (one.spec.role === 'listens') return null;
  const both = two.spec.role !== 'listens';
  if (both && one.spec.role === 'drives' && two.spec.role === 'drives' && !(from.shares && to.shares))
    return { message: 'fight' };
  const [low, high] = from.drives;
  const most = Math.max(to.stands[1], two.spec.standsV ?? 0);
  const [under, over] = [low < to.stands[0], high > most];
  if (under || over)
    return { message: 'overdriven', values: { volts: over ? high : low, limit: over ? most : to.stands[0] } };
  if (both && to.shares && !from.shares) return { message: 'pushed' };
  if (low > to.reads[0] || high < to.reads[1]) {
    const limit = low > to.reads[0] ? to.reads[0] : to.reads[1];
    return { message: 'unread', values: { low, high, limit } };
  }
  const groupOf = metalGroups(circuit);
  return groupOf(one.reference) === groupOf(two.reference) ? null : { message: 'unreferenced' };
}
