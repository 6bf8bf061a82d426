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

/** Fonts of the first picture, by the start of their files' names. */
const firstFonts = /^assets\/atkinson-hyperlegible-(next-latin-(400|600|700|ext-400)|mono-latin-400)-.*\.woff2$/;

/** Text is laid out once, in its own fonts: these come with the page, not after its first layout has asked for them. */
const preloadFonts: Plugin = {
  name: 'preload-fonts',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler: (_html, { bundle = {} }) =>
      Object.keys(bundle)
        .filter((file) => firstFonts.test(file))
        .map((file) => ({
          tag: 'link',
          attrs: { rel: 'preload', as: 'font', type: 'font/woff2', crossorigin: true, href: `./${file}` },
          injectTo: 'head',
        })),
  },
};

/** Without what makes text of it, which waits until something is printed. */
const reactFiles = /node_modules\/(react|react-dom|scheduler)\/(?!.*server)|app\/create-root\.ts$/;

export default defineConfig({
  root: import.meta.dirname,
  // Relative addresses: the same build is served from the desktop shell and from any folder of a web server.
  base: './',
  plugins: [react(), addPagePolicy, preloadFonts],
  build: {
    outDir: '../dist/renderer',
    emptyOutDir: true,
    target: 'es2023',
    modulePreload: { polyfill: false },
    // An inlined file is a data: address, which the page policy refuses.
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 2000,
    // React apart, and started where it is: two files are read at a time, and one stays when the other is a new version.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'react', test: reactFiles }] } } },
  },
  worker: { format: 'es' },
});
