import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { builtBase } from '../../src/build/built-base.ts';

let directory = '';
beforeAll(() => {
  directory = mkdtempSync(join(tmpdir(), 'base-'));
});
afterAll(() => rmSync(directory, { recursive: true, force: true }));

test('a built site says which path it was built for', async () => {
  writeFileSync(join(directory, 'manifest.webmanifest'), '{"name":"A site","scope":"/club/watt/"}');
  expect(await builtBase(directory)).toBe('/club/watt/');
});

test('a folder without a site is refused, and named', async () => {
  writeFileSync(join(directory, 'manifest.webmanifest'), '{}');
  await expect(builtBase(directory)).rejects.toThrow(directory);
  const none = join(directory, 'none');
  await expect(builtBase(none)).rejects.toThrow(`wish a built site (npm run build), got ${none}`);
});
