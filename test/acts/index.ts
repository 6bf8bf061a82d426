import { judgeActs } from './judge-acts.ts';
import { rightStations } from './stations.ts';

const only = process.env.ONLY;
const every = Number(process.env.EVERY ?? 1);
const sum: any = {};
const t0 = process.cpuUsage().user;
for (const [name, station] of rightStations()) {
  if (only && !new RegExp(only).test(name)) continue;
  const c = { n: 0, named: 0, fixed: 0 };
  const t = process.cpuUsage().user;
  const lines: string[] = [];
  for (const v of judgeActs(station, every)) {
    c.n++;
    if (v.named) c.named++;
    if (v.fixed) c.fixed++;
    const k = (sum[v.act.kind] ??= { n: 0, named: 0, fixed: 0, d: 0, dn: 0 });
    k.n++;
    if (v.named) k.named++;
    if (v.fixed) k.fixed++;
    if (v.severity === 'danger') {
      k.d++;
      if (v.named) k.dn++;
    }
    if (!v.named || !v.fixed)
      lines.push(`   ${v.named ? 'n' : '-'}${v.fixed ? 'f' : '-'} ${v.act.words} [${v.act.kind}] => ${v.said}`);
  }
  console.log(name, JSON.stringify(c), ((process.cpuUsage().user - t) / 1e6).toFixed(1), 's');
  if (process.env.SHOW) for (const l of lines) console.log(l);
}
console.log(JSON.stringify(sum, null, 1), ((process.cpuUsage().user - t0) / 1e6).toFixed(1), 's');
