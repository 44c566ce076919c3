import { describe, expect, it } from 'vitest';
import { alikeGroups, alikePages, sampledPages } from '../browser/sampled.ts';

const page = (path: string, html = '') => ({ path, file: `${path.slice(1)}index.html`, html });
const radio = '<div class="ask-options"></div>';
const typed = '<div class="ask-typed"></div>';
const figure = '<svg class="places"></svg>';

const pages = [
  page('/'),
  page('/practice/'),
  page('/practice/q/one/', radio),
  page('/practice/q/two/', radio),
  page('/practice/q/three/', typed),
  page('/practice/q/four/', figure + radio),
  page('/practice/q/five/', typed),
  page('/practice/ratios/', radio),
];

describe('groups of pages that are made alike', () => {
  it('hold each of them once, a group for each frame', () => {
    const all = [...pages, page('/stage/examples/one/', 'StageBand'), page('/stage/examples/two/')];
    const groups = alikeGroups(all);
    expect(groups.flat()).toEqual(alikePages(all));
    expect(groups.map(({ length }) => length)).toEqual([5, 2]);
    expect(sampledPages(all).map(({ path }) => path)).toContain('/stage/examples/two/');
  });
});

describe('pages that the gates run on', () => {
  it('are all that stand for themselves, and the first of each kind of those made alike', () => {
    expect(sampledPages(pages).map(({ path }) => path)).toEqual([
      '/',
      '/practice/',
      '/practice/q/one/',
      '/practice/q/three/',
      '/practice/q/four/',
      '/practice/ratios/',
    ]);
  });

  it('leave out none but those made alike', () => {
    const taken = new Set(sampledPages(pages));
    const alike = new Set(alikePages(pages));
    for (const each of pages) expect(taken.has(each) || alike.has(each)).toBe(true);
  });

  it('are the same whatever else there is', () => {
    const more = [...pages, page('/practice/q/six/', typed)];
    expect(sampledPages(more)).toEqual(sampledPages(pages));
  });
});
