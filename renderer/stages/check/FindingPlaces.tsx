import type { Finding, Place } from '../../../core/index.ts';
import { useStation } from '../../store/use-store.ts';
import { placeName } from './place-name.ts';
import { showFinding } from './show-finding.ts';

interface Props {
  finding: Finding;
  /** The finding's own if not given. */
  at?: readonly Place[];
}

/** The places of a finding, each once and with its name, to be shown on the drawing. */
export function FindingPlaces({ finding, at = finding.at }: Props) {
  const station = useStation();
  const named = at.map((place) => ({ place, name: placeName(station, place) }));
  const once = named.filter((p, i) => p.name !== '' && named.findIndex((q) => q.name === p.name) === i);
  return (
    <ul className="finding-places" aria-label="Where">
      {once.map(({ place, name }) => (
        <li key={name}>
          <button type="button" onClick={() => showFinding(finding, [place])}>
            {name}
          </button>
        </li>
      ))}
    </ul>
  );
}
