// Finds a Chromium for the browser tests, or gets one, and prints its path: `npx node test/browser/chromium.mjs`.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from '@playwright/test';

/** The bare shell starts fastest; the names after it are those that systems use for the whole browser. */
const NAMES = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
];
const PACKAGES = ['chromium-headless-shell', 'chromium'];
const minutesInMs = 60_000;

/** @param {string} path */
const isProgram = (path) => {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
};

/** @param {string} name @returns {string | undefined} where the shell would find it */
const onPath = (name) =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find(isProgram);

/**
 * A Chromium that is here already: what CHROMIUM_PATH names, Playwright's own, or one on the PATH.
 * @returns {string | undefined}
 */
export function findChromium() {
  const wished = process.env.CHROMIUM_PATH;
  if (wished) {
    if (!isProgram(wished)) throw new Error(`CHROMIUM_PATH: wish a program, got ${wished}`);
    return wished;
  }
  if (isProgram(chromium.executablePath())) return chromium.executablePath();
  for (const name of NAMES) {
    const path = onPath(name);
    if (path) return path;
  }
  return undefined;
}

/** @param {string} command @param {string[]} args @param {number} minutes @returns whether it ended well */
const run = (command, args, minutes) =>
  spawnSync(command, args, {
    stdio: ['ignore', 'ignore', 'ignore'],
    timeout: minutes * minutesInMs,
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  }).status === 0;

/** The packages of Debian and its relatives: needs root, and apt-get. */
function installBySystem() {
  if (process.getuid?.() !== 0 || !onPath('apt-get')) return;
  run('apt-get', ['update', '-qq'], 5);
  for (const name of PACKAGES) {
    if (run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', name], 10)) return;
  }
}

/**
 * The path of a Chromium, installed if there is none.
 * @returns {string}
 */
export function ensureChromium() {
  const here = findChromium();
  if (here) return here;
  console.error('No Chromium here: installing one');
  run('npx', ['--no-install', 'playwright', 'install', 'chromium-headless-shell'], 5);
  if (!findChromium()) installBySystem();
  const path = findChromium();
  if (path) return path;
  throw new Error(
    'No Chromium: run `npx playwright install chromium`, or install your system’s, or set CHROMIUM_PATH.',
  );
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(ensureChromium());
