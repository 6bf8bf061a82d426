import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type ServedBook, serveBook } from '../../electron/station/book/serve-book.ts';
import { ask, statusOf } from '../electron/start/ask.ts';

let folder = '';
let served: ServedBook;
const steps: unknown[] = [];
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'serve-book-'));
  writeFileSync(path.join(folder, 'index.html'), '<body>page</body>');
  writeFileSync(path.join(folder, 'a.js'), 'let a;');
});
afterAll(() => rmSync(folder, { recursive: true }));
beforeEach(async () => {
  steps.length = 0;
  served = await serveBook(folder, { text: 'my </script> station', want: 'book', paper: 'a4' }, (page) =>
    steps.push(page),
  );
});
afterEach(() => served.close());

const inside = (name: string) => new URL(name, served.url).pathname + new URL(name, served.url).search;
const get = (target: string, how = {}) => ask(served.url, target, how);

describe('the page that was given the address', () => {
  it('gets the station, under the page policy, and says when the book is there', async () => {
    const page = await get(inside('.'));
    expect(page).toContain('my \\u003c/script> station');
    expect(page).toMatch(/^content-security-policy: .*frame-ancestors 'none'\r$/im);
    expect(await get(inside('a.js'))).toContain('let a;');
    const waited = get(inside('book-waits'));
    expect(served.page()).toBe('asked');
    expect(statusOf(await get(inside('book-is-there')))).toBe(204);
    expect(statusOf(await waited)).toBe(204);
    expect(steps).toEqual(['asked', 'made']);
  });
  it('says what went wrong, once', async () => {
    await get(inside('.'));
    await get(inside('book-is-there?problem=no%20fonts'));
    await get(inside('book-is-there'));
    expect(served.page()).toEqual({ problem: 'no fonts' });
  });
  it('is handed out once: the address may have been seen in a list of processes', async () => {
    await get(inside('.'));
    const again = await get(inside('.'));
    expect(statusOf(again)).toBe(404);
    expect(again).not.toContain('station');
  });
  it('is not waited for before it was asked for', async () => {
    await get(inside('book-is-there'));
    expect(served.page()).toBe('waiting');
  });
});

describe('a stranger', () => {
  it.each([
    '/',
    '/index.html',
    '/a.js',
    '/book-waits',
    '/book-is-there?problem=%1b%5b2J',
    `/${'0'.repeat(32)}/`,
    '/../',
    '//',
    '/%00',
    '/%zz',
  ])('who does not know the secret gets nothing by %s, and changes nothing', async (target) => {
    const answer = await get(target);
    expect(statusOf(answer)).toBeGreaterThanOrEqual(400);
    expect(answer).not.toMatch(/station|let a;/);
    expect(served.page()).toBe('waiting');
  });
  it.each([{ host: 'example.invalid' }, { method: 'POST' }])(
    'gets nothing with the secret either as %j',
    async (how) => {
      expect(await get(inside('.'), how)).not.toContain('station');
      expect(served.page()).toBe('waiting');
    },
  );
  it('finds another secret each time', async () => {
    const other = await serveBook(folder, { text: '', want: 'svg', paper: 'a4' });
    await other.close();
    expect(new URL(other.url).pathname).toMatch(/^\/[\da-f]{32}\/$/);
    expect(new URL(other.url).pathname).not.toBe(new URL(served.url).pathname);
  });
});
