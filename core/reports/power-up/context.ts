import type { LoadPart, SupplyPart } from '../../circuit/circuit.ts';
import type { Trial } from '../../keydown/key-down.ts';
import type { TriedHookup } from '../../rules/rule.ts';
import { cablesAt, cablesIn, placeOfContact, portOfRef } from '../../station/parts.ts';
import type { Cable, CableEnd, Hookup, Station } from '../../station/schema/schema.ts';
import type { Survey } from '../../survey.ts';
import { sendingsOf } from '../../trial/instants.ts';
import { passersOf } from '../../trial/metal/conductors.ts';
import { leastWay } from '../../trial/metal/least-way.ts';
import { isFeed, loadsOf, type Numbered, suppliesOf, unitOfPart } from '../../trial/parts.ts';
import { mainFeederOf } from '../../trial/power/feeders.ts';
import { type ComingIn, comingIn } from './coming-in.ts';
import { isForTips } from './contacts.ts';
import type { Setup } from './setup.ts';
import { Workings } from './workings.ts';

/** A unit that gets its power through a plug, and where that comes from. */
export interface FedUnit {
  readonly unit: string;
  readonly load: Numbered<LoadPart>;
  readonly cable: Cable;
  /** The end that goes into the unit. */
  readonly end: CableEnd;
  readonly supply: Numbered<SupplyPart>;
  /** The units that its power comes from and through. */
  readonly through: ReadonlySet<string>;
}

/** What all parts of the sheet start from. */
export interface Context {
  readonly station: Station;
  readonly facts: Survey;
  /** The hook-up that the sheet is done in, up to where something sends. */
  readonly base: TriedHookup;
  /** The one that leads into a dummy load; undefined where none does. */
  readonly dummy: TriedHookup | undefined;
  /** Those that lead to an antenna. */
  readonly onAir: readonly TriedHookup[];
  /** Units with a power plug, in the order in which they are plugged in. */
  readonly fed: readonly FedUnit[];
  /** Supplies that stand by themselves and can be read: converters get going with what feeds them. */
  readonly supplies: readonly Numbered<SupplyPart>[];
  /** The leads that come in from outdoors. */
  readonly comers: readonly ComingIn[];
  readonly workings: Workings;
}

/**
 * Looks up what the sheet starts from, for one hook-up (its id) where it is asked for; null where the station has no
 * hook-up with a supply or a transmitter.
 */
export function contextOf(facts: Survey, asked: string | null): Context | null {
  const chosen = facts.hookups.find(({ hookup }) => hookup.id === asked);
  const dummies = facts.hookups.filter((tried) => endsIn(tried, 'termination'));
  const dummy = dummies.find((tried) => tried === chosen) ?? dummies[0];
  const onAir = facts.hookups.filter((tried) => endsIn(tried, 'antenna') && (!chosen || tried === chosen));
  const base = chosen ?? dummy ?? facts.hookups[0];
  if (!base) return null;
  const supplies = suppliesInUse(facts.station, base);
  // A radio with its battery inside sends all the same.
  if (supplies.length === 0 && base.trial.circuit.rf.sources.length === 0) return null;
  const readable = supplies.filter(({ part }) =>
    isForTips(facts.station, { unit: unitOfPart(part), port: portOfRef(part.spec.plus) }),
  );
  const fed = inOrder(base, fedUnits(facts.station, base));
  const workings = new Workings(facts.hookups);
  const comers = comingIn(facts, workings);
  return { station: facts.station, facts, base, dummy, onAir, fed, supplies: readable, comers, workings };
}

/** Whether something sends into such an end in a hook-up. */
function endsIn({ trial }: TriedHookup, role: 'termination' | 'antenna'): boolean {
  const ends = trial.circuit.rf.loads.filter((load) => load.spec.role === role);
  return sendingsOf(trial).some(({ reach }) =>
    ends.some((end) => reach.rf.fieldsAt(end.port).some((field) => field.selected.has(end.port))),
  );
}

/**
 * Those that something hangs on: a computer has outlets for a mouse too. All of them where nothing is plugged in yet, but
 * for those inside a unit, which feed that alone.
 */
