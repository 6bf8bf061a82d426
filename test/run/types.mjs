// Each folder has its own settings (core/ knows neither DOM nor Node), so each is checked by itself. What was found is
// kept, and the next run checks again only what an edit could have changed.
import path from 'node:path';
import { root } from '../../electron/start/set-up.mjs';
import { runCommand } from './command.mjs';

const compiler = path.join(root, 'node_modules/@typescript/native/bin/tsc');

for (const folder of ['core', 'renderer', 'electron', 'test', 'e2e']) {
  const kept = path.join(root, 'dist/types', `${folder}.tsbuildinfo`);
  // Several threads would each work out the same types: together they take twice the computing and are no sooner done.
  const args = [compiler, '--project', folder, '--incremental', '--tsBuildInfoFile', kept, '--singleThreaded'];
  const { status, output } = await runCommand(process.execPath, args);
  if (output) console.log(output.trim());
  if (status !== 0) process.exitCode = 1;
}
