// npm run cases: each mistake, what it gave, and a count at the end; `-- --write FOLDER` keeps the stations as files.
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { writeStation } from '../../core/station/file/write-station.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { correct, troubles } from './index.ts';
import { alarmsOfCorrect, alarmsOfRight, missedBy } from './judge.ts';

const folder = process.argv.includes('--write') ? process.argv.at(-1) : undefined;
if (folder !== undefined) mkdirSync(folder, { recursive: true });

function keep(name: string, about: string, station: Station) {
  if (folder === undefined) return;
  writeFileSync(path.join(folder, `${name}.station.json`), writeStation({ ...station, title: `${name}: ${about}` }));
}

let [caught, alarms] = [0, 0];
for (const trouble of troubles) {
  const [missed, alarmed] = [missedBy(trouble), alarmsOfRight(trouble)];
  keep(trouble.id.toLowerCase(), trouble.about, trouble.wrong);
  keep(`${trouble.id.toLowerCase()}-put-right`, trouble.about, trouble.right);
  if (missed.length === 0) caught++;
  if (alarmed.length > 0) alarms++;
  const verdict = missed.length === 0 ? 'caught' : 'MISSED';
  console.log(`${trouble.id}  ${verdict}  ${trouble.about} (${trouble.finds.map((f) => f.rule).join(', ')})`);
  for (const line of missed) console.log(`      ${line}`);
  for (const line of alarmed) console.log(`      false alarm, put right: ${line}`);
}
for (const given of correct) {
  const found = alarmsOfCorrect(given);
  keep(given.id.toLowerCase(), given.about, given.station);
  if (found.length > 0) alarms++;
  console.log(`${given.id}  ${found.length === 0 ? 'silent' : 'ALARM '}  ${given.about}`);
  for (const line of found) console.log(`      false alarm: ${line}`);
}
const right = troubles.length + correct.length;
console.log(`caught ${caught} of ${troubles.length}, false alarms ${alarms} of ${right}`);
process.exitCode = caught === troubles.length && alarms === 0 ? 0 : 1;
