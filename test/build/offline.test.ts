import { expect, test } from 'vitest';
import { isKept } from '../../src/build/offline.ts';

test.each([
  'index.html',
  'learn/index.html',
  '_astro/a.js',
  '_astro/a.woff2',
  'icon.svg',
  'offline.js',
  'find.json',
  'embed/band/index.html', // each lesson leads there
  'carry/carry.js', // a talk is saved as a file where there is no network
])('%s is kept for use without a network', (file) => expect(isKept(file)).toBe(true));

test.each(['cards/two-pads.png', 'offline-worker.js', '_headers', 'sitemap-0.xml'])('%s is not', (file) =>
  expect(isKept(file)).toBe(false),
);
