import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { differences } from './same-files.ts';

const made: string[] = [];
afterAll(() => {
  for (const directory of made) rmSync(directory, { recursive: true, force: true });
});

function folder(files: Record<string, string>): string {
  const directory = mkdtempSync(join(tmpdir(), 'same-'));
  made.push(directory);
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(directory, file)), { recursive: true });
    writeFileSync(join(directory, file), text);
  }
  return directory;
}
const files = { 'index.html': 'a', 'learn/index.html': 'b', '.htaccess': 'c' };

test('two folders with the same bytes do not differ', () => {
  expect(differences(folder(files), folder(files))).toEqual([]);
});

test.each([
  ['a byte', { ...files, 'learn/index.html': 'B' }, ['learn/index.html: differs']],
  ['a file more', { ...files, 'b.js': '' }, ['b.js: only in the second']],
  ['a file less', { 'index.html': 'a', '.htaccess': 'c' }, ['learn/index.html: only in the first']],
])('%s is told', (_, other, told) => expect(differences(folder(files), folder(other))).toEqual(told));

test('an empty folder is no build', () => {
  expect(() => differences(folder({}), folder(files))).toThrow('wish a folder with files');
});
