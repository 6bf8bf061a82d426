import { formatMs, formatWatts, type KeydownReport, type Lane } from '../../../core/index.ts';
import { useHookup, useKeydown } from '../../store/current.ts';
import { useShownResults } from '../../store/use-store.ts';
import { Aged } from '../../widgets/Aged.tsx';
import './strip.css';
import { relayMargin } from './relay-margin.ts';
import { ticksFor } from './ticks-for.ts';

/** What happens between pressing the key and rest again: one lane for everything that does something. */
export function KeydownStrip() {
  const keydown = useKeydown();
  const hookup = useHookup();
  return (
    <section className="strip" aria-label="Key-down">
      <Aged of={useShownResults()}>
        {() =>
          keydown ? (
            <Lanes keydown={keydown} />
          ) : (
            <p className="soft small">In “{hookup.name}” there is no key or other control to press.</p>
          )
        }
      </Aged>
    </section>
  );
}

function Lanes({ keydown }: { keydown: KeydownReport }) {
  const { lanes, rf, settled, releasedMs } = keydown;
  const end = Math.max(keydown.endMs, releasedMs) * 1.04 + 4;
  const at = (ms: number) => `${((ms / end) * 100).toFixed(3)}%`;
  const margin = relayMargin(keydown);
  const sends = lanes.some((lane) => lane.kind === 'sends' && lane.spans[0]?.[0] === rf?.fromMs);
  return (
    <>
      <p className="strip-words small">
        <b>{keydown.controlName}</b> pressed at 0, let go at {formatMs(releasedMs)}
        {rf
          ? `; RF from ${formatMs(rf.fromMs)} to ${formatMs(rf.toMs)}, ${formatWatts(rf.watts)}`
          : '; nothing is sent'}
        {margin && `; ${margin.words}`}
        {!settled && '; it does not come to rest'}
        <Legend lanes={lanes} rf={rf !== null && !sends} />
      </p>
      <div className="lanes">
        <div className="axis" aria-hidden="true">
          {ticksFor(end).map((ms) => (
            <span key={ms} className="tick" style={{ left: at(ms) }}>
              <i>{ms} ms</i>
            </span>
          ))}
          {margin && (
            <span
              className={`margin ${margin.safe ? 'safe' : 'unsafe'}`}
              style={{ left: at(margin.fromMs), width: at(margin.toMs - margin.fromMs) }}
            />
          )}
        </div>
        <ul>
          {inOrder(lanes).map((lane) => (
            <LaneRow key={`${lane.unit}.${lane.actor}`} name={lane.name} kind={lane.kind} spans={lane.spans} at={at} />
          ))}
          {rf && !sends && <LaneRow name="RF" kind="rf" spans={[[rf.fromMs, rf.toMs]]} at={at} />}
        </ul>
      </div>
    </>
  );
}

/** As things happen: what comes on first is on top. */
const inOrder = (lanes: readonly Lane[]): Lane[] => {
  const first = (lane: Lane) => lane.spans[0]?.[0] ?? Number.POSITIVE_INFINITY;
  return [...lanes].sort((a, b) => first(a) - first(b));
};

interface RowProps {
  name: string;
  kind: Lane['kind'] | 'rf';
  spans: Lane['spans'];
  at: (ms: number) => string;
}

function LaneRow({ name, kind, spans, at }: RowProps) {
  const words = spans.map(([from, to]) => `${formatMs(from)} to ${formatMs(to)}`).join(', ');
  return (
    <li className="lane" title={`${name}: ${words}`}>
      <span className="lane-name">{name}</span>
      <span className="lane-track">
        <span className="sr-only">{words}</span>
        {spans.map(([from, to]) => (
          <i key={from} className={`span ${kind}`} style={{ left: at(from), width: at(Math.max(to - from, 0.4)) }} />
        ))}
      </span>
    </li>
  );
}

const kindWords: Record<Lane['kind'], string> = {
  operator: 'hand',
  keys: 'keying line',
  changesOver: 'changeover',
  mutes: 'mute',
  sends: 'transmitter sends',
  other: 'other',
};

function Legend({ lanes, rf }: { lanes: readonly Lane[]; rf: boolean }) {
  const kinds = [...new Set(lanes.map((l) => l.kind))];
  return (
    <span className="legend" aria-hidden="true">
      {kinds.map((kind) => (
        <span key={kind}>
          <i className={`span ${kind}`} />
          {kindWords[kind]}
        </span>
      ))}
      {rf && (
        <span>
          <i className="span rf" />
          RF
        </span>
      )}
    </span>
  );
}
