import { describe, expect, it } from 'vitest';
import { connectors } from '../../core/catalog/connectors.ts';
import { connectorSchema } from '../../core/station/schema/connector.ts';

const all = Object.entries(connectors);
const contactsOf = (id: string) => connectors[id]!.contacts.map((c) => c.id);

describe.each(all)('connector %s', (id, connector) => {
  it('is a connector with a source', () => {
    expect(connectorSchema.parse(connector)).toEqual(connector);
    expect(connector.source).not.toBe('');
    expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });

  it('mates with known halves that mate with it', () => {
    expect(connector.mates.length).toBeGreaterThan(0);
    for (const mate of connector.mates) expect(connectors[mate]?.mates, mate).toContain(id);
  });

  it('gives a jack its plug first, and a plug its jack', () => {
    if (connector.gender === 'either') expect(connector.mates[0]).toBe(id);
    else expect(connectors[connector.mates[0]!]!.gender === 'jack').toBe(connector.gender !== 'jack');
  });

  it('has misfits with known halves and contacts that do not mate with it', () => {
    for (const misfit of connector.misfits ?? []) {
      expect(connector.mates).not.toContain(misfit.with);
      for (const [own, other] of misfit.joins) {
        expect(contactsOf(id)).toContain(own);
        expect(contactsOf(misfit.with)).toContain(other);
      }
    }
  });

  it('has one live contact at least, or is an earth', () => {
    expect(connector.contacts.some((c) => c.role === 'live') || connector.family === 'earth').toBe(true);
    expect(new Set(contactsOf(id)).size).toBe(connector.contacts.length);
  });
});

it('every name is used once', () => {
  expect(new Set(all.map(([, c]) => c.name)).size).toBe(all.length);
});
