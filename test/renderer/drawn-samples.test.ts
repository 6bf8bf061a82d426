import { describe, expect, test } from 'vitest';
import { hookupsOf, type Station } from '../../core/index.ts';
import { stepOf } from '../../renderer/canvas/routing/geometry.ts';
import { generateStation } from '../stations/generate.ts';
import { type Drawn, draw, flagsOf, isThrough, overlaps, runsOf, samples, shared } from './drawn-samples.ts';
import { isEnclosed } from './is-enclosed.ts';

/** Of larger stations the drawing shows the way of each cable, but not every cable has a lane of its own. */
const smallUnits = 20;
const small = samples.filter(([, station]) => station.units.length <= smallUnits);

/** Cables that are there at the same time, in pairs: those of one port in two hook-ups are never both plugged in. */
function pairs(station: Station): [string, string][] {
  const together = (a: string, b: string) => {
    const [one, other] = [a, b].map((id) => station.cables.find((c) => c.id === id)?.hookups);
    return hookupsOf(station).some(({ id }) => (one?.includes(id) ?? true) && (other?.includes(id) ?? true));
  };
  const ids = station.cables.map((c) => c.id);
  return ids.flatMap((a, i) =>
    ids
      .slice(i + 1)
      .filter((b) => together(a, b))
      .map((b): [string, string] => [a, b]),
  );
}

/** Cables that run through cards although there is a way around them. */
function throughCards(drawn: Drawn): string[] {
  const { cards, requests, routes } = drawn;
  return requests.flatMap((request) => {
    const through = runsOf(routes.get(request.id) ?? []).some((run) => cards.some((card) => isThrough(run, card)));
    return through && !isEnclosed(cards, request) ? [request.number] : [];
  });
}

describe.each(samples)('%s', (_, station) => {
  const drawn = draw(station);

  test('no cable runs through a card', () => {
    expect(drawn.routes.size).toBe(station.cables.length);
    const through = drawn.requests.filter(({ id }) =>
      runsOf(drawn.routes.get(id) ?? []).some((run) => drawn.cards.some((card) => isThrough(run, card))),
    );
    expect(through.map((r) => r.number)).toEqual([]);
  });

  test('every cable begins and ends at its ports, in their direction, and turns only at right angles', () => {
    for (const { id, number, a, b } of drawn.requests) {
      const route = drawn.routes.get(id) ?? [];
      const [start, second, beforeLast, end] = [route[0], route[1], route.at(-2), route.at(-1)];
      expect(start, number).toEqual({ x: a.x, y: a.y });
      expect(end, number).toEqual({ x: b.x, y: b.y });
      const out = (from = a as { x: number; y: number }, to = a as { x: number; y: number }) => ({
        x: Math.sign(to.x - from.x),
        y: Math.sign(to.y - from.y),
      });
      expect(out(start, second), `${number} at its first port`).toEqual(stepOf[a.side]);
      expect(out(end, beforeLast), `${number} at its second port`).toEqual(stepOf[b.side]);
      for (const [p, q] of runsOf(route)) expect(p.x === q.x || p.y === q.y, number).toBe(true);
    }
  });
});

describe.each(small)('%s', (_, station) => {
  const { cards, routes, requests } = draw(station);
  const numberOf = (id: string) => requests.find((r) => r.id === id)?.number ?? '';
  const together = pairs(station);
  const flags = (id: string) => flagsOf(numberOf(id), routes.get(id) ?? []);

  test('no two cables run on top of each other', () => {
    const onTop = together.flatMap(([a, b]) => {
      const pixels = runsOf(routes.get(a) ?? []).flatMap((run) =>
        runsOf(routes.get(b) ?? []).map((other) => shared(run, other)),
      );
      return pixels.some((p) => p > 0) ? [`${numberOf(a)} and ${numberOf(b)}`] : [];
    });
    expect(onTop).toEqual([]);
  });

  test('no flag covers a flag of another cable, a card or another cable', () => {
    const covered = requests.flatMap(({ id, number }) =>
      flags(id).flatMap((flag) => [
        ...cards.filter((card) => overlaps(flag, card)).map(() => `${number} on a card`),
        ...together
          .filter((pair) => pair.includes(id))
          .map(([a, b]) => (a === id ? b : a))
          .flatMap((other) => [
            ...(flags(other).some((f) => overlaps(f, flag)) ? [`flags of ${number} and ${numberOf(other)}`] : []),
            ...(runsOf(routes.get(other) ?? []).some((run) => isThrough(run, flag))
              ? [`${numberOf(other)} runs over a flag of ${number}`]
              : []),
          ]),
      ]),
    );
    expect(covered).toEqual([]);
  });
});

describe.each([12, 25, 60, 120, 200])('a generated station of %i units', (units) => {
  test('no cable runs through a card unless cards close every way', () => {
    expect(throughCards(draw(generateStation(units)))).toEqual([]);
  });
});

test('what closes every way is seen, and what leaves one', () => {
  const box = (x: number, y: number, width: number, height: number) => ({ x, y, width, height });
  const cable = { a: { x: 108, y: 45, side: 'right' as const }, b: { x: 600, y: 45, side: 'left' as const } };
  const left = box(0, 0, 108, 180);
  expect(isEnclosed([left, box(108, 0, 108, 180)], cable)).toBe(true);
  const yard = [left, box(180, -90, 36, 360), box(-36, -90, 252, 54), box(-36, 216, 252, 54), box(-90, -90, 54, 360)];
  expect(isEnclosed(yard, cable)).toBe(true);
  expect(isEnclosed(yard.slice(0, -1), cable)).toBe(false);
  expect(isEnclosed([left], cable)).toBe(false);
});
