import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach } from 'vitest';

/** A folder of each test's own, gone after it; gives the way to a name in it. */
export function ownFolder(): (name?: string) => string {
  let folder = '';
  beforeEach(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'stationwright-files-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));
  return (name = '') => path.join(folder, name);
}
