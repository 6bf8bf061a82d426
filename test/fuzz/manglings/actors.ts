import { entriesOf, type JsonObject, listIn, listOf } from '../json.ts';
import type { Random } from '../random.ts';
import type { Mangling } from './mangling.ts';
import { contactsOf, textOf } from './parts.ts';

/** A kind that has something that switches. */
const switching = (document: JsonObject, random: Random): JsonObject | undefined =>
  random.pick(entriesOf(document, 'kinds').filter(([, kind]) => listOf(kind, 'actors').length > 0))?.[1];

/** Anything that an actor could feel in its kind, or could not. */
function anyFeel(document: JsonObject, kind: JsonObject, random: Random): JsonObject {
  const contact = () => random.pick(contactsOf(document, kind)) ?? 'chassis';
  const idOf = (list: string) => textOf(random.pick(listOf(kind, list)), 'id') || 'nothing';
  return random.one<() => JsonObject>([
    () => ({ type: 'operator', label: '' }),
    () => ({ type: 'voltageBelow', contact: contact(), volts: random.one([-100_000, 0, 5, 100_000]) }),
    () => ({ type: 'voltageAbove', contact: contact(), reference: contact(), volts: random.one([-1, 0, 1e-9, 13]) }),
    () => ({ type: 'currentAbove', element: idOf('elements'), amps: random.one([0, 1e-9, 1, 100_000]) }),
    () => ({ type: 'rfAbove', port: idOf('ports'), dbm: random.one([-250, 0, 120]) }),
    () => ({ type: 'actor', actor: idOf('actors') }),
    () => ({ type: 'rfAbove', port: 'nowhere', dbm: 0 }),
  ])();
}

const inActor =
  (change: (actor: JsonObject, kind: JsonObject, document: JsonObject, random: Random) => void) =>
  (document: JsonObject, random: Random) => {
    const kind = switching(document, random);
    const actor = random.pick(listOf(kind, 'actors'));
    if (kind && actor) change(actor, kind, document, random);
  };

/** What switches, by what it feels, and how fast. */
export const actors: readonly Mangling[] = [
  {
    name: 'one actor twice',
    inDocument: inActor((actor, kind) => {
      listIn(kind, 'actors').push(structuredClone(actor));
    }),
  },
  {
    name: 'an actor that feels something else',
    inDocument: inActor((actor, kind, document, random) => {
      const feel = () => anyFeel(document, kind, random);
      actor.feels = random.chance(0.7) ? feel() : Array.from({ length: random.below(4) }, feel);
    }),
  },
  {
    name: 'actors that follow each other',
    inDocument: (document, random) => {
      const list = listOf(switching(document, random), 'actors');
      list.forEach((actor, i) => {
        actor.feels = { type: 'actor', actor: textOf(list[(i + 1) % list.length], 'id') };
      });
    },
  },
  {
    name: 'an actor that switches itself off',
    inDocument: inActor((actor, kind, document, random) => {
      const contact = random.pick(contactsOf(document, kind)) ?? 'chassis';
      actor.feels = { type: random.one(['voltageAbove', 'voltageBelow']), contact, volts: random.one([0, 1, 6]) };
      for (const element of listOf(kind, 'elements'))
        if (random.chance(0.5)) element.when = { [random.one(['on', 'off'])]: [textOf(actor, 'id')] };
    }),
  },
  {
    name: 'an actor in no time, or for ever',
    inDocument: inActor((actor, _, __, random) => {
      const ms = () => random.one([0, 1e-9, 0.5, 600_000]);
      Object.assign(actor, { operateMs: ms(), releaseMs: ms(), bounceMs: ms() });
      if (random.chance(0.5)) actor.hang = { ms: ms(), dits: random.one([0, 100]), wordSpaces: random.one([0, 10]) };
    }),
  },
  {
    name: 'an actor with another part',
    inDocument: inActor((actor, _, __, random) => {
      actor.does = random.one(['mutes', 'sends', 'changesOver', 'keys']);
      actor.unpowered = random.chance(0.5);
    }),
  },
  {
    name: 'elements in force by other actors',
    inDocument: (document, random) => {
      const kind = switching(document, random);
      const names = [...listOf(kind, 'actors').map((a) => textOf(a, 'id')), ...(random.chance(0.2) ? ['nobody'] : [])];
      for (const element of listOf(kind, 'elements'))
        if (random.chance(0.4))
          element.when = { on: names.filter(() => random.chance(0.5)), off: names.filter(() => random.chance(0.3)) };
    },
  },
  {
    name: 'an element at other contacts',
    inDocument: (document, random) => {
      const [, kind] = random.pick(entriesOf(document, 'kinds')) ?? [];
      if (!kind) return;
      const contacts = contactsOf(document, kind);
      for (const element of listOf(kind, 'elements'))
        for (const field of ['from', 'to', 'plus', 'minus', 'contact', 'anode', 'outPlus'])
          if (typeof element[field] === 'string' && random.chance(0.25)) element[field] = random.pick(contacts) ?? '@x';
    },
  },
];
