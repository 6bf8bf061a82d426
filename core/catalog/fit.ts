import { portOf } from '../station/parts.ts';
import { remember } from '../station/remember.ts';
import type { Connector, ContactRole } from '../station/schema/connector.ts';
import type { PortRef, Station } from '../station/schema/schema.ts';
import type { PortClass } from '../station/schema/unit-kind.ts';
import { adapterChain, adapters, matesWith } from './adapters.ts';
import { connectors as catalogue } from './connectors.ts';

type Connectors = Readonly<Record<string, Connector>>;

export interface Fit {
  readonly fit: 'mates' | 'misfit' | 'adapter' | 'none';
  /** Which contacts touch: `[of the first, of the second]`. */
  readonly joins: readonly (readonly [string, string])[];
  /** In half a sentence; empty where they simply mate. */
  readonly why: string;
  /** A misfit in which nothing wrong touches. */
  readonly harmless?: boolean;
  /** Adapters from the first to the second. */
  readonly chain?: readonly string[];
}

/**
 * How two connector halves go together: as made, although they should not, through adapters, or not at all. A
 * cable's plug comes first, the port's connector second. Halves that nobody knows do not fit.
 */
export function fitOf(connectors: Connectors, plugId: string, jackId: string): Fit {
  const known = knownFits(connectors);
  const pair = `${plugId} ${jackId}`;
  const fit = known.get(pair) ?? judge(connectors, plugId, jackId);
  known.set(pair, fit);
  return fit;
}

const knownFits = remember((_: Connectors) => new Map<string, Fit>());

function judge(connectors: Connectors, plugId: string, jackId: string): Fit {
  const plug = connectors[plugId] ?? catalogue[plugId];
  const jack = connectors[jackId] ?? catalogue[jackId];
  if (!plug || !jack) return { fit: 'none', joins: [], why: 'one of the two connectors is not known' };
  if (plug.mates.includes(jackId) || jack.mates.includes(plugId)) {
    return { fit: 'mates', joins: joinContacts(plug, jack), why: '' };
  }
  const own = plug.misfits?.find((m) => m.with === jackId);
  if (own) return { fit: 'misfit', joins: own.joins, why: own.why, harmless: own.harmless ?? false };
  const other = jack.misfits?.find((m) => m.with === plugId);
  if (other)
    return {
      fit: 'misfit',
      joins: other.joins.map(([a, b]) => [b, a]),
      why: other.why,
      harmless: other.harmless ?? false,
    };
  const chain = adapterChain(connectors, plugId, jackId);
  if (!chain) return { fit: 'none', joins: [], why: `a ${plug.name} does not go on a ${jack.name}` };
  const names = chain.map((id) => adapters[id]?.name ?? id).join(', then ');
  return { fit: 'adapter', joins: joinByRole(plug, jack), why: `it needs an adapter: ${names}`, chain };
}

const sameIds = (a: Connector, b: Connector) => a.contacts.every((c) => b.contacts.some((d) => d.id === c.id));

/** Contact to contact by name, or by role where the two name theirs differently. */
export function joinContacts(a: Connector, b: Connector): [string, string][] {
  return sameIds(a, b) || sameIds(b, a)
    ? a.contacts.filter((c) => b.contacts.some((d) => d.id === c.id)).map((c) => [c.id, c.id])
    : joinByRole(a, b);
}

const roles: readonly ContactRole[] = ['live', 'return', 'second'];

/** The first live contacts together, the first returns, the first rings; then the next ones. */
function joinByRole(a: Connector, b: Connector): [string, string][] {
  return roles.flatMap((role) => {
    const others = b.contacts.filter((c) => c.role === role);
    return a.contacts
      .filter((c) => c.role === role)
      .flatMap((c, i): [string, string][] => {
        const other = others[i];
        return other ? [[c.id, other.id]] : [];
      });
  });
}

export interface PairVerdict {
  readonly fit: Fit['fit'];
  readonly why: string;
  readonly chain?: readonly string[];
}

const carries: Record<PortClass, string> = {
  dc: 'power',
  rf: 'RF',
  audio: 'audio',
  control: 'keying',
  data: 'data',
  earth: 'earth',
};

/**
 * Whether two ports can be joined by one cable, for lighting them while a cable is dragged. Ports of one class take
 * the usual cable of that class (`mates`). Ports of different classes are a `misfit` where one lead would go into
 * both all the same.
 */
export function judgePair(station: Station, a: PortRef, b: PortRef): PairVerdict {
  if (a.unit === b.unit && a.port === b.port) return { fit: 'none', why: 'a cable has two ends' };
  const from = portOf(station, a).port;
  const to = portOf(station, b).port;
  if (from.class === to.class) return { fit: 'mates', why: '' };
  const all = { ...catalogue, ...station.connectors };
  const plug = all[from.connector]?.mates[0];
  const differ = `one carries ${carries[from.class]}, the other ${carries[to.class]}`;
  if (plug === undefined) return { fit: 'none', why: differ };
  if (matesWith(all, plug, to.connector)) {
    return { fit: 'misfit', why: `the same ${all[plug]?.name} fits both, but ${differ}` };
  }
  const { fit, why, chain } = fitOf(all, plug, to.connector);
  if (fit === 'misfit') return { fit, why: `${why}, and ${differ}` };
  return fit === 'adapter' && chain ? { fit, why: `${differ}, and ${why}`, chain } : { fit: 'none', why: differ };
}
