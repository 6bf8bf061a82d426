import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { needs } from '../needs.ts';

/** `npm test` installs it where apt is there. */
export const needsNgspice = needs('ngspice', spawnSync('ngspice', ['--version']).status === 0);

/** Volts by node number as ngspice works them out from the deck. */
export function runNgspice(deck: string): Map<number, number> {
  const folder = mkdtempSync(path.join(tmpdir(), 'deck-'));
  try {
    const file = path.join(folder, 'station.cir');
    writeFileSync(file, deck);
    const { stdout } = spawnSync('ngspice', ['-b', file], { encoding: 'utf8', maxBuffer: 1e8 });
    return new Map([...stdout.matchAll(/^v\(n(\d+)\) = (\S+)/gm)].map((m) => [Number(m[1]), Number(m[2])]));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
