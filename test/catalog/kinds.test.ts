import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { connectors } from '../../core/catalog/connectors.ts';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { createStation } from '../../core/station/create-station.ts';
import { findBrokenReferences } from '../../core/station/file/check/find-broken-references.ts';
import { wholeOf } from '../../core/station/file/pieces.ts';
import { type UnitKind, unitKindSchema } from '../../core/station/schema/unit-kind.ts';

const conditionsOf = (kind: UnitKind) =>
  kind.elements.flatMap((e) => [e.when ?? {}, ...(e.type === 'load' ? (e.states ?? []).map((s) => s.when) : [])]);
const feelsOf = (kind: UnitKind) => (kind.actors ?? []).flatMap((a) => a.feels);

describe.each(shelf)('unit kind $id', ({ id, kind }) => {
  it('is a unit kind with a source', () => {
    expect(unitKindSchema.parse(kind)).toEqual(kind);
    expect(kind.source).not.toBe('');
    expect(kind.summary).not.toBe('');
  });

  it('names connectors, contacts and ports that it has', () => {
    expect(findBrokenReferences(wholeOf({ ...createStation(), kinds: { [id]: kind }, connectors }))).toEqual([]);
  });

  it('names contacts that it has where an actor feels, a limit holds or the case is not joined', () => {
    const contacts = kind.ports.flatMap((p) => connectors[p.connector]!.contacts.map((c) => `${p.id}.${c.id}`));
    const joints = kind.elements.flatMap((e) => Object.values(e).filter((v) => typeof v === 'string' && v[0] === '@'));
    for (const feel of feelsOf(kind)) {
      if ('contact' in feel) expect([...contacts, ...joints]).toContain(feel.contact);
      if ('port' in feel) expect(kind.ports.map((p) => p.id)).toContain(feel.port);
    }
    for (const port of kind.ports) {
      for (const contact of Object.keys(port.limits ?? {})) expect(contacts).toContain(`${port.id}.${contact}`);
    }
    if (kind.isolated !== 'all') for (const ref of kind.isolated ?? []) expect(contacts).toContain(ref);
  });

  it('has a way from both sides of every power jack: what comes out of one comes back', () => {
    const named = JSON.stringify([kind.elements, kind.actors]);
    const alone = kind.ports
      .filter((port) => port.class === 'dc')
      .flatMap((port) => (connectors[port.connector]?.contacts ?? []).map((c) => ({ ...c, ref: `${port.id}.${c.id}` })))
      .filter(({ role, ref }) => (role === 'live' || role === 'return') && !named.includes(`"${ref}"`));
    expect(alone.map(({ ref }) => ref)).toEqual([]);
  });

  it('follows actors and settings that it has', () => {
    const actors = (kind.actors ?? []).map((a) => a.id);
    const options = Object.fromEntries((kind.settings ?? []).map((s) => [s.id, s.options.map((o) => o.id)]));
    for (const condition of conditionsOf(kind)) {
      for (const actor of [...(condition.on ?? []), ...(condition.off ?? [])]) expect(actors).toContain(actor);
      for (const [setting, value] of Object.entries(condition.settings ?? {})) {
        expect(options[setting]).toContain(value);
      }
    }
    for (const feel of feelsOf(kind)) if (feel.type === 'actor') expect(actors).toContain(feel.actor);
    for (const setting of kind.settings ?? []) expect(options[setting.id]).toContain(setting.initial);
  });

  it('uses every id once', () => {
    for (const list of [kind.ports, kind.elements, kind.actors ?? [], kind.settings ?? []]) {
      expect(new Set(list.map((item) => item.id)).size).toBe(list.length);
    }
  });

  it('needs a lead to the ports that feed it, and works inside its limits', () => {
    for (const element of kind.elements) {
      if (element.type !== 'load') continue;
      const port = kind.ports.find((p) => element.plus.startsWith(`${p.id}.`));
      expect(port?.needed).toBe('always');
      expect(element.minV).toBeLessThan(element.maxV);
      expect(element.maxV).toBeLessThanOrEqual(element.absMaxV);
    }
  });
});

describe('the shelf', () => {
  it('has one file for each kind, named like it, in the folder of its group', () => {
    const folder = path.join(import.meta.dirname, '../../core/catalog/kinds');
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((f) => f.includes(path.sep));
    const listed = shelf.map(({ id, kind }) => path.join(kind.group, `${id}.ts`));
    expect(files.toSorted()).toEqual(listed.toSorted());
  });

  it('uses every id and name once', () => {
    expect(new Set(shelf.map((item) => item.id)).size).toBe(shelf.length);
    expect(new Set(shelf.map((item) => item.kind.name)).size).toBe(shelf.length);
  });
});
