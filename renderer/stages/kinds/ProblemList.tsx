import { elementTitle, type UnitKind } from '../../../core/index.ts';
import { openRow } from './fields/open-row.ts';
import { useEditing } from './kind-editor.ts';

/** What keeps the kind from being used; a click goes to the place. */
export function ProblemList() {
  const { kind, problems } = useEditing();
  if (problems.length === 0) return <p className="soft small">Nothing keeps it from being used.</p>;
  return (
    <ul className="kind-problems" aria-label="Problems">
      {problems.map(({ place, message }) => (
        <li key={place + message}>
          <button type="button" className="link" onClick={() => openRow(place)}>
            {placeWords(kind, place)}
          </button>
          <span>{message}</span>
        </li>
      ))}
    </ul>
  );
}

const plain: Record<string, string> = { name: 'Name', source: 'Figures from', ports: 'Ports', isolated: 'Its case' };

/** `ports[1].connector` as the form has it: `Port antenna`. */
function placeWords(kind: UnitKind, place: string): string {
  const [, list = '', index = '0'] = /^(\w+)\[(\d+)\]/.exec(place) ?? [];
  const i = Number(index);
  const port = kind.ports[i];
  const element = kind.elements[i];
  if (list === 'ports' && port) return `Port ${port.label || port.id}`;
  if (list === 'elements' && element) return `Inside: ${elementTitle(kind, element)}`;
  if (list === 'actors') return `Switch ${kind.actors?.[i]?.label ?? index}`;
  if (list === 'settings') return `Setting ${kind.settings?.[i]?.label ?? index}`;
  return plain[list || place] ?? place;
}
