import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { pagePolicy } from '../electron/start/page-policy.mjs';

/** Put in at build time only: the development server needs inline scripts and a connection. */
const addPagePolicy: Plugin = {
  name: 'add-page-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: pagePolicy },
      injectTo: 'head-prepend',
    },
  ],
};

export default defineConfig({
  root: import.meta.dirname,
  // Relative addresses: the same build is served from the desktop shell and from any folder of a web server.
  base: './',
  plugins: [react(), addPagePolicy],
  build: {
    outDir: '../dist/renderer',
    emptyOutDir: true,
    target: 'es2023',
    modulePreload: { polyfill: false },
    // An inlined file is a data: address, which the page policy refuses.
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 2000,
  },
  worker: { format: 'es' },
});
