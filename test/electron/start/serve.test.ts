import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { serve } from '../../../electron/start/serve.mjs';

let folder = '';
let server: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'stationwright-serve-'));
  mkdirSync(path.join(folder, 'page'));
  writeFileSync(path.join(folder, 'page/index.html'), 'page');
  writeFileSync(path.join(folder, 'page/a.js'), 'script');
  writeFileSync(path.join(folder, 'secret'), 'secret');
  mkdirSync(path.join(folder, 'page-too'));
  writeFileSync(path.join(folder, 'page-too/b'), 'neighbour');
  server = await serve(path.join(folder, 'page'), 0);
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

/** By hand: fetch would tidy the path before it goes out. */
function get(address: string): Promise<{ status?: number; type?: string }> {
  return new Promise((resolve, reject) => {
    const { hostname, port } = new URL(server.url);
    request({ hostname, port, path: address }, (answer) => {
      answer.resume();
      resolve({ status: answer.statusCode ?? 0, type: answer.headers['content-type'] ?? '' });
    })
      .on('error', reject)
      .end();
  });
}

it.each([
  ['/', 200, 'text/html; charset=utf-8'],
  ['/a.js?x=1', 200, 'text/javascript; charset=utf-8'],
  ['/none.js', 404, 'text/plain'],
  ['/../secret', 404, 'text/plain'],
  ['/..%2fsecret', 404, 'text/plain'],
  ['/%2e%2e/secret', 404, 'text/plain'],
  ['/..%2fpage-too/b', 404, 'text/plain'],
  ['/a.js%00.html', 404, 'text/plain'],
  ['/%zz', 404, 'text/plain'],
])('%s is answered with %i', async (address, status, type) => {
  expect(await get(address)).toEqual({ status, type });
});

it('takes the next port when one is taken', async () => {
  const taken = Number(new URL(server.url).port);
  const other = await serve(folder, taken);
  expect(Number(new URL(other.url).port)).toBeGreaterThan(taken);
  await other.close();
});
