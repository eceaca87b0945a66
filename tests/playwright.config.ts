import { defineConfig } from '@playwright/test';
import { browsers, chromiumFlags } from './tools/browsers.mjs';

export default defineConfig({
  testDir: './access',
  outputDir: '../reports/access',
  snapshotPathTemplate: '{testDir}/snapshots/{arg}{ext}',
  globalSetup: './tools/serveForPlaywright.ts',
  fullyParallel: true,
  workers: 2,
  forbidOnly: true,
  timeout: 90_000,
  use: {
    browserName: 'chromium',
    locale: 'en-GB',
    launchOptions: { executablePath: browsers.chromium.path, args: chromiumFlags },
  },
});
