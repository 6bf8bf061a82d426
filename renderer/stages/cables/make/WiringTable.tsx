import type { MakeRow, MakeWire } from '../../../../core/index.ts';
import { useStation } from '../../../store/use-store.ts';
import { PlugFace } from './PlugFace.tsx';

/** With so many contacts a plug is drawn. */
const drawnFrom = 5;

const cores: Record<MakeWire['what'], string> = {
  live: 'signal or plus',
  second: 'second core',
  return: 'return: minus, ground or screen',
};

/** Contact by contact how a cable is wired, with pictures of plugs that have many. */
export function WiringTable({ row }: { row: MakeRow }) {
  const connectors = useStation((s) => s.connectors);
  const [from, to] = row.ends;
  return (
    <section className="wiring" aria-label={`Wiring of ${row.number}`}>
      <table className="table">
        <caption>
          {row.number}, {row.oneToOne ? 'one to one' : 'not one to one'}
          {row.screen && `; screen ${row.screen}`}
        </caption>
        <thead>
          <tr>
            <th scope="col">
              {from.plug}
              <small>{from.at}</small>
            </th>
            <th scope="col">
              {to.plug}
              <small>{to.at}</small>
            </th>
            <th scope="col">Core</th>
          </tr>
        </thead>
        <tbody>
          {row.wiring.map((wire) => (
            <tr key={`${wire.from} ${wire.to}`}>
              <td>{wire.from}</td>
              <td>{wire.to}</td>
              <td>{cores[wire.what]}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="plug-faces">
        {row.ends.map((end, i) => {
          const connector = connectors[end.connector];
          if (!connector || connector.gender === 'bare' || connector.contacts.length < drawnFrom) return null;
          return <PlugFace key={i === 0 ? 'a' : 'b'} connector={connector} at={end.at} />;
        })}
      </div>
    </section>
  );
}
