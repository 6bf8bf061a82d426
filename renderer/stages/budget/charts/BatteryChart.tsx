import { type BatteryRow, formatHours, formatPercent, formatVolts } from '../../../../core/index.ts';
import { ExportTable } from '../ExportTable.tsx';
import type { Compared } from '../tables/compared.ts';
import { Chart } from './Chart.tsx';
import { axisRange, roundTicks, type Scale, scaleOf } from './scale.ts';

const left = 58;
const right = 600;
const charge = { top: 20, bottom: 100 };
const volts = { top: 134, bottom: 254 };
const height = 292;

/** Charge and volts of a battery over the operating time, until something quits. */
export function BatteryChart({ battery: { row, other } }: { battery: Compared<BatteryRow> }) {
  const course = row.course;
  const end = course.at(-1);
  if (!end) return null;
  const otherCourse = other?.course ?? [];
  const hours = Math.max(end.hours, otherCourse.at(-1)?.hours ?? 0);
  const levels = [...course, ...otherCourse].flatMap((p) => [p.receiveVolts, p.sendingVolts]);
  const { from, to } = axisRange([...levels, row.cutOffV], 0.5);
  const x = scaleOf(0, hours, left, right);
  const yCharge = scaleOf(0, 1, charge.bottom, charge.top);
  const yVolts = scaleOf(from, to, volts.bottom, volts.top);
  const [start] = course;
  const quits = row.quits ? `${row.quits} quits` : 'empty';
  return (
    <Chart
      title={`${row.name} over time`}
      sentence={
        `The charge of ${row.name} falls from ${formatPercent(row.charge)} to ${formatPercent(end.charge)} in ` +
        `${formatHours(end.hours)} of operating; its volts while sending fall from ` +
        `${formatVolts(start?.sendingVolts ?? 0)} to ${formatVolts(end.sendingVolts)}; its cut-off is at ` +
        `${formatVolts(row.cutOffV)}. Then: ${quits}.`
      }
      height={height}
      fileName="battery-over-time"
      tools={<ExportTable name="courses" />}
      note={`By the plan, at ${row.averageAmps.toPrecision(3)} A on average; the plan asks for ${row.planHours} h a day.`}
    >
      {() => (
        <>
          {roundTicks(0, hours, 8).map((tick) => (
            <g key={tick}>
              <path
                d={`M${x(tick)} ${charge.top}V${charge.bottom}M${x(tick)} ${volts.top}V${volts.bottom}`}
                className="chart-grid"
              />
              <text x={x(tick)} y={volts.bottom + 15} className="chart-small chart-middle">
                {tick} h
              </text>
            </g>
          ))}
          <Rows ticks={[0, 0.5, 1]} y={yCharge} format={formatPercent} />
          <Rows ticks={roundTicks(from, to, 5)} y={yVolts} format={(v) => `${v} V`} />
          <text x={left} y={12} className="chart-strong">
            Charge
          </text>
          <text x={left} y={126} className="chart-strong">
            Volts at its terminals: solid in receive, dashed sending
          </text>
          <path d={lineOf(course.map((p) => [x(p.hours), yCharge(p.charge)]))} className="chart-line" />
          <path d={lineOf(course.map((p) => [x(p.hours), yVolts(p.receiveVolts)]))} className="chart-line" />
          <path d={lineOf(course.map((p) => [x(p.hours), yVolts(p.sendingVolts)]))} className="chart-line dashed" />
          <path d={`M${left} ${yVolts(row.cutOffV)}H${right}`} className="chart-line dotted" />
          <text x={right - 4} y={yVolts(row.cutOffV) - 5} className="chart-small chart-end">
            cut-off {formatVolts(row.cutOffV)}
          </text>
          <Other points={otherCourse.map((p) => [x(p.hours), yCharge(p.charge)])} />
          <Other points={otherCourse.map((p) => [x(p.hours), yVolts(p.sendingVolts)])} />
          {row.planHours > 0 && row.planHours < hours && (
            <Mark at={x(row.planHours)} y={charge.top} words={`plan, ${row.planHours} h`} />
          )}
          <circle cx={x(end.hours)} cy={yCharge(end.charge)} r="4" className="chart-solid" />
          <text x={x(end.hours)} y={volts.bottom + 31} className="chart-end chart-strong">
            {quits} after {formatHours(end.hours)}
          </text>
        </>
      )}
    </Chart>
  );
}

function Rows({ ticks, y, format }: { ticks: readonly number[]; y: Scale; format: (value: number) => string }) {
  return ticks.map((tick) => (
    <g key={tick}>
      <path d={`M${left} ${y(tick)}H${right}`} className="chart-grid" />
      <text x={left - 6} y={y(tick) + 4} className="chart-small chart-end">
        {format(tick)}
      </text>
    </g>
  ));
}

/** A line with other figures supposed, named under the middle of its first piece. */
function Other({ points }: { points: readonly (readonly [number, number])[] }) {
  const [start, next] = points;
  if (!start || !next) return null;
  return (
    <>
      <path d={lineOf(points)} className="chart-line what-if-line" />
      <text x={(start[0] + next[0]) / 2} y={(start[1] + next[1]) / 2 + 14} className="chart-small chart-middle">
        what if
      </text>
    </>
  );
}

/** A moment in time, across both pictures. */
function Mark({ at, y, words }: { at: number; y: number; words: string }) {
  return (
    <>
      <path d={`M${at} ${y}V${charge.bottom}M${at} ${volts.top}V${volts.bottom}`} className="chart-line dotted" />
      <text x={at + 5} y={charge.bottom - 5} className="chart-small">
        {words}
      </text>
    </>
  );
}

const lineOf = (points: readonly (readonly [number, number])[]): string =>
  points.map(([px, py], i) => `${i === 0 ? 'M' : 'L'}${px} ${py}`).join('');
