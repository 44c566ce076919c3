import { defineConfig } from '@playwright/test';
import { flags } from './flags.ts';

// `npm run browser` finds a Chromium, serves the built site and tells both here.
const { CHROMIUM_PATH: executablePath, SITE_ADDRESS: baseURL } = process.env;
if (!executablePath || !baseURL) throw new Error('browser tests: start them by `npm run browser`');

export default defineConfig({
  testDir: '.',
  testMatch: '*.{gate,spec}.ts',
  outputDir: '../../.reports/browser',
  fullyParallel: true,
  forbidOnly: true,
  workers: 2,
  retries: 0,
  timeout: 60_000,
  // patience, not a limit of speed: a slow machine with two of these at work takes a few seconds where others take none
  expect: { timeout: 15_000 },
  reporter: [['dot'], ['json', { outputFile: '../../.reports/browser.json' }]],
  use: {
    baseURL,
    viewport: { width: 1024, height: 768 },
    contextOptions: { reducedMotion: 'reduce' },
    launchOptions: { executablePath, args: flags },
  },
});
