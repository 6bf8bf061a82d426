import { useStation } from '../../store/use-store.ts';

/** Which units were reckoned with figures that are not their own. */
export function BookTypical() {
  const units = useStation((s) => s.units);
  const kinds = useStation((s) => s.kinds);
  const rows = units.filter((unit) => kinds[unit.kind]?.source.startsWith('typical') && !unit.confirmed);
  if (rows.length === 0) return <p>Every unit’s figures are its own.</p>;
  return (
    <>
      <p>These units were reckoned with typical figures. Compare them with what is on the unit, or in its manual.</p>
      <ul className="book-list">
        {rows.map((unit) => (
          <li key={unit.id}>
            {unit.name}: {kinds[unit.kind]?.name}
            {Object.keys(unit.overrides ?? {}).length > 0 && ', some of its figures its own'}
          </li>
        ))}
      </ul>
    </>
  );
}
