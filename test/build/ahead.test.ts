import { describe, expect, it } from 'vitest';
import { importsIn, isWall, neededBy } from '../../src/build/ahead.ts';

const files: Readonly<Record<string, string>> = {
  '/club/_astro/deck.js': 'import{t as e}from"./part-1.js";import"./bare.js";e(()=>import("./later.js"));',
  '/club/_astro/part-1.js': 'import*as n from"./deep/part-2.js";export{n as t};',
  '/club/_astro/deep/part-2.js': 'import{a}from"../part-1.js";export const b=a;',
  '/club/_astro/bare.js': 'const say="import x from y";',
};
const codeAt = async (address: string): Promise<string> => {
  const code = files[address];
  if (code === undefined) throw new Error(`no file at ${address}`);
  return code;
};

describe('what a page asks for ahead', () => {
  it('is what its scripts need at once, and what that needs, each once; not what is fetched later', async () => {
    const html = '<head></head><script type="module" src="/club/_astro/deck.js"></script>';
    expect(await neededBy(html, codeAt)).toEqual([
      '/club/_astro/part-1.js',
      '/club/_astro/bare.js',
      '/club/_astro/deep/part-2.js',
    ]);
  });

  it('leaves out a script that the page names itself, and what an island is made of', async () => {
    const html =
      '<script type="module" src="/club/_astro/part-1.js"></script><script type="module" src="/club/_astro/bare.js"></script>' +
      '<astro-island component-url="/club/_astro/deck.js"></astro-island>';
    expect(await neededBy(html, codeAt)).toEqual(['/club/_astro/deep/part-2.js']);
  });

  it('is for the wall alone: other pages are drawn without their scripts', () => {
    const files = ['stage/talk/index.html', 'learn/measuring/one/index.html', 'learn/stage/index.html'];
    expect(files.filter(isWall)).toEqual(['stage/talk/index.html']);
  });

  it('finds an import however short it is written', () => {
    expect(importsIn('import"./a.js";import{b as c,d}from"./b.js";import e,{f}from \'../c.js\';')).toEqual([
      './a.js',
      './b.js',
      '../c.js',
    ]);
  });
});
