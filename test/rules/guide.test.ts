import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { examples } from '../../src/examples/index.ts';
import { PICTURES, readmePictures } from '../browser/readme-pictures.ts';
import { filesBelow } from './sources.ts';

const read = (file: string): string => readFileSync(file, 'utf8');
const guides = { 'README.md': read('README.md'), 'DEVELOPERS.md': read('DEVELOPERS.md') } as const;
/** The tags that a lesson may use. */
const TAGS = 'src/layouts/prose/page-tags.ts';
const scripts = Object.keys(
  (JSON.parse(read('package.json')) as { scripts: Readonly<Record<string, string>> }).scripts,
);

/** What stands between backticks, apart from blocks of lines; a break between two lines is a space. */
const quotedIn = (text: string): readonly string[] =>
  [...text.replace(/^```[\s\S]*?^```$/gm, '').matchAll(/`([^`]+)`/g)].map(([, inside = '']) =>
    inside.replace(/\s+/g, ' '),
  );

/** What stands between backticks and names a place in `src` or `test`; `<slug>` and `*` stand for any name. */
const placesIn = (text: string): readonly string[] =>
  quotedIn(text).filter((inside) => /^(src|test)\/[\w./<>*-]*$/.test(inside));

/** Whether there is such a file or folder; the part before the first stand-in counts. */
function isThere(place: string): boolean {
  if (!/[<*]/.test(place)) return existsSync(place);
  return existsSync(place.slice(0, place.search(/[<*]/)).replace(/[^/]*$/, ''));
}

const FILE = /\w\.(?:ts|tsx|astro|mjs|mdx|css|json|txt)$/;
const files = ['src', 'test'].flatMap((folder) =>
  filesBelow(folder, ['.ts', '.tsx', '.astro', '.mjs', '.mdx', '.css', '.json', '.txt']),
);
/** Every file and every folder, a folder with its slash. */
const paths = new Set(
  files.flatMap(({ path }) => [path, ...path.split('/').map((_, at, parts) => parts.slice(0, at).join('/'))]),
);

/** Whether one of the places ends in the name; `<name>` and `*` stand for a part of one. */
function isNameOf(name: string, places: Iterable<string>): boolean {
  const literal = name.replace(/\/$/, '').replace(/[.+?^${}()|[\]\\]/g, '\\$&');
  const pattern = new RegExp(`(?:^|/)${literal.replace(/<\w+>|\*/g, '[^/]*')}$`);
  return [...places].some((place) => pattern.test(place));
}

/** Sources, tests and settings: what a name that the guides give must stand in. */
const written = [
  ...files.filter(({ path }) => path !== 'test/rules/guide.test.ts').map(({ text }) => text),
  ...['package.json', '.biome.json', 'astro.config.mjs', '.npmrc'].map(read),
].join('\n');

/** What is made, by the build or by npm: an address with its slide, what lies in folders that git leaves out. */
const MADE = /^(?:#|\.(?:bin|packed|reports)\/)/;
const bare = (inside: string): string => inside.replace(/(?:\(.*\)|=.*)$/, '');
const isKnown = (inside: string): boolean =>
  FILE.test(inside)
    ? existsSync(inside) || isNameOf(inside, paths)
    : isNameOf(inside, paths) || existsSync(inside) || written.includes(bare(inside));

/** Whether an address leads to a page or into a folder of pages. */
const isAddress = (path: string): boolean =>
  existsSync(`src/pages${path}`) || existsSync(`src/pages${path.slice(0, -1)}.astro`);

/** Words of a command that say where something lies: a place, the beginning of one, or a file of browser tests. */
const placesOfCommand = (command: string): readonly string[] =>
  command
    .split(' ')
    .filter((word) => /^(?:src|test|browser)\/|^\w+\.(?:gate|spec)$/.test(word))
    .map((word) =>
      word.replace(/^(?=browser\/)/, 'test/').replace(/^(\w+)\.(gate|spec)$/, 'test/browser/$1.$2'),
    );

describe.each(Object.entries(guides))('%s', (_, text) => {
  const quoted = quotedIn(text);
  const words = quoted.filter((inside) => !/\s/.test(inside));

  it('names no file or folder that is not there', () => {
    expect(placesIn(text).filter((place) => !isThere(place))).toEqual([]);
  });

  it('names no script that is not there', () => {
    const run = [...text.matchAll(/\bnpm run (?:-s )?([a-z]+)/g)].map(([, name = '']) => name);
    expect(run.filter((name) => !scripts.includes(name))).toEqual([]);
  });

  it('runs nothing that is not there', () => {
    const named = quoted.filter((inside) => /\s/.test(inside)).flatMap(placesOfCommand);
    expect(named.filter((place) => ![...paths].some((path) => path.startsWith(place)))).toEqual([]);
  });

  it('names no address, tag, function or other thing that is nowhere', () => {
    const addresses = words.filter((word) => /^\/[a-z/]*\/$/.test(word));
    expect(addresses.filter((address) => !isAddress(address))).toEqual([]);
    const tags = quoted.flatMap((inside) => /^<([A-Z]\w+)(?: [^>]*)?>$/.exec(inside)?.[1] ?? []);
    expect(tags.filter((tag) => !new RegExp(`\\b${tag}\\b`).test(read(TAGS)))).toEqual([]);
    const others = words.filter((word) => !/^[</]/.test(word) && !MADE.test(word));
    expect(others.filter((word) => !isKnown(word))).toEqual([]);
  });
});

test('what a row of the table of folders names lies in the folders of that row', () => {
  const rows = guides['DEVELOPERS.md'].split('\n').filter((line) => /^\| `(?:src|test)\//.test(line));
  expect(rows.length).toBeGreaterThan(20);
  const strange = rows.flatMap((row) => {
    const own = placesIn(row.split('|')[1] ?? '');
    const below = [...paths].filter((path) => own.some((folder) => path.startsWith(folder)));
    return quotedIn(row)
      .filter((inside) => /^(?!test\/)[\w*-]+(?:\/|\.tsx?)$|^[\w-]+\*$/.test(inside))
      .filter((inside) => !isNameOf(inside, below))
      .map((inside) => `${own.join(', ')}: ${inside}`);
  });
  expect(strange).toEqual([]);
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

/** A number below a hundred in words, as a sentence begins with it. */
function inWords(count: number): string {
  const small =
    'No One Two Three Four Five Six Seven Eight Nine Ten Eleven Twelve Thirteen Fourteen Fifteen Sixteen Seventeen Eighteen Nineteen';
  const [tens, ones] = [Math.floor(count / 10), count % 10] as const;
  if (count < 20) return small.split(' ')[count] ?? '';
  const begins = 'Twenty Thirty Forty Fifty Sixty Seventy Eighty Ninety'.split(' ')[tens - 2] ?? '';
  return ones === 0 ? begins : `${begins}-${small.split(' ')[ones]?.toLowerCase()}`;
}

test('the README counts the lessons and the worked examples as they are', () => {
  expect([7, 16, 29, 40].map(inWords)).toEqual(['Seven', 'Sixteen', 'Twenty-nine', 'Forty']);
  const lessons = filesBelow('src/lessons', ['.mdx']).length;
  const counted = (what: string) => new RegExp(`([A-Z][a-z-]+) ${what}`).exec(guides['README.md'])?.[1];
  expect(counted('short lessons')).toBe(inWords(lessons));
  expect(counted('worked examples')).toBe(inWords(examples.length));
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
