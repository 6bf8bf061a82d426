import { chartWidth } from './Chart.tsx';
import { clip } from './clip.ts';
import { axisRange, roundTicks, scaleOf } from './scale.ts';

/** A level, and how one got to it from the one before. */
export interface Stair {
  readonly name: string;
  readonly level: number;
  readonly levelLabel: string;
  /** Empty where nothing changes. */
  readonly changeLabel: string;
  /** The level with other figures supposed. */
  readonly other?: number | undefined;
}

interface Props {
  stairs: readonly Stair[];
  /** The least that the axis spans. */
  leastSpan: number;
  formatTick: (value: number) => string;
  hatch: string;
}

const left = 230;
const right = 440;
const top = 24;
const rowHeight = 21;

/** The height that so many stairs take. */
export const stairsHeight = (count: number): number => top + count * rowHeight + 8;

/** A staircase read from the top: a row for each part with its name, what it takes as a hatched box, and what is left. */
export function StairsChart({ stairs, leastSpan, formatTick, hatch }: Props) {
  const levels = stairs.flatMap(({ level, other = level }) => [level, other]);
  const { from, to } = axisRange(levels, leastSpan);
  const x = scaleOf(from, to, left, right);
  const y = (i: number) => top + i * rowHeight;
  const bottom = y(stairs.length);
  return (
    <>
      {roundTicks(from, to, 4).map((tick) => (
        <g key={tick}>
          <path d={`M${x(tick)} ${top - 4}V${bottom}`} className="chart-grid" />
          <text x={x(tick)} y={top - 10} className="chart-small chart-middle">
            {formatTick(tick)}
          </text>
        </g>
      ))}
      {stairs.map((stair, i) => {
        const before = x(stairs[i - 1]?.level ?? stair.level);
        const after = x(stair.level);
        const isEdge = i === 0 || i === stairs.length - 1;
        return (
          // The same contact is met on the way out and on the way back.
          // biome-ignore lint/suspicious/noArrayIndexKey: the place in the row is what tells them apart
          <g key={i}>
            <text x={left - 10} y={y(i) + 14} className={isEdge ? 'chart-end chart-strong' : 'chart-end'}>
              {clip(stair.name, 36)}
            </text>
            <rect
              x={Math.min(before, after)}
              y={y(i) + 3}
              width={Math.abs(after - before)}
              height={rowHeight - 6}
              fill={hatch}
            />
            <rect
              x={Math.min(before, after)}
              y={y(i) + 3}
              width={Math.abs(after - before)}
              height={rowHeight - 6}
              className="chart-outline"
            />
            <text x={right + 76} y={y(i) + 14} className="chart-small chart-end">
              {stair.changeLabel}
            </text>
            <text x={chartWidth - 4} y={y(i) + 14} className={isEdge ? 'chart-end chart-strong' : 'chart-end'}>
              {stair.levelLabel}
            </text>
          </g>
        );
      })}
      {stairs.some(({ other }) => other !== undefined) && (
        <path
          d={lineOf(
            stairs.map(({ level, other = level }) => x(other)),
            y,
          )}
          className="chart-line what-if-line"
        />
      )}
      <path
        d={lineOf(
          stairs.map(({ level }) => x(level)),
          y,
        )}
        className="chart-line"
      />
    </>
  );
}

/** Down through each row at its level. */
const lineOf = (xs: readonly number[], y: (i: number) => number): string =>
  xs.map((x, i) => `${i === 0 ? `M${x} ${y(0) + 3}` : `H${x}`}V${y(i) + rowHeight - 3}`).join('');
