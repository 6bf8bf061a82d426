import { entriesOf, isObject, type Json, type JsonObject, listIn, listOf } from '../json.ts';
import type { Random } from '../random.ts';
import type { Mangling } from './mangling.ts';
import { portsOf, textOf } from './parts.ts';

/** A cable between any two ports, of any kind that the document has, plain or with all that a cable can have. */
function addCable(document: JsonObject, random: Random, n: number) {
  const ports = portsOf(document);
  const [a, b] = [random.pick(ports), random.pick(ports)];
  const kinds = entriesOf(document, 'cableKinds').map(([name]) => name);
  const cable: JsonObject = {
    id: `more-${n}`,
    number: `X${n}`,
    kind: random.pick(kinds) ?? '',
    lengthM: random.one([0, 0.6, 6, 10_000]),
  };
  if (!a || !b) return;
  Object.assign(cable, { a, b });
  if (random.chance(0.3)) Object.assign(cable, extras(document, random));
  listIn(document, 'cables').push(cable);
}

function extras(document: JsonObject, random: Random): JsonObject {
  const connectors = entriesOf(document, 'connectors');
  const name = () => random.pick(connectors)?.[0] ?? '';
  const contacts = connectors.flatMap(([, connector]) => listOf(connector, 'contacts').map((c) => textOf(c, 'id')));
  const row = () => ({ a: random.pick(contacts) ?? '', b: random.pick(contacts) ?? '' });
  const all: Record<string, Json> = {
    plugs: random.chance(0.5) ? { a: name(), b: name() } : { a: name() },
    adapters: { a: [name()], b: [name(), name()] },
    wiring: Array.from({ length: random.below(6) }, row),
    fuse: { amps: random.one([0, 0.001, 5, 100_000]), family: 'blade', atM: random.one([0, 1, 10_000]) },
    screenAt: 'b',
    hookups: listOf(document, 'hookups')
      .map((h) => textOf(h, 'id'))
      .slice(0, random.below(3)),
    sheathed: true,
  };
  return Object.fromEntries(Object.entries(all).filter(() => random.chance(0.4)));
}

const cables = (most: number) => (document: JsonObject, random: Random) => {
  for (let n = 1 + random.below(most); n > 0; n--) addCable(document, random, n);
};

/** More, fewer and other units and cables than anybody would draw. */
export const drawing: readonly Mangling[] = [
  { name: 'one more cable', inDocument: cables(1) },
  { name: 'many more cables', inDocument: cables(25) },
  {
    name: 'cables at other ports',
    inDocument: (document, random) => {
      const ports = portsOf(document);
      for (const cable of listOf(document, 'cables')) {
        const port = random.pick(ports);
        if (port && random.chance(0.15)) cable[random.one(['a', 'b'])] = { ...port };
      }
    },
  },
  {
    name: 'a cable of another kind',
    inDocument: (document, random) => {
      const kind = random.pick(entriesOf(document, 'cableKinds'))?.[0];
      const cable = random.pick(listOf(document, 'cables'));
      if (cable && kind !== undefined) cable.kind = kind;
    },
  },
  {
    name: 'a unit of another kind',
    inDocument: (document, random) => {
      const kind = random.pick(entriesOf(document, 'kinds'))?.[0];
      const unit = random.pick(listOf(document, 'units'));
      if (unit && kind !== undefined) unit.kind = kind;
    },
  },
  {
    name: 'every unit once more',
    inDocument: (document) => {
      const again = (list: string): JsonObject[] =>
        listOf(document, list).map((item) => ({ ...structuredClone(item), id: `${textOf(item, 'id')}-2` }));
      const cables = again('cables').map((cable) => ({ ...cable, a: twin(cable.a), b: twin(cable.b) }));
      listIn(document, 'units').push(...again('units'));
      listIn(document, 'cables').push(...cables);
    },
  },
  {
    name: 'fewer units and cables',
    inDocument: (document, random) => {
      const share = random.one([0.05, 0.3, 0.9]);
      const gone = new Set(
        listOf(document, 'units')
          .filter(() => random.chance(share))
          .map((u) => textOf(u, 'id')),
      );
      const stays = (end: Json | undefined) => !isObject(end) || !gone.has(textOf(end, 'unit'));
      document.units = listOf(document, 'units').filter((u) => !gone.has(textOf(u, 'id')));
      document.cables = listOf(document, 'cables').filter((c) => stays(c.a) && stays(c.b) && random.chance(0.95));
      for (const hookup of listOf(document, 'hookups')) delete hookup.settings;
      if (Array.isArray(document.couplings)) delete document.couplings;
    },
  },
  {
    name: 'antennas that hear each other',
    inDocument: (document, random) => {
      const ports = portsOf(document);
      for (let n = random.below(8); n >= 0; n--) {
        const [a, b] = [random.pick(ports), random.pick(ports)];
        if (a && b) listIn(document, 'couplings').push({ a, b, lossDb: random.one([0, 20, 200]) });
      }
    },
  },
];

const twin = (end: Json | undefined): Json =>
  isObject(end) ? { unit: `${textOf(end, 'unit')}-2`, port: textOf(end, 'port') } : {};
