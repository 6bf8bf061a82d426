import type { Connector, UnitKind } from '../../../../core/index.ts';

/**
 * The kind with another connector at a port. What was joined to a contact of the old one is joined to that of the new
 * one with the same id, else to the one that does the same job; where there is none, the name stays and is a problem.
 */
export function changeConnector(
  kind: UnitKind,
  portId: string,
  connectors: Readonly<Record<string, Connector>>,
  to: string,
): UnitKind {
  const port = kind.ports.find((p) => p.id === portId);
  const moves = new Map(pairs(connectors[port?.connector ?? '']?.contacts ?? [], connectors[to]?.contacts ?? []));
  const refs = new Map([...moves].map(([a, b]) => [`${portId}.${a}`, `${portId}.${b}`]));
  const moved = replaceTexts(kind, refs);
  const ports = moved.ports.map((p) => {
    if (p.id !== portId) return p;
    if (!p.limits) return { ...p, connector: to };
    const limits = Object.entries(p.limits).map(([contact, limit]) => [moves.get(contact) ?? contact, limit]);
    return { ...p, connector: to, limits: Object.fromEntries(limits) };
  });
  return { ...moved, ports };
}

type Contacts = Connector['contacts'];

/** Which contact takes the place of which: the same name first, then the first free one of the same role. */
function pairs(from: Contacts, to: Contacts): [string, string][] {
  const free = to.filter((contact) => !from.some((c) => c.id === contact.id));
  return from.flatMap((contact): [string, string][] => {
    if (to.some((c) => c.id === contact.id)) return [];
    const at = free.findIndex((c) => c.role === contact.role);
    const [other] = at < 0 ? [] : free.splice(at, 1);
    return other ? [[contact.id, other.id]] : [];
  });
}

function replaceTexts<T>(value: T, texts: ReadonlyMap<string, string>): T {
  if (typeof value === 'string') return (texts.get(value) ?? value) as T;
  if (Array.isArray(value)) return value.map((item) => replaceTexts(item, texts)) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, replaceTexts(item, texts)])) as T;
}
