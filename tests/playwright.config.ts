import { defineConfig } from '@playwright/test';
import { browsers, chromiumFlags } from './tools/browsers.mjs';

// One seed for the run: its workers read it again, perhaps on the next day.
process.env['TAUTLINE_SEED'] ??= String(Math.floor(Date.now() / 86_400_000));

export default defineConfig({
  testDir: './access',
  outputDir: '../reports/access',
  snapshotPathTemplate: '{testDir}/snapshots/{arg}{ext}',
  globalSetup: './tools/serveForPlaywright.ts',
  fullyParallel: true,
  workers: 2,
  forbidOnly: true,
  timeout: 180_000,
  // The worker that keeps the site on the device would fetch all of it for every page: it has its own
  // journey.
  use: {
    serviceWorkers: 'block',
    browserName: 'chromium',
    locale: 'en-GB',
    launchOptions: {
      executablePath: browsers.chromium.path,
      args: chromiumFlags,
    },
  },
});
