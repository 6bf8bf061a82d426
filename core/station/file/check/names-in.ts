import type { Connector } from '../../schema/connector.ts';
import type { UnitKind } from '../../schema/unit-kind.ts';

/** Connectors by id; undefined where there is one that could not be read. */
export type Connectors = Readonly<Record<string, Connector | undefined>>;

/** What can be named inside a unit kind. */
export interface KindNames {
  readonly ports: ReadonlySet<string>;
  readonly elements: ReadonlySet<string>;
  readonly audioLoads: ReadonlySet<string>;
  readonly actors: ReadonlySet<string>;
  /** Settings, and the positions of each. */
  readonly settings: ReadonlyMap<string, ReadonlySet<string>>;
  /** `port.contact`, a joint or the chassis; true too where the port's connector can't be looked at. */
  readonly isContact: (ref: string) => boolean;
  /** The same without joints and the chassis. */
  readonly isPortContact: (ref: string) => boolean;
}

const idsOf = (items: readonly { readonly id: string }[] = []): ReadonlySet<string> =>
  new Set(items.map((item) => item.id));

/** The names in a unit kind, each looked up once: a kind may have thousands. */
export function namesIn(kind: UnitKind, connectors: Connectors): KindNames {
  const unknown = new Set<string>();
  const contacts = new Set<string>();
  for (const port of kind.ports) {
    const connector = Object.hasOwn(connectors, port.connector) ? connectors[port.connector] : undefined;
    if (connector) for (const contact of connector.contacts) contacts.add(`${port.id}.${contact.id}`);
    else unknown.add(port.id);
  }
  const isPortContact = (ref: string) => contacts.has(ref) || unknown.has(ref.slice(0, ref.lastIndexOf('.')));
  return {
    ports: idsOf(kind.ports),
    elements: idsOf(kind.elements),
    audioLoads: idsOf(kind.elements.filter((e) => e.type === 'audioLoad')),
    actors: idsOf(kind.actors),
    settings: new Map((kind.settings ?? []).map((setting) => [setting.id, idsOf(setting.options)])),
    isContact: (ref) => ref === 'chassis' || ref.startsWith('@') || isPortContact(ref),
    isPortContact,
  };
}
