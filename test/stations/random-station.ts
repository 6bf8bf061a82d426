import fc from 'fast-check';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { layCable } from '../../core/catalog/laying/lay-cable.ts';
import { placeUnit } from '../../core/catalog/laying/place-unit.ts';
import { createStation } from '../../core/station/create-station.ts';
import { edit } from '../../core/station/edit.ts';
import { classOf, kindOf } from '../../core/station/parts.ts';
import type { Cable, PortRef, Station } from '../../core/station/schema/schema.ts';
import { generateStation } from './generate.ts';

interface RandomCable {
  a: number;
  b: number;
  lengthM: number;
  crossed: boolean;
  anywhere: boolean;
}

const randomCable: fc.Arbitrary<RandomCable> = fc.record({
  a: fc.nat(),
  b: fc.nat(),
  lengthM: fc.double({ min: 0.05, max: 10, noNaN: true }),
  crossed: fc.boolean(),
  anywhere: fc.integer({ min: 0, max: 4 }).map((n) => n === 0),
});

/**
 * A converter fed by its own output, or reversed on a supply that limits, has several states that balance, or none:
 * which one is found depends on where the search begins.
 */
const pool = shelf.filter(({ kind }) => kind.elements.every((e) => e.type !== 'converter')).map(({ id }) => id);

/** Stations that nobody would draw on purpose: units of the shelf at random, cables between any of their ports. */
const nonsense: fc.Arbitrary<Station> = fc
  .record({
    kinds: fc.array(fc.constantFrom(...pool), { minLength: 1, maxLength: 9 }),
    cables: fc.array(randomCable, { maxLength: 18 }),
  })
  .map(({ kinds, cables }) => {
    const units = ['bench-supply', ...kinds].reduce(
      (station, kind) => edit(station, placeUnit(station, kind, { x: 0, y: 0 })),
      createStation('Nonsense'),
    );
    return cables.reduce(addCable, units);
  });

/** Working stations with some cables taken out, stretched, crossed, or plugged in somewhere else. */
const spoilt: fc.Arbitrary<Station> = fc
  .record({
    size: fc.integer({ min: 12, max: 30 }),
    seed: fc.nat({ max: 1000 }),
    removed: fc.array(fc.nat(), { maxLength: 3 }),
    stretched: fc.array(fc.nat(), { maxLength: 4 }),
    added: fc.array(randomCable, { maxLength: 3 }),
  })
  .map(({ size, seed, removed, stretched, added }) => {
    const whole = generateStation(size, seed);
    const idAt = (n: number) => whole.cables[n % whole.cables.length]?.id ?? '';
    const fewer = edit(whole, { type: 'removeCables', ids: removed.map(idAt) });
    const longer = stretched
      .map(idAt)
      .filter((id) => fewer.cables.some((c) => c.id === id))
      .reduce((station, id) => edit(station, { type: 'updateCable', id, set: { lengthM: 25 } }), fewer);
    return added.reduce(addCable, longer);
  });

/** Any station that a file can hold, sensible or not. */
export const anyStation: fc.Arbitrary<Station> = fc.oneof(nonsense, spoilt);

function addCable(station: Station, { a, b, lengthM, crossed, anywhere }: RandomCable): Station {
  const ports = station.units.flatMap((unit) => kindOf(station, unit).ports.map((port) => ({ unit, port })));
  const from = ports[a % ports.length];
  const others = ports.filter(
    (p) => p.port !== from?.port && p.unit !== from?.unit && (anywhere || p.port.class === from?.port.class),
  );
  const to = others[b % Math.max(1, others.length)];
  if (!from || !to) return station;
  const ref = ({ unit, port }: typeof from): PortRef => ({ unit: unit.id, port: port.id });
  const laid = edit(station, layCable(station, ref(from), ref(to)));
  const cable = laid.cables.at(-1) as Cable;
  return edit(laid, { type: 'updateCable', id: cable.id, set: { lengthM, ...(crossed && crossedCores(laid, cable)) } });
}

/** Plus on minus and minus on plus, where both plugs know what these are. */
function crossedCores(station: Station, cable: Cable): Pick<Cable, 'wiring'> | undefined {
  const contacts = (end: 'a' | 'b') => {
    const port = kindOf(station, station.units.find((u) => u.id === cable[end].unit) as never).ports.find(
      (p) => p.id === cable[end].port,
    );
    const mate = station.connectors[port?.connector ?? '']?.mates[0] ?? '';
    return station.connectors[mate]?.contacts.map((c) => c.id) ?? [];
  };
  const [a, b] = [contacts('a'), contacts('b')];
  if (classOf(station, cable) !== 'dc' || cable.plugs || a.length !== 2 || b.length !== 2) return undefined;
  return {
    wiring: [
      { a: a[0] as string, b: b[1] as string },
      { a: a[1] as string, b: b[0] as string },
    ],
  };
}
