import { describe, expect, it } from 'vitest';
import { blocksOf } from '../../src/checks/blocks.ts';
import type { Check } from '../../src/checks/check.ts';
import { checksOfTable } from '../../src/checks/family.ts';
import { printedRows } from '../../src/checks/rows.ts';

const example = (id: string): Check => ({
  id,
  clause: 'invented',
  title: 'invented',
  status: 'published',
  figures: [],
});

const table = (id: string): Check[] =>
  checksOfTable({
    id,
    heading: `Table ${id}`,
    clause: 'invented',
    status: 'published',
    columns: [
      { what: 'one', unit: 'V' },
      { what: 'two', unit: '' },
    ],
    rows: printedRows('a 1 ·\nb 3 4'),
    row: (key) => key.toUpperCase(),
    title: (key) => `row ${key}`,
    compute: (key, column) => (key === 'a' ? 1 : 3 + column),
    differs: { 'b/1': { exact: '4.00', because: 'invented' } },
  });

describe('laying out the checks of a source', () => {
  it('keeps their order, leaves none out, and shows each table as one grid', () => {
    const checks = [example('x'), example('y'), ...table('t'), ...table('u'), example('z')];
    const blocks = blocksOf(checks);
    expect(blocks.map(({ kind }) => kind)).toEqual(['list', 'grid', 'grid', 'list']);
    expect(blocks.flatMap((block) => block.checks)).toEqual(checks);
  });

  it('names the columns of a grid by its fullest row', () => {
    const [grid] = blocksOf(table('t'));
    expect(grid?.kind === 'grid' && grid.columns.map(({ what }) => what)).toEqual(['one', 'two']);
  });
});

describe('a printed table', () => {
  it('becomes one check for each row, its empty cells left out', () => {
    const [a, b] = table('t');
    expect(a).toMatchObject({ id: 't-a', title: 'row a', grid: { heading: 'Table t', row: 'A' } });
    expect(a?.figures.map(({ what, printed, unit }) => [what, printed, unit])).toEqual([['one', '1', 'V']]);
    expect(b?.figures.map(({ compute }) => compute())).toEqual([3, 4]);
  });

  it('marks the one cell that is known to differ', () => {
    const [a, b] = table('t');
    expect(a?.figures[0]?.differs).toBeUndefined();
    expect(b?.figures.map(({ differs }) => differs?.exact)).toEqual([undefined, '4.00']);
  });
});
