import {
  type Cable,
  type CableReading,
  formatAmps,
  formatDbm,
  formatVolts,
  formatWatts,
  type PortClass,
} from '../../../../core/index.ts';
import { useShownResults } from '../../../store/use-store.ts';
import { AgeLine } from '../../../widgets/AgeLine.tsx';
import { useBothMoments } from '../unit/use-both-moments.ts';

type Row = readonly [name: string, text: (reading: CableReading) => string];

const rf: readonly Row[] = [
  ['RF power', (r) => (r.watts !== null && r.watts >= 0.001 ? formatWatts(r.watts) : '–')],
  ['RF level', (r) => (r.dbm !== null && Number.isFinite(r.dbm) ? formatDbm(r.dbm) : '–')],
];

const dc: readonly Row[] = [
  ['Voltage', (r) => (r.volts === null ? '–' : formatVolts(r.volts))],
  ['Current', (r) => formatAmps(Math.abs(r.amps))],
  ['In the return', (r) => formatAmps(Math.abs(r.returnAmps))],
];

/** What a cable carries in receive and in sending. */
export function CableCarries({ cable, kind }: { cable: Cable; kind: PortClass }) {
  const { receive, sending } = useBothMoments();
  const age = <AgeLine of={useShownResults()} />;
  const now = receive?.cables[cable.id];
  if (!receive)
    return (
      <section>
        <h3>What it carries</h3>
        {age}
      </section>
    );
  if (!now) return <p className="soft small">Not plugged in for the hook-up looked at.</p>;
  const later = sending?.cables[cable.id];
  const rows = kind === 'rf' ? [...rf, ...dc] : dc;
  return (
    <section>
      <h3>What it carries</h3>
      {age}
      <table className="live">
        <thead>
          <tr>
            <th scope="col">
              <span className="sr-only">What</span>
            </th>
            <th scope="col">Receive</th>
            <th scope="col">Sending</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, text]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{text(now)}</td>
              <td>{later ? text(later) : '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
