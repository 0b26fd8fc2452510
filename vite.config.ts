import { readdirSync, readFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { licencesFile } from './scripts/build/licences.ts';

/** What the PDF reader fetches by name: decoders of scanned pages, and the fonts that a PDF may leave out. */
function pdfReaderFiles(): Plugin {
  return {
    name: 'pdf-reader-files',
    generateBundle() {
      for (const folder of ['wasm', 'standard_fonts']) {
        const from = new URL(`node_modules/pdfjs-dist/${folder}/`, import.meta.url);
        for (const name of readdirSync(from)) {
          const source = readFileSync(new URL(name, from));
          this.emitFile({ type: 'asset', fileName: `pdf-reader/${folder}/${name}`, source });
        }
      }
    },
  };
}

/** The policy of index.html, sent with every file as well, so that workers keep it and no other page can frame this one. */
function policy(): string {
  const page = readFileSync(new URL('index.html', import.meta.url), 'utf8');
  const said = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(page)?.[1];
  if (!said) throw new Error('index.html says no content security policy');
  return `${said}; frame-ancestors 'none'`;
}

export default defineConfig({
  base: './',
  preview: { headers: { 'Content-Security-Policy': policy(), 'X-Content-Type-Options': 'nosniff' } },
  plugins: [
    react(),
    pdfReaderFiles(),
    licencesFile(import.meta.dirname),
    VitePWA({
      registerType: 'prompt',
      injectRegister: null,
      manifest: {
        name: 'Inchsquare',
        short_name: 'Inchsquare',
        description: 'From a small printed diagram to a full-size pattern that fits one body.',
        display: 'standalone',
        start_url: '.',
        theme_color: '#d8c5a0',
        background_color: '#d8c5a0',
        icons: [
          { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{js,mjs,css,html,svg,png,jpg,wasm,ttf,woff2,pfb}', 'licences.json'],
        maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
        cleanupOutdatedCaches: true,
        // One page, whatever stands behind a question mark; of an address below it that page would find nothing it needs.
        navigateFallback: null,
        ignoreURLParametersMatching: [/./],
        // The very first page too belongs to the version it came with, though a newer one may appear while it is open.
        clientsClaim: true,
      },
    }),
  ],
  build: { target: ['es2022', 'safari16.4'], modulePreload: { polyfill: false } },
  worker: { format: 'es' },
  // Nothing is timed: a busy machine only takes longer.
  test: { include: ['tests/**/*.test.{ts,tsx}'], environment: 'node', testTimeout: 30_000, maxWorkers: 2 },
});
