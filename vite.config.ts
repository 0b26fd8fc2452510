import react from '@vitejs/plugin-react';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  base: './',
  plugins: [
    react(),
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
        icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' }],
      },
      workbox: {
        globPatterns: ['**/*.{js,mjs,css,html,svg,png,jpg,wasm,ttf,woff2}'],
        maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
        cleanupOutdatedCaches: true,
      },
    }),
  ],
  build: { target: ['es2022', 'safari16.4'], modulePreload: { polyfill: false } },
  worker: { format: 'es' },
  test: { include: ['tests/**/*.test.{ts,tsx}'], environment: 'node' },
});
