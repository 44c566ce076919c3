import { describe, expect, it } from 'vitest';
import { nameChanges, renamed, scriptsOn } from '../../src/build/page-scripts.ts';

const page = [
  '<script type="module" src="/club/_astro/Foot.Ab-1_.js"></script>',
  '<astro-island component-url="/club/_astro/Choice.B_WY.js" renderer-url="/club/_astro/client.C1.js"></astro-island>',
  '<astro-island component-url="/club/_astro/Choice.B_WY.js" renderer-url="/club/_astro/client.C1.js"></astro-island>',
  '<link rel="stylesheet" href="/club/_astro/lesson.Bq.css">',
].join('');

const entry = (module: string, fileName: string) => ({ fileName, facadeModuleId: module, isEntry: true });

describe('the scripts of a page', () => {
  it('are found once each, wherever the site lies, and no style sheet among them', () => {
    expect(scriptsOn(page)).toEqual(['_astro/Choice.B_WY.js', '_astro/Foot.Ab-1_.js', '_astro/client.C1.js']);
    expect(scriptsOn('<p>words</p>')).toEqual([]);
  });

  it('are told their new names, each as often as it stands, and nothing else is changed', () => {
    const names = nameChanges(
      [
        entry('/choice', '_astro/Choice.B_WY.js'),
        entry('/foot', '_astro/Foot.Ab-1_.js'),
        entry('/client', '_astro/client.C1.js'),
      ],
      [
        entry('/client', '_astro/client.D2.js'),
        entry('/choice', '_astro/Choice.E3.js'),
        entry('/foot', '_astro/Foot.F4.js'),
      ],
    );
    const now = renamed(page, names);
    expect(scriptsOn(now)).toEqual(['_astro/Choice.E3.js', '_astro/Foot.F4.js', '_astro/client.D2.js']);
    expect(now.length).toBe(page.length - 2 * 2 - 3);
    expect(now).toContain('/club/_astro/lesson.Bq.css');
  });

  it('keep their name for their module, not for their place among the files', () => {
    const names = nameChanges(
      [entry('/one', '_astro/one.1.js'), entry('/two', '_astro/two.1.js')],
      [
        { ...entry('/two', '_astro/part.js'), isEntry: false },
        entry('/two', '_astro/two.2.js'),
        entry('/one', '_astro/one.2.js'),
      ],
    );
    expect([...names]).toEqual([
      ['_astro/one.1.js', '_astro/one.2.js'],
      ['_astro/two.1.js', '_astro/two.2.js'],
    ]);
  });

  it('fail the build where one has no new name, rather than lead nowhere', () => {
    expect(() => renamed(page, new Map())).toThrow('_astro/Foot.Ab-1_.js');
  });
});
