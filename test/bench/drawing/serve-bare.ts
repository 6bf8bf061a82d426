import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import react from '@vitejs/plugin-react';
import { build } from 'vite';
import { serve } from '../../../electron/start/serve.mjs';

/** Builds the bare page into a folder that is there for this run only, and serves it. */
export async function serveBare(source: string): Promise<{ url: string; close(): Promise<void> }> {
  const outDir = mkdtempSync(path.join(tmpdir(), 'bare-canvas-'));
  await build({
    configFile: false,
    root: source,
    base: './',
    plugins: [react()],
    logLevel: 'warn',
    build: { outDir, emptyOutDir: true, target: 'es2023' },
  });
  const server = await serve(outDir, 0);
  return {
    url: server.url,
    close: async () => {
      await server.close();
      rmSync(outDir, { recursive: true });
    },
  };
}
