import { describe, expect, it } from 'vitest';
import { type Chunk, loadsOf, withImports } from '../../src/build/script-loads.ts';

const chunk = (
  fileName: string,
  imports: readonly string[] = [],
  dynamicImports: readonly string[] = [],
): readonly [string, Chunk] => [fileName, { fileName, imports, dynamicImports, modules: {} }];

const chunks = new Map([
  chunk('figure', ['base'], ['far']),
  chunk('question', ['base', 'words']),
  chunk('base'),
  chunk('words'),
  chunk('far', ['base', 'farther'], ['farthest']),
  chunk('farther'),
  chunk('farthest', ['words']),
]);

const namesOf = (load: { readonly chunks: ReadonlySet<Chunk> }): readonly string[] =>
  [...load.chunks].map(({ fileName }) => fileName).sort();

describe('what is loaded in one go', () => {
  it('is a file with all that it imports, and what those import', () => {
    expect(namesOf({ chunks: withImports(chunks, ['far', 'question']) })).toEqual([
      'base',
      'far',
      'farther',
      'question',
      'words',
    ]);
    expect(withImports(chunks, ['no such file']).size).toBe(0);
  });

  it('is what all islands of a page need together', () => {
    const [page] = loadsOf(chunks, [{ path: '/lesson/', entries: ['figure', 'question'] }]);
    expect(page).toMatchObject({ paths: ['/lesson/'], byCall: false });
    expect(page && namesOf(page)).toEqual(['base', 'figure', 'question', 'words']);
  });

  it('is counted once for pages that load the same, with the addresses of all', () => {
    const loads = loadsOf(chunks, [
      { path: '/one/', entries: ['question'] },
      { path: '/two/', entries: ['question', 'words'] },
    ]);
    expect(loads).toHaveLength(1);
    expect(loads[0]?.paths).toEqual(['/one/', '/two/']);
  });

  it('is by a call what the page has not at hand, and by a call of what was called what that lacks', () => {
    const called = (entries: readonly string[]): readonly (readonly string[])[] =>
      loadsOf(chunks, [{ path: '/', entries }])
        .filter(({ byCall }) => byCall)
        .map(namesOf);
    expect(called(['figure'])).toEqual([
      ['far', 'farther'],
      ['farthest', 'words'],
    ]);
    expect(called(['figure', 'question'])).toEqual([['far', 'farther'], ['farthest']]);
    expect(called(['question'])).toEqual([]);
  });

  it('is nothing on a page without script', () => {
    expect(loadsOf(chunks, [{ path: '/about/', entries: [] }])).toEqual([]);
  });
});
