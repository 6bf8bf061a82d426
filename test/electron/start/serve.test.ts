import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pagePolicy } from '../../../electron/start/page-policy.mjs';
import { serve } from '../../../electron/start/serve.mjs';
import { ask, askRaw, statusOf } from './ask.ts';

let folder = '';
let server: Awaited<ReturnType<typeof serve>>;
const inPage = (name: string) => path.join(folder, 'page', name);
beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'stationwright-serve-'));
  mkdirSync(inPage('sub'), { recursive: true });
  writeFileSync(inPage('index.html'), 'page');
  writeFileSync(inPage('a.js'), 'let a;');
  writeFileSync(path.join(folder, 'secret'), 'hidden words');
  mkdirSync(path.join(folder, 'page-too'));
  writeFileSync(path.join(folder, 'page-too/b'), 'hidden words');
  symlinkSync(path.join(folder, 'secret'), inPage('link.js'));
  symlinkSync(path.join(folder, 'page-too'), inPage('linked'));
  symlinkSync(inPage('a.js'), inPage('same.js'));
  server = await serve(path.join(folder, 'page'), 0);
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

const get = (target: string, how = {}) => ask(server.url, target, how);
const here = () => new URL(server.url).host;
const port = () => new URL(server.url).port;

describe('files', () => {
  it.each([
    ['/', 200],
    ['/a.js?x=1', 200],
    ['/%61.js', 200],
    ['/same.js', 200],
    ['/none.js', 404],
    ['/sub', 404],
    ['/sub/', 404],
    ['/../secret', 404],
    ['/..%2fsecret', 404],
    ['/%2e%2e/secret', 404],
    ['/..%2fpage-too/b', 404],
    ['/a.js%00.html', 404],
    ['/%zz', 404],
    ['/%ff', 404],
    [`/${'a'.repeat(5000)}`, 404],
    ['/link.js', 404],
    ['/linked/b', 404],
  ])('%s is answered with %i', async (target, status) => {
    const answer = await get(target);
    expect(statusOf(answer)).toBe(status);
    expect(answer).not.toContain('hidden words');
  });

  it('come with their type and the page policy, which nobody may frame', async () => {
    const answer = await get('/a.js');
    expect(answer).toMatch(/^content-type: text\/javascript; charset=utf-8\r$/im);
    expect(answer).toContain(`content-security-policy: ${pagePolicy}; frame-ancestors 'none'\r\n`);
    expect(answer).toMatch(/^x-content-type-options: nosniff\r$/im);
    expect(answer).toMatch(/^cross-origin-resource-policy: same-origin\r$/im);
    expect(answer).toContain('\nlet a;\r\n');
  });
  it('HEAD has the head alone', async () =>
    expect(await get('/a.js', { method: 'HEAD' })).toMatch(/200 OK[\s\S]*\r\n\r\n$/));
});

describe('who may ask for what', () => {
  it.each(['POST', 'PUT', 'DELETE', 'OPTIONS', 'PATCH', 'TRACE'])('%s is not done here', async (method) => {
    const answer = await get('/', { method });
    expect(statusOf(answer)).toBe(405);
    expect(answer).toMatch(/^allow: GET, HEAD\r$/im);
  });
  // A name of somebody else's that was pointed to this machine: its pages would read ours.
  it.each([
    ['localhost', () => `localhost:${port()}`, 200],
    ['LOCALHOST', () => `LocalHost:${port()}`, 200],
    ['another name', () => `example.invalid:${port()}`, 421],
    ['no port', () => '127.0.0.1', 421],
    ['another port', () => '127.0.0.1:1', 421],
    ['more than the address', () => `${here()}.example.invalid`, 421],
    ['a user in it', () => `x@${here()}`, 421],
    ['nothing', () => '', 421],
  ] as [string, () => string, number][])('asked by %s', async (_name, host, status) =>
    expect(statusOf(await get('/', { host: host() }))).toBe(status),
  );
});

it('survives any request', async () => {
  const lines = [
    'GET // HTTP/1.1',
    'GET //example.invalid/a.js HTTP/1.1',
    'GET /// HTTP/1.1',
    'GET * HTTP/1.1',
    'OPTIONS * HTTP/1.1',
    'GET http://example.invalid/a.js HTTP/1.1',
    'GET http:// HTTP/1.1',
    'GET http://[ HTTP/1.1',
    'GET a.js HTTP/1.1',
    'GET ?x HTTP/1.1',
    'GET /\\..\\secret HTTP/1.1',
    'GET /?%zz&&==%00 HTTP/1.1',
    'GET /\u00ff HTTP/1.1',
    `GET /${'a'.repeat(100_000)} HTTP/1.1`,
    'GET / HTTP/9.9',
    'CONNECT example.invalid:443 HTTP/1.1',
    'nonsense',
    '',
  ];
  for (const line of lines) {
    const answer = await askRaw(server.url, `${line}\r\nHost: ${here()}\r\nConnection: close\r\n\r\n`);
    expect(answer, line.slice(0, 60)).not.toMatch(/let a;|hidden words/);
    if (answer !== '' && !line.startsWith('GET /?'))
      expect(statusOf(answer), line.slice(0, 60)).toBeGreaterThanOrEqual(400);
  }
  expect(statusOf(await askRaw(server.url, 'GET / HTTP/1.0\r\n\r\n'))).toBe(421);
  expect(statusOf(await get('/'))).toBe(200);
});

it('takes the next port when one is taken', async () => {
  const taken = Number(port());
  const other = await serve(folder, taken);
  expect(Number(new URL(other.url).port)).toBeGreaterThan(taken);
  await other.close();
});

it('a port that can’t be had is told, not thrown', async () => {
  // Taken after this line, by us or by somebody, and there is none above it.
  const last = await serve(folder, 65535).catch(() => null);
  for (const port of [65535, 65536, -1, Number.NaN])
    await expect(serve(folder, port)).rejects.toThrow(/port|EADDRINUSE/i);
  await last?.close();
});
