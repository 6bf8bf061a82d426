// npm run acts: draws what a hand could do wrong to a station, one thing at a time, and counts how often it is named.
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { readStation } from '../../core/station/file/read-station.ts';
import { survey } from '../../core/survey.ts';
import { isHarm } from '../../core/whatif/acts/harm.ts';
import { judgeActs, type Verdict } from './judge-acts.ts';
import { allStations, type Looked } from './stations.ts';

const { positionals, values } = parseArgs({
  args: process.argv.slice(3),
  options: { only: { type: 'string', default: '' } },
  allowPositionals: true,
});

function* named(files: readonly string[]): Generator<Looked> {
  for (const name of files) {
    const read = readStation(readFileSync(name, 'utf8'));
    if (!('station' in read)) throw new Error(`${name} is not a station that can be read`);
    yield { name, station: read.station, every: 1 };
  }
}

const all: Verdict[] = [];
const wanted = new RegExp(values.only);
for (const { name, station, every } of positionals.length > 0 ? named(positionals) : allStations()) {
  if (!wanted.test(name)) continue;
  if (survey(station).findings.some(isHarm)) {
    console.log(`${name}: something is wrong with it as it is drawn; left out`);
    continue;
  }
  const verdicts = [...judgeActs(station, every)];
  all.push(...verdicts);
  const some = every > 1 ? ` (one in ${every} looked at)` : '';
  if (verdicts.length > 0) console.log(`${name}: ${count(verdicts)}${some}`);
  for (const { act, named, fixed, said } of verdicts) {
    if (named && fixed) continue;
    console.log(`  ${named ? 'not put right' : fixed ? 'another is named' : 'not named'}: ${act.words}; said: ${said}`);
  }
}
console.log(`acts ${count(all)}`);

function count(verdicts: readonly Verdict[]): string {
  const dangers = verdicts.filter((v) => v.severity === 'danger');
  const of = (list: readonly Verdict[]) => `${list.filter((v) => v.named).length} of ${list.length}`;
  return `named ${of(verdicts)} (${of(dangers)} dangers), fixed ${verdicts.filter((v) => v.fixed).length} of ${verdicts.length}`;
}
