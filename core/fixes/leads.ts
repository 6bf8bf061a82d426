import { cableKinds } from '../catalog/cables/cable-kinds.ts';
import { swappedWiring } from '../catalog/cables/swapped-wiring.ts';
import { wiringOf } from '../catalog/cables/wiring-of.ts';
import { fuseBreakingAmps, fuseRatings, nextFuse } from '../catalog/wire/fuses.ts';
import { wireLimitAmps, wireOhmsPerM } from '../catalog/wire/wire.ts';
import type { Change } from '../station/edit.ts';
import type { Fix } from '../station/fix.ts';
import type { Cable, Station } from '../station/schema/schema.ts';

/** Near enough to where the current comes from. */
const nearM = 0.1;

const update = (cable: Cable, name: string, set: Extract<Change, { type: 'updateCable' }>['set']): Fix => ({
  name,
  change: { type: 'updateCable', id: cable.id, set },
});

/** Plus and minus of a lead changed over at its end b. */
export function swapCores(station: Station, cable: Cable): Fix | undefined {
  const wiring = swappedWiring(station, cable);
  if (!wiring || wiringOf(station, cable).length !== 2) return undefined;
  // Where that is contact to contact, the cable needs no wiring of its own.
  const bare = wiringOf(station, { ...cable, wiring: undefined } as Cable);
  const isUsual = bare.every((row) => wiring.some((w) => w.a === row.a && w.b === row.b));
  return update(cable, `Swap the two cores of ${cable.number}`, { wiring: isUsual ? undefined : wiring });
}

/** The smallest fuse of a series that carries these amperes with a quarter to spare, or at least carries them, and guards the wire. */
export function fittingFuse(amps: number, limitAmps: number): number | null {
  const wanted = [nextFuse(1.25 * amps), nextFuse(amps)].find((rating) => rating !== null && rating <= limitAmps);
  return wanted ?? null;
}

/** A blade fuse in a lead at the end where a unit feeds it; undefined where none fits, or none can break the short. */
export function fuseAt(
  cable: Cable,
  unit: string,
  amps: number,
  limitAmps: number,
  sourceAmps: number,
): Fix | undefined {
  const rating = fittingFuse(amps, limitAmps);
  const end = cable.a.unit === unit ? 'a' : cable.b.unit === unit ? 'b' : null;
  if (rating === null || end === null || sourceAmps > fuseBreakingAmps(rating)) return undefined;
  const near = Math.min(nearM, cable.lengthM);
  const atM = end === 'a' ? near : cable.lengthM - near;
  const name = `Put a ${rating} A fuse into ${cable.number} where it begins`;
  return update(cable, name, { fuse: { amps: rating, family: 'blade', atM } });
}

/** The fuse of a lead changed for the one that its load needs and its wire allows. */
export function smallerFuse(cable: Cable, amps: number, limitAmps: number): Fix | undefined {
  const rating = fittingFuse(amps, limitAmps);
  if (!cable.fuse || rating === null || !fuseRatings[cable.fuse.family].includes(rating)) return undefined;
  return update(cable, `Fit a ${rating} A fuse in ${cable.number}`, { fuse: { ...cable.fuse, amps: rating } });
}

/** The next lead of the shelf that stands so much, and has no more than so many ohms a metre. */
export function thickerLead(
  station: Station,
  cable: Cable,
  leastAmps: number,
  mostOhmsPerM = Number.POSITIVE_INFINITY,
): Fix | undefined {
  const own = station.cableKinds[cable.kind];
  if (own?.class !== 'dc' || own.screen) return undefined;
  const { ambientCelsius } = station.settings;
  const found = cableKinds
    .filter(
      ({ kind }) => kind.class === 'dc' && !kind.screen && kind.core.awg !== undefined && kind.cores === own.cores,
    )
    .map((item) => ({ ...item, ohms: wireOhmsPerM(item.kind.core, ambientCelsius) }))
    .filter(
      ({ kind, ohms }) =>
        ohms <= mostOhmsPerM && (wireLimitAmps(kind.core, station.settings)?.amps ?? 0) >= leastAmps && kind !== own,
    )
    .sort((x, y) => y.ohms - x.ohms)[0];
  if (!found || found.ohms >= wireOhmsPerM(own.core, ambientCelsius)) return undefined;
  return {
    name: `Make ${cable.number} of ${found.kind.name}`,
    change: {
      type: 'updateCable',
      id: cable.id,
      set: { kind: found.id },
      carried: { cableKinds: { [found.id]: found.kind } },
    },
  };
}
