import { formatMillivolts, formatVolts, type WayRow } from '../../../../core/index.ts';
import type { Compared } from '../tables/compared.ts';
import { Chart } from './Chart.tsx';
import { type Stair, StairsChart, stairsHeight } from './StairsChart.tsx';

interface Props {
  way: Compared<WayRow>;
  /** A choice of another way. */
  tools?: React.ReactNode;
}

/** Volts from a supply along the way to a load and back, part by part, while sending. */
export function VoltsChart({ way: { row, other }, tools }: Props) {
  const stairs = stairsOf(row, other);
  return (
    <Chart
      title={`Volts on the way to ${row.name}`}
      sentence={sentenceOf(row)}
      height={stairsHeight(stairs.length)}
      fileName="volts"
      tools={tools}
      note={
        `While sending; the line is what is left between plus and minus. ${row.name} works from ` +
        `${Number(row.minV.toFixed(2))} V.${other ? ` Dashed: what if, from ${formatVolts(other.supplyVolts)} to ${formatVolts(other.loadVolts)}, drawn from the same start.` : ''}`
      }
    >
      {(hatch) => (
        <StairsChart stairs={stairs} leastSpan={0.02} formatTick={(v) => `${Number(v.toFixed(3))} V`} hatch={hatch} />
      )}
    </Chart>
  );
}

function stairsOf(row: WayRow, other: WayRow | undefined): Stair[] {
  // With other figures the current may go another way. Both start at the same level, or a supply of other volts would
  // push the steps together.
  const same = other && other.parts.length === row.parts.length ? other : undefined;
  let level = row.supplyVolts;
  let otherLevel = same && level;
  const first = {
    name: `${row.supply} gives`,
    level,
    levelLabel: formatVolts(level),
    changeLabel: '',
    other: otherLevel,
  };
  const parts = row.parts.map((part, i): Stair => {
    level -= part.dropVolts;
    if (otherLevel !== undefined) otherLevel -= same?.parts[i]?.dropVolts ?? 0;
    const name = part.back ? `${part.name}, back` : part.name;
    return { name, level, levelLabel: '', changeLabel: formatMillivolts(-part.dropVolts), other: otherLevel };
  });
  const levelLabel = formatVolts(row.loadVolts);
  return [
    first,
    ...parts,
    { name: `${row.name} gets`, level: row.loadVolts, levelLabel, changeLabel: '', other: otherLevel },
  ];
}

function sentenceOf(row: WayRow): string {
  const most = row.parts.toSorted((a, b) => b.dropVolts - a.dropVolts).slice(0, 3);
  const parts = most.map((p) => `${p.name}${p.back ? ' on the way back' : ''} ${formatMillivolts(p.dropVolts)}`);
  return (
    `Volts in steps from ${row.supply}, ${formatVolts(row.supplyVolts)}, to ${row.name}, ${formatVolts(row.loadVolts)}. ` +
    `Most of the ${formatMillivolts(row.dropVolts)} that are lost go to ${parts.join(', ')}.`
  );
}
