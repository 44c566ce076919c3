import { describe, expect, it } from 'vitest';
import { chapters } from '../../src/checks/index.ts';
import { readPrinted } from '../../src/checks/printed.ts';
import { checksOf, figuresOf } from '../../src/checks/summary.ts';

const sources = chapters().flatMap(({ sources: all }) => all);
const checks = checksOf(chapters());
const figures = figuresOf(checks);

/** What occurs more than once. */
const repeated = (names: readonly string[]): string[] => names.filter((name, i) => names.indexOf(name) !== i);

describe('the list of checks', () => {
  it('names a document for every source and a place in it for every check', () => {
    expect(sources.filter(({ name, citation }) => name === '' || citation === '')).toEqual([]);
    expect(checks.filter(({ clause, title }) => clause === '' || title === '')).toEqual([]);
  });

  it('says of every check how far it can be traced', () => {
    const known = ['published', 'recomputed', 'from memory', 'common practice'];
    expect(checks.filter(({ status }) => !known.includes(status))).toEqual([]);
  });

  it('has no two chapters, sources or checks of one name', () => {
    expect(repeated(chapters().map(({ id }) => id))).toEqual([]);
    expect(repeated(sources.map(({ id }) => id))).toEqual([]);
    expect(repeated(checks.map(({ id }) => id))).toEqual([]);
  });

  it('can be addressed: ids are lower case words with hyphens', () => {
    const ids = [...chapters().map(({ id }) => id), ...sources.map(({ id }) => id)];
    expect(ids.filter((id) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
  });

  it('has no check without a figure, and no figure that cannot be read', () => {
    expect(checks.filter((check) => check.figures.length === 0)).toEqual([]);
    for (const { figure } of figures) expect(() => readPrinted(figure.printed)).not.toThrow();
  });

  it('gives a reason for every tolerance and every known difference', () => {
    const reasons = figures.flatMap(({ figure }) => [figure.tolerance?.because, figure.differs?.because]);
    expect(reasons.filter((reason) => reason !== undefined && reason.length < 10)).toEqual([]);
  });

  it('keeps the columns of a grid the same in all its rows, empty cells aside', () => {
    for (const { grid, figures: cells } of checks.filter((check) => check.grid)) {
      const widest = checks
        .filter((check) => check.grid?.heading === grid?.heading)
        .reduce<readonly { what: string }[]>(
          (best, { figures: row }) => (row.length > best.length ? row : best),
          [],
        );
      expect(cells.filter(({ what }) => !widest.some((column) => column.what === what))).toEqual([]);
    }
  });
});
