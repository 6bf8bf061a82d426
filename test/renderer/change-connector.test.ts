import { describe, expect, it } from 'vitest';
import { checkKind, connectors, shelf, type UnitKind } from '../../core/index.ts';
import { changeConnector } from '../../renderer/stages/kinds/fields/change-connector.ts';

const kindOf = (id: string): UnitKind => structuredClone(shelf.find((item) => item.id === id)!.kind);

describe('another connector at a port', () => {
  it('joins to the contact that does the same job what was joined to the old one', () => {
    const transmitter = changeConnector(kindOf('cw-transmitter-5w'), 'power', connectors, 'two-pole-30');
    expect(transmitter.ports[0]?.connector).toBe('two-pole-30');
    expect(transmitter.elements[0]).toMatchObject({ plus: 'power.plus', minus: 'power.minus' });
    expect(checkKind(transmitter, connectors)).toEqual([]);
  });

  it('follows in what actors feel, in limits and in contacts apart from the case', () => {
    const before = kindOf('cw-transmitter-5w');
    const limited = {
      ...before,
      ports: before.ports.map((p) => (p.id === 'key' ? { ...p, limits: { tip: { maxV: 16 } } } : p)),
      isolated: ['key.tip', 'key.sleeve'],
    };
    const changed = changeConnector(limited, 'key', connectors, 'phono-jack');
    expect(changed.actors?.[0]?.feels).toMatchObject({ contact: 'key.centre' });
    expect(changed.ports[1]?.limits).toEqual({ centre: { maxV: 16 } });
    expect(changed.isolated).toEqual(['key.centre', 'key.shell']);
    expect(checkKind(changed, connectors)).toEqual([]);
  });

  it('leaves a name that has no counterpart, which is a problem then', () => {
    const changed = changeConnector(kindOf('keyer'), 'paddle', connectors, 'mono-35-jack');
    expect(checkKind(changed, connectors).map((p) => p.place)).toContain('elements[1].contact');
  });

  it('and back again is what it was', () => {
    const there = changeConnector(kindOf('cw-transmitter-5w'), 'power', connectors, 'two-pole-30');
    expect(changeConnector(there, 'power', connectors, 'barrel-21-jack')).toEqual(kindOf('cw-transmitter-5w'));
  });
});
