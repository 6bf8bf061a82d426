import { boundsOf, fieldsOf } from '../fields.ts';
import { entriesOf, isObject, type JsonObject, listIn, listOf, objectIn, put } from '../json.ts';
import type { Random } from '../random.ts';
import { extreme } from './figures.ts';
import type { Mangling } from './mangling.ts';
import { kindOf, textOf } from './parts.ts';

/** `element.field`, and `element.states.0.amount`, of every figure of a kind. */
function figurePaths(kind: JsonObject): string[] {
  const within = (value: unknown, path: string): string[] => {
    if (typeof value === 'number') return [path];
    if (typeof value !== 'object' || value === null) return [];
    return Object.entries(value).flatMap(([key, inner]) => within(inner, `${path}.${key}`));
  };
  return listOf(kind, 'elements').flatMap((element) => within(element, textOf(element, 'id')));
}

const strangePaths = [
  '',
  '.',
  'x',
  'x.y',
  'constructor.name',
  '__proto__.x',
  'out.volts.more',
  'toString.length',
] as const;
const strangeFigures = [-1, -30, 0, 1e-12, 1, 1000, 1e12, -1e12] as const;

/** A setting of a kind and one of its positions, or one that it does not have. */
function anySetting(kind: JsonObject, random: Random): [string, string] {
  const setting = random.pick(listOf(kind, 'settings'));
  const position = random.pick(listOf(setting, 'options'));
  const strange = ['', 'constructor', '__proto__', 'nowhere'] as const;
  const id = setting && random.chance(0.8) ? textOf(setting, 'id') : random.one(strange);
  return [id, position && random.chance(0.8) ? textOf(position, 'id') : random.one(strange)];
}

function extremesIn(holder: JsonObject, document: JsonObject, random: Random, share: number) {
  for (const field of fieldsOf(document))
    if (field.holder === holder && boundsOf(field) && random.chance(share)) put(field, extreme(field, random));
}

/** The plan, the settings, the user's own figures, and what was accepted or read. */
export const plan: readonly Mangling[] = [
  {
    name: 'an extreme plan',
    inDocument: (document, random) => extremesIn(objectIn(document, 'plan'), document, random, 0.5),
  },
  {
    name: 'extreme settings',
    inDocument: (document, random) => {
      const settings = objectIn(document, 'settings');
      extremesIn(settings, document, random, 0.5);
      if (random.chance(0.5)) settings.units = random.one(['metric', 'feet']);
    },
  },
  {
    name: 'figures of the user’s own',
    inDocument: (document, random) => {
      for (let n = random.below(5); n >= 0; n--) {
        const unit = random.pick(listOf(document, 'units'));
        const path = unit && random.pick(figurePaths(kindOf(document, unit) ?? {}));
        if (unit && path) put({ holder: objectIn(unit, 'overrides'), key: path }, random.one(strangeFigures));
      }
    },
  },
  {
    name: 'figures of nothing',
    inDocument: (document, random) => {
      const unit = random.pick(listOf(document, 'units'));
      if (unit) put({ holder: objectIn(unit, 'overrides'), key: random.one(strangePaths) }, random.one(strangeFigures));
    },
  },
  {
    name: 'settings of units',
    inDocument: (document, random) => {
      for (const unit of listOf(document, 'units')) {
        if (!random.chance(0.3)) continue;
        const [key, position] = anySetting(kindOf(document, unit) ?? {}, random);
        const hookup = random.pick(listOf(document, 'hookups'));
        const holder =
          hookup && random.chance(0.5)
            ? objectIn(objectIn(hookup, 'settings'), textOf(unit, 'id'))
            : objectIn(unit, 'settings');
        put({ holder, key }, position);
      }
    },
  },
  {
    name: 'positions of settings that are there',
    inDocument: (document, random) => {
      for (const unit of listOf(document, 'units'))
        for (const setting of listOf(kindOf(document, unit), 'settings')) {
          const position = textOf(random.pick(listOf(setting, 'options')), 'id');
          if (random.chance(0.5)) put({ holder: objectIn(unit, 'settings'), key: textOf(setting, 'id') }, position);
        }
    },
  },
  {
    name: 'hook-ups of another sort',
    inDocument: (document, random) => {
      const ids = Array.from({ length: random.below(6) }, (_, n) => `hookup-${n}`);
      document.hookups = ids.map((id) => ({ id, name: random.one(['', 'Same', id]) }));
      for (const cable of listOf(document, 'cables')) cable.hookups = ids.filter(() => random.chance(0.6));
    },
  },
  {
    name: 'accepted and read, but not there',
    inDocument: (document, random) => {
      const finding = random.one(['', 'constructor', 'power/no-fuse', 'power/no-fuse cable:nowhere']);
      listIn(document, 'accepted').push({ finding, reason: random.one(['', 'so be it']), figures: '' });
      const value = random.one([0, -1, 1e300, 13.8]);
      const step = random.one(['', 'supply/supply.output/volts', 'nowhere']);
      listIn(document, 'readings').push({
        step,
        value,
        unit: random.one(['', 'V', 'ell']),
        when: random.one(['', '2026-02-31', 'now']),
      });
    },
  },
  {
    name: 'ports on other sides, units far away',
    inDocument: (document, random) => {
      for (const unit of listOf(document, 'units')) {
        if (!random.chance(0.3)) continue;
        const far = () => random.one([-1_000_000, 0, 0.001, 1_000_000]);
        unit.position = { x: far(), y: far() };
        const ports = listOf(kindOf(document, unit), 'ports').map((p) => textOf(p, 'id'));
        unit.sides = Object.fromEntries(ports.map((p) => [p, random.one(['left', 'right', 'top', 'bottom'])]));
      }
    },
  },
  {
    name: 'other conductors, wires and lines',
    inDocument: (document, random) => {
      const [, kind] = random.pick(entriesOf(document, 'cableKinds')) ?? [];
      if (!kind) return;
      for (const holder of [kind, ...[kind.core, kind.screen, kind.coax].filter(isObject)])
        extremesIn(holder, document, random, 0.4);
      const points = () =>
        Array.from({ length: 1 + random.below(3) }, () => [
          random.one([1e-9, 1, 100_000]),
          random.one([1e-9, 1, 10_000]),
        ]);
      if (isObject(kind.coax) && random.chance(0.5)) kind.coax.points = points();
    },
  },
];
