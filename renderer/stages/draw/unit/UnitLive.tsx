import {
  formatAmps,
  formatDbm,
  formatVolts,
  formatWatts,
  type PortReading,
  type Unit,
  type UnitKind,
  wattsFromDbm,
} from '../../../../core/index.ts';
import { useShownResults } from '../../../store/use-store.ts';
import { AgeLine } from '../../../widgets/AgeLine.tsx';
import { useBothMoments } from './use-both-moments.ts';

/** Volts, amperes and RF at each port of a unit, in receive and sending. */
export function UnitLive({ unit, kind }: { unit: Unit; kind: UnitKind }) {
  const { receive, sending } = useBothMoments();
  const cell = (port: string, overlay: typeof receive) => {
    const lines = readingLines(
      overlay?.ports[`${unit.id}.${port}`],
      kind.ports.find((p) => p.id === port)?.class === 'rf',
    );
    return lines.length === 0 ? '–' : lines.map((line) => <span key={line}>{line}</span>);
  };
  return (
    <section>
      <h3>At its ports</h3>
      <AgeLine of={useShownResults()} />
      {receive && (
        <table className="live">
          <thead>
            <tr>
              <th scope="col">Port</th>
              <th scope="col">Receive</th>
              <th scope="col">Sending</th>
            </tr>
          </thead>
          <tbody>
            {kind.ports.map((port) => (
              <tr key={port.id}>
                <th scope="row">{port.label || 'port'}</th>
                <td>{cell(port.id, receive)}</td>
                <td>{cell(port.id, sending)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

/** What there is to say of a port: RF for RF ports, volts and amperes for others, and DC on an RF port where there is some. */
function readingLines(reading: PortReading | undefined, isRf: boolean): string[] {
  if (!reading) return [];
  const { volts, amps, dbm } = reading;
  const lines: string[] = [];
  if (dbm !== null && Number.isFinite(dbm) && dbm > -100) {
    if (dbm >= 10) lines.push(formatWatts(wattsFromDbm(dbm)));
    lines.push(formatDbm(dbm));
  }
  if (volts !== null && (!isRf || Math.abs(volts) > 0.01)) lines.push(formatVolts(volts));
  if (Math.abs(amps) >= 5e-7) lines.push(formatAmps(Math.abs(amps)));
  return lines;
}
