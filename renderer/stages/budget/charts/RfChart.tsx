import { formatDbm, formatLoss, formatWatts, type RfReport } from '../../../../core/index.ts';
import { Chart } from './Chart.tsx';
import { type Stair, StairsChart, stairsHeight } from './StairsChart.tsx';

interface Props {
  rf: RfReport;
  other: RfReport | undefined;
}

/** The level of RF from a transmitter to where its power ends, after each cable and unit. */
export function RfChart({ rf, other }: Props) {
  const stairs = stairsOf(rf, other);
  const last = rf.staircase.at(-1);
  const [otherFirst, otherLast] = [other?.staircase[0], other?.staircase.at(-1)];
  return (
    <Chart
      title={`RF from ${rf.transmitter} to ${last?.name ?? 'nowhere'}`}
      sentence={sentenceOf(rf)}
      height={stairsHeight(stairs.length)}
      fileName="rf-levels"
      note={
        `${rf.controlName} pressed; levels in dBm, with what the SWR takes.` +
        (otherFirst && otherLast
          ? ` Dashed: what if, from ${levelWords(otherFirst)} to ${levelWords(otherLast)}, drawn from the same start.`
          : '')
      }
    >
      {(hatch) => (
        <StairsChart
          stairs={stairs}
          leastSpan={1}
          formatTick={(dbm) => `${Number(dbm.toFixed(2))} dBm`}
          hatch={hatch}
        />
      )}
    </Chart>
  );
}

type Step = RfReport['staircase'][number];

const levelWords = ({ dbm, watts }: Step): string =>
  watts > 0 ? `${formatDbm(dbm)}, ${formatWatts(watts)}` : 'nothing';

/** `−0.20 dB`, `+11.30 dB`; `all of it` where nothing is left. */
function change(lossDb: number): string {
  if (Math.abs(lossDb) < 0.005) return '';
  const size = formatLoss(Math.abs(lossDb));
  return size === 'all' ? 'all of it' : `${lossDb > 0 ? '−' : '+'}${size}`;
}

function stairsOf(rf: RfReport, other: RfReport | undefined): Stair[] {
  // Nothing at all has no place on an axis of decibels: it stands well below the rest.
  const finite = [rf, ...(other ? [other] : [])].flatMap((r) => r.staircase.map((s) => s.dbm)).filter(Number.isFinite);
  const floor = Math.min(0, ...finite) - 10;
  const same = other?.staircase.length === rf.staircase.length ? other : undefined;
  // Both start at the same level, or another power would push the steps together.
  const shift = (rf.staircase[0]?.dbm ?? 0) - (same?.staircase[0]?.dbm ?? 0);
  return rf.staircase.map((step, i) => ({
    name: step.name,
    level: Math.max(step.dbm, floor),
    levelLabel: levelWords(step),
    changeLabel: i === 0 ? '' : change(step.lossDb),
    other: same && Math.max((same.staircase[i]?.dbm ?? floor) + shift, floor),
  }));
}

function sentenceOf({ transmitter, staircase }: RfReport): string {
  const [first, last] = [staircase[0], staircase.at(-1)];
  if (!first || !last) return `${transmitter} sends nothing.`;
  const losses = staircase.slice(1).filter((s) => Math.abs(s.lossDb) >= 0.005);
  const parts = losses.map((s) => `${s.name} ${change(s.lossDb)}`);
  return (
    `RF level in steps from ${transmitter}, ${levelWords(first)}, to ${last.name}, ${levelWords(last)}` +
    `${parts.length > 0 ? `: ${parts.join(', ')}` : ''}.`
  );
}
