import { portClasses } from '../../../../core/index.ts';
import { freeId } from '../fields/blank-element.ts';
import { portTitle } from '../fields/contact-choices.ts';
import { moved, removed, replaced } from '../fields/lists.ts';
import { openRow } from '../fields/open-row.ts';
import { portWords } from '../fields/port-words.ts';
import { ItemRow } from '../forms/ItemRow.tsx';
import { PortForm } from '../forms/PortForm.tsx';
import { setKindFields, useEditing } from '../kind-editor.ts';

/** What a cable can be plugged into. */
export function PortsSection() {
  const { kind, connectors } = useEditing();
  const { ports } = kind;
  const add = () => {
    const id = freeId(ports, 'port');
    const port = {
      id,
      label: '',
      class: portClasses[0],
      connector: 'barrel-21-jack',
      side: 'left',
      needed: 'optional',
    } as const;
    setKindFields({ ports: [...ports, port] });
    openRow(`ports[${ports.length}]`);
  };
  return (
    <section aria-labelledby="kind-ports-title" id="kind-ports">
      <h3 id="kind-ports-title">Ports</h3>
      {ports.map((port, i) => (
        <ItemRow
          key={port.id}
          place={`ports[${i}]`}
          title={portTitle(port)}
          note={`${portWords.class[port.class]}, ${connectors[port.connector]?.name ?? 'no connector'}`}
          onRemove={() => setKindFields({ ports: removed(ports, i) })}
          onMove={(by) => setKindFields({ ports: moved(ports, i, by) })}
        >
          <PortForm port={port} onChange={(next) => setKindFields({ ports: replaced(ports, i, next) })} />
        </ItemRow>
      ))}
      <button type="button" className="button" onClick={add}>
        Add a port
      </button>
    </section>
  );
}
