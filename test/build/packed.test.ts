import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { packed } from '../../src/build/packed.ts';

let directory = '';
const builtFor = (scope: string): void =>
  writeFileSync(join(directory, 'manifest.webmanifest'), JSON.stringify({ scope }));
/** Each file of the archive with what it says. */
const unpacked = async (): Promise<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(unzipSync(await packed(directory))).map(([name, bytes]) => [name, strFromU8(bytes)]),
  );
beforeAll(() => {
  directory = mkdtempSync(join(tmpdir(), 'pack-'));
  mkdirSync(join(directory, 'learn'));
  writeFileSync(join(directory, '404.html'), 'no such page');
  writeFileSync(join(directory, 'learn/index.html'), 'lessons');
  writeFileSync(join(directory, '.htaccess'), 'rules');
  builtFor('/');
});
afterAll(() => rmSync(directory, { recursive: true, force: true }));

test('a packed site unpacks into one folder with every file, hidden ones too', async () => {
  expect(await unpacked()).toEqual({
    'how-sure-is-a-watt/404.html': 'no such page',
    'how-sure-is-a-watt/learn/index.html': 'lessons',
    'how-sure-is-a-watt/.htaccess': 'rules',
    'how-sure-is-a-watt/manifest.webmanifest': '{"scope":"/"}',
    'how-sure-is-a-watt/how-to-open.txt': expect.stringContaining('http://localhost:8000/ '),
  });
});

test('a site that was built for a folder lies in that folder, where its links lead', async () => {
  builtFor('/club/watt/');
  const files = await unpacked();
  builtFor('/');
  expect(files['how-sure-is-a-watt/club/watt/learn/index.html']).toBe('lessons');
  const beside = Object.keys(files).filter((name) => !name.startsWith('how-sure-is-a-watt/club/watt/'));
  expect(beside).toEqual(['how-sure-is-a-watt/how-to-open.txt']);
  expect(files[beside[0] ?? '']).toContain('http://localhost:8000/club/watt/ ');
});

test('a folder whose name an address has to write otherwise is named in plain letters', async () => {
  builtFor('/our%20watt/');
  const files = await unpacked();
  builtFor('/');
  expect(files['how-sure-is-a-watt/our watt/learn/index.html']).toBe('lessons');
  expect(files['how-sure-is-a-watt/how-to-open.txt']).toContain('http://localhost:8000/our%20watt/ ');
});

test('the same site gives the same bytes, whenever it was built', async () => {
  const before = await packed(directory);
  utimesSync(join(directory, '404.html'), 1_000_000_000, 1_000_000_000);
  expect(await packed(directory)).toEqual(before);
});

test('a folder without a site is refused', async () => {
  await expect(packed(join(directory, 'learn'))).rejects.toThrow('wish a built site');
});
