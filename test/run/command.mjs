import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { root } from '../../electron/start/set-up.mjs';

const limitMs = 40 * 60_000;

/**
 * Runs a program to its end, or to its time limit. `status` is null if it was stopped.
 * @param {string} command
 * @param {string[]} args
 * @param {{ env?: NodeJS.ProcessEnv, hear?: (line: string) => boolean }} [how] `env` is added to this process's own; a
 *   line that `hear` takes is left out of the output
 * @returns {Promise<{ status: number | null, output: string, seconds: number }>}
 */
export function runCommand(command, args, { env = {}, hear = () => false } = {}) {
  const started = performance.now();
  const windows = process.platform === 'win32';
  const child = spawn(command, args, {
    cwd: root,
    // Plain text, as it goes to whoever reads the log of a failed check.
    env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0', ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
    // npm is npm.cmd on Windows, which only a shell finds. Elsewhere a group of its own, so that a stop reaches all of it.
    shell: windows,
    detached: !windows,
  });
  let output = '';
  for (const input of [child.stdout, child.stderr])
    createInterface({ input }).on('line', (line) => {
      if (!hear(line)) output += `${line}\n`;
    });
  return new Promise((resolve) => {
    const end = (/** @type {number | null} */ status) => {
      clearTimeout(limit);
      resolve({ status, output, seconds: (performance.now() - started) / 1000 });
    };
    const limit = setTimeout(() => {
      output += `\nStopped: not done after ${limitMs / 60_000} minutes.\n`;
      stopGroup(child.pid);
    }, limitMs);
    child.on('error', (error) => {
      output += error.message;
      end(null);
    });
    child.on('close', end);
  });
}

/** @param {number | undefined} pid */
function stopGroup(pid) {
  if (pid === undefined) return;
  try {
    process.kill(process.platform === 'win32' ? pid : -pid, 'SIGKILL');
  } catch {
    // It ended by itself in the meantime.
  }
}
