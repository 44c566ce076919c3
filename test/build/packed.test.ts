import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { packed } from '../../src/build/packed.ts';

let directory = '';
beforeAll(() => {
  directory = mkdtempSync(join(tmpdir(), 'pack-'));
  mkdirSync(join(directory, 'learn'));
  writeFileSync(join(directory, '404.html'), 'no such page');
  writeFileSync(join(directory, 'learn/index.html'), 'lessons');
  writeFileSync(join(directory, '.htaccess'), 'rules');
});
afterAll(() => rmSync(directory, { recursive: true, force: true }));

test('a packed site unpacks into one folder with every file, hidden ones too', async () => {
  const files = Object.entries(unzipSync(await packed(directory))).map(([name, bytes]) => [
    name,
    strFromU8(bytes),
  ]);
  expect(Object.fromEntries(files)).toEqual({
    'how-sure-is-a-watt/404.html': 'no such page',
    'how-sure-is-a-watt/learn/index.html': 'lessons',
    'how-sure-is-a-watt/.htaccess': 'rules',
  });
});

test('the same site gives the same bytes, whenever it was built', async () => {
  const before = await packed(directory);
  utimesSync(join(directory, '404.html'), 1_000_000_000, 1_000_000_000);
  expect(await packed(directory)).toEqual(before);
});

test('a folder without a site is refused', async () => {
  await expect(packed(tmpdir())).rejects.toThrow('wish a built site');
});
