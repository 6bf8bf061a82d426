import { cpus } from 'node:os';
import { surveyReport } from '../../core/reports/survey-report.ts';
import type { Station } from '../../core/station/schema.ts';
import { survey } from '../../core/survey.ts';
import { generateStation } from '../stations/generate.ts';

/** Median and 95th percentile of the times of a warm run, in milliseconds. */
function timed(run: () => unknown, rounds: number): { median: number; late: number } {
  for (let i = 0; i < Math.min(5, rounds); i++) run();
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return { median: times[Math.floor(rounds / 2)] ?? 0, late: times[Math.floor(rounds * 0.95)] ?? 0 };
}

const line = (name: string, station: Station, { median, late }: { median: number; late: number }) =>
  console.log(
    `${name.padEnd(14)} ${String(station.units.length).padStart(4)} units ${String(station.cables.length).padStart(5)} cables  median ${median.toFixed(2).padStart(8)} ms  95th ${late.toFixed(2).padStart(8)} ms`,
  );

console.log(`Processor: ${cpus()[0]?.model ?? 'unknown'}, Node ${process.version}`);
const medians: [number, number][] = [];
for (const size of [20, 60, 200, 500]) {
  const station = generateStation(size);
  const rounds = size <= 60 ? 60 : 20;
  const surveyed = timed(() => survey(station), rounds);
  line('survey', station, surveyed);
  line(
    'all reports',
    station,
    timed(() => surveyReport(station), rounds),
  );
  medians.push([station.cables.length, surveyed.median]);
}
const [first, last] = [medians.at(1), medians.at(-1)];
if (first && last)
  console.log(
    `growth of the survey from ${first[0]} to ${last[0]} cables: exponent ${(Math.log(last[1] / first[1]) / Math.log(last[0] / first[0])).toFixed(2)}`,
  );
