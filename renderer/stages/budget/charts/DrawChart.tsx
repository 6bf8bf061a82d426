import { formatAmps, type LoadRow } from '../../../../core/index.ts';
import { type Compared, rowKey } from '../tables/compared.ts';
import { Chart } from './Chart.tsx';
import { clip } from './clip.ts';
import { roundTicks, scaleOf } from './scale.ts';

const most = 14;
const left = 170;
const right = 480;
const top = 34;
const rowHeight = 42;

const bars = [
  { field: 'receiveAmps', word: 'receive' },
  { field: 'sendingAmps', word: 'sending' },
  { field: 'averageAmps', word: 'average' },
] as const;

/** Who draws what, the hungriest first: three bars a load, each with its figure. */
export function DrawChart({ rows }: { rows: readonly Compared<LoadRow>[] }) {
  const drawing = rows.filter(({ row, other }) => peakOf(row) > 1e-6 || (other && peakOf(other) > 1e-6));
  const sorted = drawing.toSorted((a, b) => peakOf(b.row) - peakOf(a.row)).slice(0, most);
  if (sorted.length === 0) return null;
  const highest = Math.max(...sorted.flatMap(({ row, other }) => [peakOf(row), other ? peakOf(other) : 0]));
  const x = scaleOf(0, highest, left, right);
  const bottom = top + sorted.length * rowHeight;
  const hidden = drawing.length - sorted.length;
  return (
    <Chart
      title="Who draws what"
      sentence={sentenceOf(sorted)}
      height={bottom + 22}
      fileName="who-draws-what"
      note={hidden > 0 ? `${hidden} more draw less than these.` : ''}
    >
      {(hatch) => (
        <>
          <Legend hatch={hatch} />
          {roundTicks(0, highest, 5).map((tick) => (
            <g key={tick}>
              <path d={`M${x(tick)} ${top - 4}V${bottom}`} className="chart-grid" />
              <text x={x(tick)} y={bottom + 15} className="chart-small chart-middle">
                {tick === 0 ? '0' : formatAmps(tick)}
              </text>
            </g>
          ))}
          <path d={`M${left} ${top - 4}V${bottom}`} className="chart-axis" />
          {sorted.map(({ row, other }, i) => (
            <g key={rowKey(row)} transform={`translate(0 ${top + i * rowHeight})`}>
              <text x={left - 8} y={22} className="chart-end">
                {clip(row.name, 24)}
              </text>
              {bars.map(({ field }, k) => (
                <Bar
                  key={field}
                  y={k * 12.5}
                  x={left}
                  end={x(row[field])}
                  otherEnd={other && x(other[field])}
                  label={formatAmps(row[field])}
                  otherLabel={other && formatAmps(other[field])}
                  look={k === 0 ? 'chart-open' : k === 1 ? 'chart-solid' : 'chart-outline'}
                  fill={k === 2 ? hatch : undefined}
                />
              ))}
            </g>
          ))}
        </>
      )}
    </Chart>
  );
}

interface BarProps {
  x: number;
  y: number;
  end: number;
  otherEnd: number | undefined;
  label: string;
  otherLabel: string | undefined;
  look: string;
  fill: string | undefined;
}

/** A bar with its figure behind it; what it would be is a dashed stroke across. */
function Bar({ x, y, end, otherEnd, label, otherLabel, look, fill }: BarProps) {
  const words = otherLabel !== undefined && otherLabel !== label ? `${label}, if ${otherLabel}` : label;
  return (
    <>
      <Filled x={x} y={y} width={Math.max(end - x, 0)} height={9} look={look} fill={fill} />
      {otherEnd !== undefined && Math.abs(otherEnd - end) > 0.5 && (
        <>
          <path d={`M${Math.min(end, otherEnd)} ${y + 4.5}H${otherEnd}`} className="chart-line what-if-line" />
          <path d={`M${otherEnd} ${y - 1}V${y + 10}`} className="chart-halo" />
          <path d={`M${otherEnd} ${y - 2}V${y + 11}`} className="chart-tick" />
        </>
      )}
      <text x={Math.max(end, otherEnd ?? 0) + 5} y={y + 8.5} className="chart-small">
        {words}
      </text>
    </>
  );
}

function Legend({ hatch }: { hatch: string }) {
  return (
    <>
      {bars.map(({ field, word }, i) => (
        <g key={field} transform={`translate(${left + i * 90} 8)`}>
          <Filled
            x={0}
            y={0}
            width={18}
            height={9}
            look={i === 0 ? 'chart-open' : i === 1 ? 'chart-solid' : 'chart-outline'}
            fill={i === 2 ? hatch : undefined}
          />
          <text x={23} y={9} className="chart-small">
            {word}
          </text>
        </g>
      ))}
    </>
  );
}

interface FilledProps {
  x: number;
  y: number;
  width: number;
  height: number;
  look: string;
  fill: string | undefined;
}

/** The pattern lies under an outline of its own: a style sheet's fill would go before an attribute's. */
function Filled({ look, fill, ...box }: FilledProps) {
  return (
    <>
      {fill && <rect {...box} fill={fill} />}
      <rect {...box} className={look} />
    </>
  );
}

const peakOf = (row: LoadRow): number => Math.max(row.receiveAmps, row.sendingAmps, row.averageAmps);

function sentenceOf(rows: readonly Compared<LoadRow>[]): string {
  const parts = rows.map(
    ({ row, other }) =>
      `${row.name} ${formatAmps(row.receiveAmps)} in receive, ${formatAmps(row.sendingAmps)} sending, ` +
      `${formatAmps(row.averageAmps)} on average${other ? `, if ${formatAmps(other.sendingAmps)} sending` : ''}`,
  );
  return `Bars of what each load draws: ${parts.join('; ')}.`;
}
