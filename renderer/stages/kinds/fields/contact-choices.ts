import type { UnitKind, WholeKind } from '../../../../core/index.ts';

interface Choice {
  readonly id: string;
  readonly label: string;
}

/** Every contact that something inside may be joined to: those of the ports, the case, joints inside the box. */
export function contactChoices({ kind, connectors }: WholeKind, present?: string): readonly Choice[] {
  const ofPorts = kind.ports.flatMap((port) =>
    (connectors[port.connector]?.contacts ?? []).map((contact) => ({
      id: `${port.id}.${contact.id}`,
      label: `${portTitle(port)}, ${contact.name}`,
    })),
  );
  const joints = jointsOf(kind);
  const next = `@joint-${joints.length + 1}`;
  return withPresent(
    [
      ...ofPorts,
      { id: 'chassis', label: 'the case' },
      ...joints.map((id) => ({ id, label: `joint ${id.slice(1)}` })),
      { id: next, label: 'a new joint inside' },
    ],
    present,
  );
}

/** The ports, for what runs from port to port. */
export const portChoices = ({ ports }: UnitKind, present?: string): readonly Choice[] =>
  withPresent(
    ports.map((port) => ({ id: port.id, label: portTitle(port) })),
    present,
  );

export const portTitle = (port: UnitKind['ports'][number]): string => port.label || `port ${port.id}`;

/** What is chosen but is not there any more stays in the list, so that it can be seen. */
export const withPresent = (choices: readonly Choice[], present: string | undefined): readonly Choice[] =>
  present === undefined || choices.some((choice) => choice.id === present)
    ? choices
    : [{ id: present, label: present === '' ? 'choose…' : `${present}: not there` }, ...choices];

function jointsOf(kind: UnitKind): string[] {
  const texts = JSON.stringify([kind.elements, kind.actors ?? []]).match(/"@[\w-]+"/g) ?? [];
  return [...new Set(texts.map((text) => text.slice(1, -1)))].sort();
}
