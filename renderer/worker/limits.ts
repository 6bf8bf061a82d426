import { hookupsOf, type Station } from '../../core/index.ts';

/*
 * How long a computation may take before it is ended. On two cores that did the work of seven, a survey took 0.9 s with
 * 25 units and 7.8 s with 500, a power-up sheet 7 s with 25 and 116 s with 200. The limits are some seven times that and
 * more, so that a machine a good many times slower than an idle one is never cut short: they are there for what would
 * never end.
 */
const startMs = 30_000;
const mostMs = 3600_000;

/** All that a survey has to look at: ports, what is between their contacts, and cables, in each hook-up. */
function sizeOf(station: Station): number {
  const parts = station.units.map(({ kind }) => {
    const known = station.kinds[kind];
    return known ? known.ports.length + known.elements.length : 0;
  });
  return (parts.reduce((sum, n) => sum + n, 0) + station.cables.length) * hookupsOf(station).length;
}

/** A survey looks at each thing a few times: 20 ms for each, and half a minute for the start. */
export const surveyLimitMs = (station: Station): number => Math.min(mostMs, startMs + 20 * sizeOf(station));

/** A power-up sheet tries the station again for each step, so that its time grows with the square. */
export const sheetLimitMs = (station: Station): number => Math.min(mostMs, 2 * startMs + 0.1 * sizeOf(station) ** 2);
