import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { PICTURES, readmePictures } from '../browser/readme-pictures.ts';

const read = (file: string): string => readFileSync(file, 'utf8');
const guides = { 'README.md': read('README.md'), 'DEVELOPERS.md': read('DEVELOPERS.md') } as const;
const scripts = Object.keys(
  (JSON.parse(read('package.json')) as { scripts: Readonly<Record<string, string>> }).scripts,
);

/** What stands between backticks and names a place in `src` or `test`; `<slug>` and `*` stand for any name. */
function placesIn(text: string): readonly string[] {
  const quoted = [...text.matchAll(/`([^`\n]+)`/g)].map(([, inside = '']) => inside);
  return quoted.filter((inside) => /^(src|test)\/[\w./<>*-]*$/.test(inside));
}

/** Whether there is such a file or folder; the part before the first stand-in counts. */
function isThere(place: string): boolean {
  if (!/[<*]/.test(place)) return existsSync(place);
  return existsSync(place.slice(0, place.search(/[<*]/)).replace(/[^/]*$/, ''));
}

describe.each(Object.entries(guides))('%s', (_, text) => {
  it('names no file or folder that is not there', () => {
    expect(placesIn(text).filter((place) => !isThere(place))).toEqual([]);
  });

  it('names no script that is not there', () => {
    const run = [...text.matchAll(/\bnpm run (?:-s )?([a-z]+)/g)].map(([, name = '']) => name);
    expect(run.filter((name) => !scripts.includes(name))).toEqual([]);
  });
});

test('the guide has a line for each script', () => {
  const table = guides['DEVELOPERS.md'].split('\n').filter((line) => line.startsWith('| `'));
  const told = table.flatMap((line) =>
    [...(line.split('|')[1] ?? '').matchAll(/`([a-z]+)`/g)].map(([, name]) => name),
  );
  expect(scripts.filter((name) => !told.includes(name))).toEqual([]);
});

test('each section on how to add a thing names a real one', () => {
  const sections = guides['DEVELOPERS.md'].split(/^### /m).filter((section) => section.startsWith('Add '));
  expect(sections.length).toBeGreaterThanOrEqual(10);
  for (const section of sections) {
    const real = placesIn(section).filter((place) => /\.\w+$/.test(place) && !/[<*]/.test(place));
    expect(real, section.split('\n')[0]).not.toEqual([]);
  }
});

describe('the pictures of the README', () => {
  const shown = [...guides['README.md'].matchAll(/!\[([^\]]*)\]\(([^)]+)\)/g)].map(
    ([, words = '', file = '']) => ({ words, file }),
  );
  const files = shown.map(({ file }) => file);

  it('are those that the script takes, each shown once', () => {
    expect([...files].sort()).toEqual(readmePictures.map(({ name }) => `${PICTURES}/${name}.png`).sort());
    expect(readdirSync(PICTURES).map((file) => `${PICTURES}/${file}`)).toEqual([...files].sort());
  });

  it('have words for whoever cannot see them', () => {
    for (const { words, file } of shown) expect(words.length, file).toBeGreaterThan(60);
  });

  it('are small to fetch, and wide enough to read', () => {
    for (const file of files) {
      expect(statSync(file).size, file).toBeLessThan(80_000);
      expect(readFileSync(file).readUInt32BE(16), file).toBeGreaterThanOrEqual(1000);
    }
  });
});
