import { fileURLToPath } from 'node:url';
import { beforeAll, expect, test } from 'vitest';
import { type ApiEntry, apiEntries } from '../../src/build/api-entries.ts';
import { apiPage } from '../../src/build/api-page.ts';

const door = fileURLToPath(new URL('../../src/compute/index.ts', import.meta.url));
let entries: readonly ApiEntry[] = [];
beforeAll(() => {
  entries = apiEntries(door);
});

test('every public function and type of the computation is there, once, with its docstring', async () => {
  const names = entries.map(({ name }) => name);
  expect(names).toEqual([...new Set(names)].sort());
  const running = Object.keys(await import('#compute'));
  expect(running.filter((name) => !names.includes(name))).toEqual([]);
  const silent = entries.filter(
    ({ name, says, tags }) => running.includes(name) && says === '' && tags.length === 0,
  );
  expect(silent.map(({ name }) => name)).toEqual([]);
});

test('a function shows how it is called, and a type what it consists of', () => {
  const found = (name: string): string => entries.find((entry) => entry.name === name)?.shape ?? '';
  expect(found('levelDbm')).toMatch(/^levelDbm\(\w+: number\): LevelDbm$/);
  expect(found('SumModel')).toMatch(/^interface SumModel \{/);
});

test('the page writes them as text, and leads to each', () => {
  const odd: ApiEntry = {
    name: 'a',
    file: 'b.ts',
    shape: 'a<Of>(b: "c" & d)',
    says: '<b>',
    tags: ['@throws x'],
  };
  const page = apiPage([odd], new Map([['a', 'GUM, 4.1']]));
  expect(page).toContain(
    '<pre>a&lt;Of&gt;(b: &quot;c&quot; &amp; d)</pre><p>&lt;b&gt;</p><ul><li>@throws x</li><li>Formula sheet: GUM, 4.1</li></ul>',
  );
  expect(page).toContain('<a href="#a">a</a>');
});

test('a docstring leads to the name that it points to, and to none that is not there', () => {
  const page = apiPage(entries, new Map());
  expect(page).toContain('Source: inverse of <a href="#powerRatioToDb">powerRatioToDb</a>.');
  expect(page).not.toContain('{@');
  const places = new Set([...page.matchAll(/<section id="(\w+)"/g)].map(([, name]) => name));
  const led = [...page.matchAll(/<a href="#(\w+)"/g)].map(([, name]) => name);
  expect(led.filter((name) => !places.has(name))).toEqual([]);
});

test('what exports nothing is refused', () => {
  expect(() => apiEntries('/no/such/file.ts')).toThrow('wish a module');
});
