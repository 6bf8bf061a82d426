import { elementFields, elementTitle, elementTitles, type UnitElement } from '../../../../core/index.ts';
import { blankElement } from '../fields/blank-element.ts';
import { moved, removed, replaced } from '../fields/lists.ts';
import { openRow } from '../fields/open-row.ts';
import { AddPicker } from '../forms/AddPicker.tsx';
import { FieldsForm } from '../forms/FieldsForm.tsx';
import { ItemRow } from '../forms/ItemRow.tsx';
import { setKindFields, useEditing } from '../kind-editor.ts';

/** What most boxes have comes first. */
const common: readonly string[] = ['load', 'supply', 'battery', 'conductor', 'contactPair', 'pullUp', 'rfSource'];
const rank = (type: string) => (common.includes(type) ? common.indexOf(type) : common.length);
const types = (Object.keys(elementFields) as UnitElement['type'][])
  .sort((a, b) => rank(a) - rank(b))
  .map((id) => ({ id, label: elementTitles[id] }));
const lawUnits = { current: 'A', power: 'W', resistance: 'ohm' } as const;

/** What is inside: between which contacts, with which figures, and when. */
export function ElementsSection() {
  const editing = useEditing();
  const { kind } = editing;
  const set = (elements: UnitElement[]) => setKindFields({ elements });
  const add = (type: string) => {
    set([...kind.elements, blankElement(editing, type as UnitElement['type'])]);
    openRow(`elements[${kind.elements.length}]`);
  };
  return (
    <section aria-labelledby="kind-elements">
      <h3 id="kind-elements">What is inside</h3>
      {kind.elements.map((element, i) => (
        <ItemRow
          key={element.id}
          place={`elements[${i}]`}
          title={elementTitle(kind, element)}
          note={element.id}
          onRemove={() => set(removed(kind.elements, i))}
          onMove={(by) => set(moved(kind.elements, i, by))}
        >
          <FieldsForm
            type={element.type}
            fields={elementFields[element.type]}
            values={element}
            unit={element.type === 'load' ? lawUnits[element.law] : undefined}
            onChange={(values) => set(replaced(kind.elements, i, values as UnitElement))}
          />
        </ItemRow>
      ))}
      <AddPicker label="Add a part" options={types} onAdd={add} />
    </section>
  );
}
