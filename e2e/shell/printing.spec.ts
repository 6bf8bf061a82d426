import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { expect, onEachShell, test } from './test.ts';

const built = path.join(import.meta.dirname, '../../dist/electron/print-page.cjs');

/** The shell's program for printing, as an app of its own. */
function printingApp(folder: string): string {
  const app = path.join(folder, 'printing');
  mkdirSync(app);
  copyFileSync(built, path.join(app, 'print-page.cjs'));
  writeFileSync(path.join(app, 'package.json'), JSON.stringify({ name: 'printing', main: 'print-page.cjs' }));
  return app;
}

interface Asked {
  readonly server: Server;
  readonly address: string;
  /** What was asked for, in order. */
  readonly paths: string[];
  /** A part of the page that comes only when the test sends it: until then the page is not loaded, nor printed. */
  readonly late: ServerResponse[];
}

async function listen(page: string): Promise<Asked> {
  const [paths, late]: [string[], ServerResponse[]] = [[], []];
  const server = createServer((request, response) => {
    paths.push(request.url ?? '');
    response.setHeader('access-control-allow-origin', '*').setHeader('content-type', 'text/html');
    if (request.url === '/late') late.push(response);
    else response.end(page);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return { server, address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, paths, late };
}

onEachShell(() => {
  test.slow();

  test('the page that is printed reaches its own origin and nothing else', async ({ launch, folder }) => {
    const stranger = await listen('stranger');
    const own = await listen(pageThatTries(stranger.address));
    const pdf = path.join(folder, 'out.pdf');
    const launched = launch(printingApp(folder), [`${own.address}/index.html`, pdf]);
    await expect
      .poll(() => own.paths, { timeout: 60_000 })
      .toEqual(expect.arrayContaining(['/late', '/tried?fetch=blocked&permission=denied']));
    for (const part of own.late) part.end();
    expect(await (await launched).ended).toBe(0);
    for (const { server } of [stranger, own]) server.close();
    expect(existsSync(pdf) && readFileSync(pdf, 'latin1').slice(0, 5)).toBe('%PDF-');
    expect(stranger.paths).toEqual([]);
  });
});

/** Tries the ways out, and says at its own address what came of it. */
const pageThatTries = (other: string) => `<!doctype html><title>Page</title><h1>Paper</h1>
<img src="/late"><img src="${other}/picture"><script>
(async () => {
  const fetched = await fetch('${other}/data').then(() => 'open', () => 'blocked');
  const { state } = await navigator.permissions.query({ name: 'geolocation' });
  await fetch('/tried?fetch=' + fetched + '&permission=' + state);
})();
</script>`;