function suppliesInUse(station: Station, { hookup, trial }: TriedHookup): Numbered<SupplyPart>[] {
  const placeOf = (part: SupplyPart) => placeOfContact(unitOfPart(part), part.spec.plus);
  const all = suppliesOf(trial.circuit).filter(({ part }) => !part.converter && placeOf(part).port !== undefined);
  const used = all.filter(({ part }) => {
    const { unit, port } = placeOf(part);
    return cablesAt(station, hookup, unit, port).length > 0;
  });
  return used.length > 0 ? used : all;
}

/** The units that get their power through a plug in a hook-up. */
export function fedUnits(station: Station, { hookup, trial }: TriedHookup): FedUnit[] {
  const found = new Map<string, FedUnit>();
  for (const load of loadsOf(trial.circuit)) {
    const unit = unitOfPart(load.part);
    if (found.has(unit) || !isFeed(load.part)) continue;
    const port = portOfRef(load.part.spec.plus);
    const cable = cablesAt(station, hookup, unit, port)[0];
    const supply = cable && (mainFeederOf(trial.circuit, trial.receive, load.part.plus) ?? onlySupply(trial.circuit));
    if (!cable || !supply) continue;
    const end = cable.a.unit === unit && cable.a.port === port ? 'a' : 'b';
    found.set(unit, { unit, load, cable, end, supply, through: unitsBefore(trial, load.part, supply.part, cable) });
  }
  return [...found.values()];
}

function unitsBefore({ circuit, receive }: Trial, load: LoadPart, supply: SupplyPart, { a, b }: Cable): Set<string> {
  const way = leastWay(circuit, passersOf(circuit, receive.on), load.plus, supply.plus);
  const parts = (way?.parts ?? []).flatMap((i) => circuit.parts[i] ?? []);
  // With its cores swapped its plus is on the case, from where all metal leads everywhere.
  const isLive = parts.every(({ origin }) => origin.type !== 'chassis');
  const units = new Set([...(isLive ? parts.map(unitOfPart) : []), unitOfPart(supply), a.unit, b.unit]);
  units.delete(unitOfPart(load));
  return units;
}

/** A reversed lead has no plus that leads to its unit; where there is one supply it can only be that. */
function onlySupply(circuit: Parameters<typeof suppliesOf>[0]): Numbered<SupplyPart> | undefined {
  const [only, ...more] = suppliesOf(circuit);
  return more.length === 0 ? only : undefined;
}

/** Those that feed others first; of those that could come next the one that draws least, transmitters last. */
function inOrder({ trial }: TriedHookup, fed: readonly FedUnit[]): FedUnit[] {
  const waiting = new Set(fed);
  const order: FedUnit[] = [];
  const senders = new Set(trial.circuit.rf.sources.map((source) => source.unit));
  const weight = ({ unit, load }: FedUnit) => trial.receive.dc.ampsIn(load.index) + (senders.has(unit) ? afterAll : 0);
  while (waiting.size > 0) {
    const names = new Set([...waiting].map((f) => f.unit));
    const isReady = ({ through }: FedUnit) => ![...through].some((unit) => names.has(unit));
    const all = [...waiting];
    const ready = all.filter(isReady);
    const next = (ready.length > 0 ? ready : all).reduce((least, f) => (weight(f) < weight(least) - 1e-9 ? f : least));
    waiting.delete(next);
    order.push(next);
  }
  return order;
}

/** More amperes than anything draws. */
const afterAll = 1e6;

/** The base hook-up with everything plugged in whose two units are not waiting for their turn. */
export function setupWithout(context: Context, waiting: ReadonlySet<string>, set: Partial<Setup> = {}): Setup {
  const { station, base } = context;
  const whole = wholeSetup(context, base.hookup, set);
  if (waiting.size === 0) return whole;
  const isIn = ({ a, b }: Cable) => !waiting.has(a.unit) && !waiting.has(b.unit);
  return { ...whole, station: { ...station, cables: cablesIn(station, base.hookup).filter(isIn) } };
}

/** A hook-up with everything plugged in and on, and nothing pressed, but for what is set. */
export const wholeSetup = (
  { station, workings }: Pick<Context, 'station' | 'workings'>,
  hookup: Hookup,
  set: Partial<Setup> = {},
): Setup => ({ station, hookup, pulled: [], control: null, powered: true, workings, ...set });
