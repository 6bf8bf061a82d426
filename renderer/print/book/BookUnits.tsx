import { hookupsOf, type Station, settingsIn, type Unit } from '../../../core/index.ts';
import { useStation } from '../../store/use-store.ts';

/** Every unit with its kind, ports and settings. */
export function BookUnits() {
  const station = useStation();
  return (
    <table className="table">
      <thead>
        <tr>
          <th scope="col">Unit</th>
          <th scope="col">Kind</th>
          <th scope="col">Set to</th>
          <th scope="col">Note</th>
        </tr>
      </thead>
      <tbody>
        {station.units.map((unit) => (
          <tr key={unit.id}>
            <th scope="row">{unit.name}</th>
            <td>{station.kinds[unit.kind]?.name}</td>
            <td>{settingWords(station, unit)}</td>
            <td>{unit.note}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** `Range: 100 W`, and by hook-up where they differ: `Position: A (On the air), B (On the dummy load)`. */
function settingWords(station: Station, unit: Unit): string {
  const kind = station.kinds[unit.kind];
  return (kind?.settings ?? [])
    .map(({ id, label, options }) => {
      const chosen = hookupsOf(station).map((hookup) => {
        const value = kind ? settingsIn(kind, unit, hookup)[id] : undefined;
        return { hookup: hookup.name, value: options.find((o) => o.id === value)?.label ?? value ?? '' };
      });
      const alike = new Set(chosen.map((c) => c.value)).size === 1;
      const words = alike ? chosen[0]?.value : chosen.map((c) => `${c.value} (${c.hookup})`).join(', ');
      return `${label}: ${words}`;
    })
    .join('; ');
}
