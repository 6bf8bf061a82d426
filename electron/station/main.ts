// The command line as a process: `station COMMAND FILE`. What it does and says is in run.ts.
import { writeSync } from 'node:fs';
import { print } from './print.ts';
import { printable } from './printable.ts';
import { run } from './run.ts';
import { tellTrouble } from './tell-trouble.ts';
import { terminalLine } from './terminal-line.ts';

// What no call can catch, such as a listener that throws.
process.on('uncaughtException', (error) => {
  try {
    writeSync(2, printable(`${tellTrouble({ doing: 'running the command line', error, station: null })}\n`));
  } finally {
    process.exit(3);
  }
});

const { stdout, stderr } = process;
const { progress, clear } = terminalLine(stderr);
const say = (sentence: string) => void print(stderr, printable(`${sentence}\n`));

const { out, err, status } = await run(process.argv.slice(2), { input: () => process.stdin, say, progress });
clear();
// Data for other programs stay as they are; a terminal shows names, and does not obey them.
const failed = await print(stdout, stdout.isTTY ? printable(out) : out);
const told = failed === null ? err : `${err}The result could not be written: ${failed}.\n`;
if (told !== '') await print(stderr, printable(told));
// Not process.exit(): what a slow reader has not taken yet would be lost.
process.exitCode = failed === null ? status : 2;
