import { defineConfig, devices } from '@playwright/test';

const launchOptions = {
  ...(process.env.CHROMIUM_PATH ? { executablePath: process.env.CHROMIUM_PATH } : {}),
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    '--disable-dev-shm-usage',
  ],
};

/** Another port, where two checkouts are tried at once. */
const port = process.env.PORT ?? '4174';
const baseURL = `http://127.0.0.1:${port}`;

export default defineConfig({
  testDir: 'e2e',
  snapshotPathTemplate: 'e2e/likeness/{arg}{ext}',
  workers: 1,
  timeout: 120_000,
  forbidOnly: !!process.env.CI,
  reporter: [['list']],
  use: { baseURL, launchOptions, trace: 'off', acceptDownloads: true, actionTimeout: 10_000 },
  webServer: {
    command: `npx vite preview --host 127.0.0.1 --port ${port} --strictPort`,
    url: baseURL,
    reuseExistingServer: !process.env.CI,
    timeout: 60_000,
  },
  projects: [
    {
      name: 'laptop',
      testIgnore: /touch(-only|-rooms)?\.spec\.ts/,
      use: { ...devices['Desktop Chrome'], viewport: { width: 1440, height: 900 } },
    },
    {
      name: 'tablet',
      testMatch: /touch(-only|-rooms)?\.spec\.ts/,
      use: { ...devices['Galaxy Tab S4'], viewport: { width: 1024, height: 768 }, defaultBrowserType: 'chromium' },
    },
  ],
});
