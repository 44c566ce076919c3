import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { workersWithin } from '../../src/build/carry.ts';
import { renumbered } from '../../src/stage/carry/borrow-steps.ts';
import { components } from '../../src/stage/carry/components.ts';
import { faceFiles, withoutIdleFaces } from '../../src/stage/carry/faces.ts';
import { pageOfPart } from '../../src/stage/carry/pages.ts';
import { revived } from '../../src/stage/carry/revive.ts';
import { filesBelow } from '../rules/sources.ts';

describe('what an island was given, read back from its page', () => {
  it('is what it was, through objects, lists and infinities', () => {
    const written = JSON.stringify({
      sheet: [0, { title: [0, 'Fox'], links: [1, [[0, { lossDb: [0, 20] }]]] }],
      lower: [11, -1],
      upper: [11, 1],
      on: [0, false],
      nothing: [0, null],
      missing: [0],
    });
    expect(revived(written)).toEqual({
      sheet: { title: 'Fox', links: [{ lossDb: 20 }] },
      lower: Number.NEGATIVE_INFINITY,
      upper: Number.POSITIVE_INFINITY,
      on: false,
      nothing: null,
      missing: undefined,
    });
  });

  it('is refused where it is of a kind that the stage gives no island', () => {
    expect(() => revived(JSON.stringify({ when: [3, '2026-05-09'] }))).toThrow(RangeError);
  });

  it('makes nothing of a name that objects have', () => {
    expect(Object.keys(revived('{"__proto__":[0,1]}'))).toEqual(['__proto__']);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

describe('a step that comes from another page', () => {
  it('has islands and ids with numbers of its own, and the rest as it was', () => {
    const markup =
      '<astro-island data-preact-island-id="5"><label for="P5-2">P = 5</label><input id="P5-2"></astro-island>';
    expect(renumbered(markup, 0)).toBe(
      '<astro-island data-preact-island-id="1005"><label for="P1005-2">P = 5</label><input id="P1005-2"></astro-island>',
    );
    expect(renumbered(markup, 1)).toContain('P2005-2');
    expect(renumbered('<p id="P5-2odd"></p>', 0), 'with letters behind it').toBe('<p id="P1005-2odd"></p>');
  });

  it('is looked for on the page that the part names', () => {
    expect(pageOfPart('decibels.ratios-that-add.guess')).toBe('../learn/decibels/ratios-that-add/');
    expect(pageOfPart('examples.dirty-signal.chain')).toBe('../examples/dirty-signal/');
  });
});

describe('the islands of the stage', () => {
  it('are all at hand for a carried page', () => {
    const islands = readdirSync(new URL('../../src/stage/', import.meta.url))
      .filter((file) => file.endsWith('.tsx'))
      .filter((file) =>
        readFileSync(new URL(`../../src/stage/${file}`, import.meta.url), 'utf8').includes('export default'),
      )
      .map((file) => file.replace('.tsx', ''));
    expect(Object.keys(components).sort()).toEqual(islands.sort());
    expect(islands.length).toBeGreaterThan(25);
  });
});

describe('the workers of a carried page', () => {
  it('start from its own script, by the name of their file', () => {
    const code = "worker = new Worker(new URL('./tries.worker.ts', import.meta.url), { type: 'module' });";
    expect(workersWithin(code)).toBe(
      "worker = new Worker(globalThis.carriedScript, { name: 'tries.worker.ts' });",
    );
    expect(workersWithin('const a = 1;')).toBeUndefined();
  });

  it('are told apart in the script for every worker that an island of the stage starts', () => {
    const started = filesBelow('src/widgets/tries', ['.ts'])
      .concat(filesBelow('src/widgets/simulation', ['.ts']))
      .concat(filesBelow('src/stage', ['.ts', '.tsx']))
      .flatMap(({ text }) => [...text.matchAll(/new URL\('\.\/([\w.-]+)', import\.meta\.url\)/g)])
      .map(([, file]) => file);
    const [main] = filesBelow('src/stage/carry', ['.ts']).filter(({ path }) => path.endsWith('main.ts'));
    expect(started).toEqual(['tries.worker.ts', 'simulation.worker.ts']);
    for (const file of started) expect(main?.text).toContain(`'${file}'`);
  });
});

describe('the typefaces of a carried page', () => {
  const face = (family: string, file: string): string =>
    `@font-face{font-family:${family};src:url(${file}) format("woff2")}`;
  const css = [
    face('"Page One"', '/_astro/fonts/a.woff2'),
    face('Signs_Main', '/_astro/Signs_Main-Regular.B1.woff2'),
    face('Signs_Size2', '/_astro/Signs_Size2-Regular.B2.woff2'),
    '@font-face{font-family:"Page One fallback";src:local("Arial")}',
    '.katex{font-family:Signs_Main}',
  ].join('');

  it('are those that something on it asks for', () => {
    const kept = withoutIdleFaces(css, (selector) => selector === '.katex');
    expect(faceFiles(kept)).toEqual(['/_astro/fonts/a.woff2', '/_astro/Signs_Main-Regular.B1.woff2']);
    expect(kept).toContain('local("Arial")');
    expect(kept).toContain('.katex{font-family:Signs_Main}');
  });

  it('are the text’s alone where there is no formula', () => {
    expect(faceFiles(withoutIdleFaces(css, () => false))).toEqual(['/_astro/fonts/a.woff2']);
  });
});
