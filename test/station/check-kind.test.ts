import { describe, expect, it } from 'vitest';
import { connectors } from '../../core/catalog/connectors.ts';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { checkKind } from '../../core/station/file/check/check-kind.ts';
import type { UnitKind } from '../../core/station/schema/unit-kind.ts';

const shelfKind = (id: string): UnitKind => structuredClone(shelf.find((item) => item.id === id)!.kind);

/** A shelf kind with something made wrong in it. */
function broken(id: string, change: (kind: ReturnType<typeof loose>) => void): unknown {
  const kind = loose(id);
  change(kind);
  return kind;
}

// biome-ignore lint/suspicious/noExplicitAny: what is made here is wrong on purpose
const loose = (id: string): Record<string, any> => shelfKind(id);

it.each(shelf)('$id can be used as it is', ({ kind }) => {
  expect(checkKind(kind, connectors)).toEqual([]);
});

const cases: [name: string, kind: unknown, place: string, words: RegExp][] = [
  ['nothing', null, 'file', /object/],
  ['no name', broken('keyer', (k) => Object.assign(k, { name: ' ' })), 'name', /needs a name/],
  ['no source', broken('keyer', (k) => Object.assign(k, { source: '' })), 'source', /where its figures are from/],
  ['no ports', broken('earth-bar', (k) => Object.assign(k, { ports: [] })), 'ports', /needs a port/],
  [
    'neither a name nor ports, both told: the name',
    broken('earth-bar', (k) => Object.assign(k, { name: '', ports: [] })),
    'name',
    /needs a name/,
  ],
  [
    'a field that nobody knows',
    broken('keyer', (k) => Object.assign(k, { colour: 'red' })),
    'colour',
    /“colour” is not known/,
  ],
  [
    'an element of no known type',
    broken('keyer', (k) => Object.assign(k.elements[0], { type: 'magic' })),
    'elements[0].type',
    /.+/,
  ],
  [
    'a contact that is not written as one',
    broken('straight-key', (k) => Object.assign(k.elements[0], { from: '' })),
    'elements[0].from',
    /port\.contact/,
  ],
  [
    'a port without a connector',
    broken('straight-key', (k) => Object.assign(k.ports[0], { connector: 'string-and-tin' })),
    'ports[0].connector',
    /no connector “string-and-tin”/,
  ],
  [
    'a contact that its port has not',
    broken('straight-key', (k) => Object.assign(k.elements[0], { from: 'out.ring' })),
    'elements[0].from',
    /no contact “out\.ring”/,
  ],
  [
    'a port that is not there',
    broken('automatic-tuner', (k) => Object.assign(k.elements[1], { a: 'nowhere' })),
    'elements[1].a',
    /no port “nowhere”/,
  ],
  [
    'two ports with one id',
    broken('automatic-tuner', (k) => k.ports.push(k.ports[1])),
    'ports[3].id',
    /“transmitter” is already taken by ports\[1\]/,
  ],
  [
    'two elements with one id',
    broken('automatic-tuner', (k) => Object.assign(k.elements[1], { id: 'draw' })),
    'elements[1].id',
    /already taken by elements\[0\]/,
  ],
  [
    'two actors with one id',
    broken('straight-key', (k) => k.actors.push(k.actors[0])),
    'actors[1].id',
    /already taken by actors\[0\]/,
  ],
  [
    'an element switched by nobody',
    broken('straight-key', (k) => Object.assign(k.elements[0], { when: { on: ['paw'] } })),
    'elements[0].when.on[0]',
    /called “paw”/,
  ],
  [
    'a load’s state by nobody',
    broken('cw-transmitter-5w', (k) => Object.assign(k.elements[0].states[0], { when: { off: ['paw'] } })),
    'elements[0].states[0].when.off[0]',
    /called “paw”/,
  ],
  [
    'an actor that feels a contact that is not there',
    broken('cw-transmitter-5w', (k) => Object.assign(k.actors[0].feels, { contact: 'key.ring' })),
    'actors[0].feels.contact',
    /no contact “key\.ring”/,
  ],
  [
    'an actor that feels several things, one of them not there',
    broken('cw-transmitter-5w', (k) =>
      Object.assign(k.actors[0], { feels: [k.actors[0].feels, { type: 'currentAbove', element: 'nope', amps: 1 }] }),
    ),
    'actors[0].feels[1].element',
    /nothing “nope” inside/,
  ],
  [
    'an actor that feels RF at no port',
    broken('straight-key', (k) => Object.assign(k.actors[0], { feels: { type: 'rfAbove', port: 'nope', dbm: 10 } })),
    'actors[0].feels.port',
    /no port “nope”/,
  ],
  [
    'an actor that follows itself',
    broken('straight-key', (k) => Object.assign(k.actors[0], { feels: { type: 'actor', actor: 'lever' } })),
    'actors[0].feels.actor',
    /can’t follow itself/,
  ],
  [
    'an actor that follows nobody',
    broken('straight-key', (k) => Object.assign(k.actors[0], { feels: { type: 'actor', actor: 'nope' } })),
    'actors[0].feels.actor',
    /called “nope”/,
  ],
  [
    'a setting that starts where it has no position',
    broken('coax-switch', (k) => Object.assign(k.settings[0], { initial: 'sideways' })),
    'settings[0].initial',
    /no position “sideways”/,
  ],
  [
    'a condition on a setting that is not there',
    broken('straight-key', (k) => Object.assign(k.elements[0], { when: { settings: { gear: 'two' } } })),
    'elements[0].when.settings.gear',
    /no setting “gear”/,
  ],
  [
    'a limit of a contact that is not there',
    broken('straight-key', (k) => Object.assign(k.ports[0], { limits: { ring: { maxV: 5 } } })),
    'ports[0].limits.ring',
    /no contact “ring”/,
  ],
  [
    'a contact apart from the case that is not there',
    broken('straight-key', (k) => Object.assign(k, { isolated: ['out.ring'] })),
    'isolated[0]',
    /no contact “out\.ring”/,
  ],
  [
    'a load that works up to less than it works from',
    broken('automatic-tuner', (k) => Object.assign(k.elements[0], { minV: 15.5 })),
    'elements[0].maxV',
    /at least 15\.5/,
  ],
  [
    'a contact pair with one contact',
    broken('straight-key', (k) => Object.assign(k.elements[0], { to: 'out.tip' })),
    'elements[0].to',
    /begins and ends at “out\.tip”/,
  ],
];

describe('a kind that can’t be used', () => {
  it.each(cases)('%s', (_name, kind, place, words) => {
    const problems = checkKind(kind, connectors);
    expect(problems.map((p) => p.place)).toContain(place);
    expect(problems.find((p) => p.place === place)?.message).toMatch(words);
    for (const { message } of problems) expect(message).toMatch(/^[A-Z“].*\.$/);
  });
});
