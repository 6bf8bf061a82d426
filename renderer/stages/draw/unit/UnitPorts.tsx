import { drawnKind, type Unit, type UnitKind } from '../../../../core/index.ts';
import { change } from '../../../store/document.ts';
import { useStation } from '../../../store/use-store.ts';
import { SelectField } from '../../../widgets/SelectField.tsx';

type Sides = NonNullable<Unit['sides']>;

const sides = [
  { id: 'left', label: 'left' },
  { id: 'right', label: 'right' },
  { id: 'top', label: 'upper' },
  { id: 'bottom', label: 'lower' },
];

const opposite = { left: 'right', right: 'left', top: 'top', bottom: 'bottom' } as const;

/** On which side of the card each port is. */
export function UnitPorts({ unit, kind }: { unit: Unit; kind: UnitKind }) {
  const drawn = useStation((s) => drawnKind(s.kinds, unit)) ?? kind;
  /** Sides that are the kind's own are not written down. */
  const set = (wanted: Sides, name: string) => {
    const own = kind.ports.filter((p) => wanted[p.id] !== undefined && wanted[p.id] !== p.side);
    const kept = Object.fromEntries(own.map((p) => [p.id, wanted[p.id] ?? p.side]));
    const changed = { sides: own.length > 0 ? kept : undefined };
    change({ type: 'all', name, changes: [{ type: 'updateUnit', id: unit.id, set: changed as Partial<Unit> }] });
  };
  const mirror = () => set(Object.fromEntries(drawn.ports.map((p) => [p.id, opposite[p.side]])), 'Turn round');
  return (
    <details className="unit-ports">
      <summary>Ports and their sides</summary>
      {drawn.ports.map((port) => (
        <SelectField
          key={port.id}
          label={port.label || 'port'}
          value={port.side}
          options={sides}
          onChoose={(side) => set({ ...unit.sides, [port.id]: side as Sides[string] }, 'Move port')}
        />
      ))}
      <p className="details-buttons">
        <button type="button" className="button" onClick={mirror}>
          Left to right and back
        </button>
        {unit.sides && (
          <button type="button" className="button" onClick={() => set({}, 'Move ports back')}>
            As the kind has them
          </button>
        )}
      </p>
    </details>
  );
}
