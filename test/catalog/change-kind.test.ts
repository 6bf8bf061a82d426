import { expect, it } from 'vitest';
import { connectors } from '../../core/catalog/connectors.ts';
import { changeKind } from '../../core/catalog/laying/change-kind.ts';
import { layCable } from '../../core/catalog/laying/lay-cable.ts';
import { placeUnit } from '../../core/catalog/laying/place-unit.ts';
import { createStation } from '../../core/station/create-station.ts';
import { edit } from '../../core/station/edit.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import type { UnitKind } from '../../core/station/schema/unit-kind.ts';

/** A keyer with its paddle (K1, wired by hand) and its key line to a transmitter (K2). */
function desk(): Station {
  const placed = ['paddle', 'keyer', 'cw-transmitter-5w'].reduce(
    (s, kind) => edit(s, placeUnit(s, kind, { x: 0, y: 0 })),
    createStation(),
  );
  const paddle = layCable(placed, { unit: 'paddle', port: 'out' }, { unit: 'keyer', port: 'paddle' });
  const first = edit(placed, paddle);
  const wired = edit(first, {
    type: 'updateCable',
    id: first.cables[0]!.id,
    set: {
      wiring: [
        { a: 'tip', b: 'ring' },
        { a: 'ring', b: 'tip' },
      ],
    },
  });
  return edit(wired, layCable(wired, { unit: 'keyer', port: 'out' }, { unit: 'cw-transmitter-5w', port: 'key' }));
}

const keyer = (station: Station): UnitKind => structuredClone(station.kinds['keyer']!);
/** A kind with nothing inside that could name a port which is gone. */
const bare = (kind: UnitKind, ports: UnitKind['ports']): UnitKind => ({ ...kind, ports, elements: [], actors: [] });
const canBeOpened = (station: Station) => expect(readStation(writeStation(station))).toHaveProperty('station');

it('leaves the cables where only figures are other ones', () => {
  const station = desk();
  const kind = { ...keyer(station), summary: 'mine' };
  const { change, lost, rewired } = changeKind(station, 'keyer', { kind, connectors })!;
  expect([lost, rewired]).toEqual([[], []]);
  const done = edit(station, change);
  expect(done.kinds['keyer']).toEqual(kind);
  expect(done.cables).toEqual(station.cables);
});

it('names the cables that go with a port', () => {
  const station = desk();
  const whole = keyer(station);
  const kind = bare(
    whole,
    whole.ports.filter((p) => p.id !== 'out'),
  );
  const { change, lost } = changeKind(station, 'keyer', { kind, connectors })!;
  expect(lost.map((c) => c.number)).toEqual(['K2']);
  expect(edit(station, change).cables.map((c) => c.number)).toEqual(['K1']);
  canBeOpened(edit(station, change));
});

it('forgets a wiring that the plugs of another connector don’t have', () => {
  const station = desk();
  const whole = keyer(station);
  const ports = whole.ports.map((p) => (p.id === 'paddle' ? { ...p, connector: 'mono-35-jack' } : p));
  // The kind's own cable kind would keep its plugs; a plain one takes those of the ports.
  const { plugs: _, ...plain } = station.cableKinds[station.cables[0]!.kind]!;
  const loose = { ...station, cableKinds: { ...station.cableKinds, [station.cables[0]!.kind]: plain } };
  const { change, rewired } = changeKind(loose, 'keyer', { kind: bare(whole, ports), connectors })!;
  expect(rewired.map((c) => c.number)).toEqual(['K1']);
  const done = edit(loose, change);
  expect(done.cables[0]?.wiring).toBeUndefined();
  expect(done.connectors).toHaveProperty('mono-35-plug');
  canBeOpened(done);
});

it('turns a unit into one of a new kind, with the cables that fit', () => {
  const station = desk();
  const kind = { ...keyer(station), name: 'Keyer of mine' };
  const becomes = { type: 'updateUnit' as const, id: 'keyer', set: { kind: 'own-keyer' } };
  const done = edit(station, changeKind(station, 'own-keyer', { kind, connectors }, [becomes])!.change);
  expect(done.units.map((u) => u.kind)).toEqual(['paddle', 'own-keyer', 'cw-transmitter-5w']);
  expect(done.cables).toEqual(station.cables);
  canBeOpened(done);
});

it('is refused where an antenna’s coupling would hang in the air', () => {
  const placed = ['dipole', 'vhf-vertical'].reduce(
    (s, kind) => edit(s, placeUnit(s, kind, { x: 0, y: 0 })),
    createStation(),
  );
  const [a, b] = placed.units.map((u) => ({ unit: u.id, port: placed.kinds[u.kind]!.ports[0]!.id }));
  const station = { ...placed, couplings: [{ a: a!, b: b!, lossDb: 20 }] };
  canBeOpened(station);
  const whole = station.kinds['dipole']!;
  const kind = { ...whole, ports: whole.ports.map((p) => ({ ...p, class: 'dc' as const })) };
  expect(changeKind(station, 'dipole', { kind, connectors })).toBeNull();
});
