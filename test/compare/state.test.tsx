import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { specFaults } from '../../src/address/spec-faults.ts';
import { decodeEntries } from '../../src/bench/address/address.ts';
import { compareAddressSpec, compareFragment, readCompareFragment } from '../../src/compare/address.ts';
import Compare from '../../src/compare/Compare.tsx';
import { demonstrationCompare, SPREAD } from '../../src/compare/demonstration.ts';
import { blankCompare, FEWEST_ROWS, MOST_ROWS } from '../../src/compare/entries.ts';
import {
  type CompareAction,
  type CompareState,
  preparedCompare,
  reduceCompare,
} from '../../src/compare/state.ts';
import { strings } from '../../src/compare/strings.ts';
import { ResultPart } from '../../src/compare/views/ResultPart.tsx';
import { SharedPart, SheetsPart } from '../../src/compare/views/SheetsPart.tsx';

const ready = (): CompareState =>
  reduceCompare(preparedCompare(), { type: 'decoder', decode: decodeEntries });
const run = (actions: readonly CompareAction[], from: CompareState = ready()): CompareState =>
  actions.reduce(reduceCompare, from);
const quiet = (): void => {};
const [first] = demonstrationCompare().rows;
const address = first?.address ?? '';

const anyAction: fc.Arbitrary<CompareAction> = fc.oneof(
  fc
    .record({ id: fc.constantFrom('sheet1', 'sheet2', 'nobody'), address: fc.constantFrom('', 'x', address) })
    .map((given): CompareAction => ({ type: 'edit', id: given.id, change: { address: given.address } })),
  fc.constantFrom('', address).map((given): CompareAction => ({ type: 'add', address: given })),
  fc.constantFrom('sheet1', 'sheet3').map((id): CompareAction => ({ type: 'remove', id })),
  fc.constantFrom<CompareAction>(
    { type: 'turn', candidate: { kind: 'link', name: SPREAD } },
    { type: 'undo' },
    { type: 'redo' },
    { type: 'demonstration' },
    { type: 'fresh' },
    { type: 'refuse', problems: ['x'] },
    { type: 'open', entries: blankCompare(), problems: [] },
  ),
);

describe('the page’s state', () => {
  test('bears any actions, with as many rows as may be and ids of their own', () => {
    fc.assert(
      fc.property(fc.array(anyAction, { maxLength: 15 }), (actions) => {
        const { rows } = run(actions).entries;
        expect(rows.length).toBeGreaterThanOrEqual(FEWEST_ROWS);
        expect(rows.length).toBeLessThanOrEqual(MOST_ROWS);
        expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
      }),
      { numRuns: 30 },
    );
  });

  test('undo brings back every step', () => {
    fc.assert(
      fc.property(fc.array(anyAction, { maxLength: 8 }), (actions) => {
        const state = run(actions);
        const undo = Array.from({ length: state.past.length }, () => ({ type: 'undo' as const }));
        const back = run(undo, state);
        expect(back.entries).toEqual(state.past[0] ?? state.entries);
        const redo = undo.map(() => ({ type: 'redo' as const }));
        expect(run(redo, back).entries).toEqual(state.entries);
      }),
      { numRuns: 30 },
    );
  });

  test('letters typed into one row are one step', () => {
    const typed = ['t', 't=', 't=A'].map(
      (given): CompareAction => ({ type: 'edit', id: 'sheet1', change: { address: given } }),
    );
    expect(run(typed).past).toHaveLength(1);
  });

  test('an address that is added goes into the first empty row', () => {
    const state = run([{ type: 'fresh' }, { type: 'add', address }]);
    expect(state.entries.rows.map((row) => row.address)).toEqual([address, '']);
    expect(run([{ type: 'add', address }]).entries.rows.map(({ id }) => id)).toEqual([
      'sheet1',
      'sheet2',
      'sheet3',
    ]);
  });

  test('two rows stay', () => {
    expect(run([{ type: 'remove', id: 'sheet1' }]).past).toEqual([]);
    const three = run([
      { type: 'add', address: '' },
      { type: 'remove', id: 'sheet1' },
    ]);
    expect(three.entries.rows.map(({ id }) => id)).toEqual(['sheet2', 'sheet3']);
  });

  test('marking what is shared changes the comparison', () => {
    const state = run([{ type: 'turn', candidate: { kind: 'link', name: SPREAD } }]);
    expect(state.comparison.pairs[0]?.compared.shared).toBeCloseTo(0, 6);
    expect(preparedCompare().comparison.pairs[0]?.compared.shared).toBeGreaterThan(0.08);
  });
});

describe('the page’s address', () => {
  test('has a specification without faults, and carries nothing of what the page opens with', () => {
    expect(specFaults(compareAddressSpec())).toEqual([]);
    expect(compareFragment(demonstrationCompare())).toBe('');
  });

  test('carries sheets, chosen points and marks', () => {
    const rows = [
      { id: 'sheet1', address, point: '1' },
      { id: 'sheet2', address: `https://club.example/bench/#${address}`, point: '' },
      { id: 'sheet3', address: 'not yet', point: '' },
    ];
    const entries = { rows, same: ['A pad', 'B & C'], apart: ['laboratory'] };
    const fragment = compareFragment(entries) ?? '';
    expect(fragment).toMatch(/^[\w.&=-]+$/);
    expect(readCompareFragment(fragment)).toEqual({ entries, problems: [] });
  });

  test('always opens two rows, and a place on the page opens none', () => {
    expect(readCompareFragment('s=1&s1a=x&v=1').entries?.rows.map((row) => row.address)).toEqual(['x', '']);
    expect(readCompareFragment('main')).toEqual({ entries: undefined, problems: [] });
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), (fragment) => {
        const { entries } = readCompareFragment(fragment);
        if (entries) expect(entries.rows.length).toBeGreaterThanOrEqual(FEWEST_ROWS);
      }),
    );
  });

  test('what is too long for an address is not cut', () => {
    const rows = [1, 2].map((number) => ({ id: `sheet${number}`, address: 'x'.repeat(60_000), point: '' }));
    expect(compareFragment({ rows, same: [], apart: [] })).toBeUndefined();
    const [row] = rows;
    const longer = row ? [{ ...row, address: 'x'.repeat(100_001) }] : [];
    expect(compareFragment({ rows: longer, same: [], apart: [] })).toBeUndefined();
  });

  test('takes whatever may be typed or pasted into a row, line ends among it', () => {
    const opened = (typed: string): string | undefined => {
      const rows = [1, 2].map((number) => ({ id: `sheet${number}`, address: typed, point: '' }));
      return readCompareFragment(compareFragment({ rows, same: [], apart: [] }) ?? '').entries?.rows[0]
        ?.address;
    };
    expect(opened(`${address}\n`)).toBe(`${address} `);
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 80 }), (typed) => {
        expect(() => opened(typed)).not.toThrow();
      }),
    );
  });
});

describe('the page without script', () => {
  const page = render(<Compare />);

  test('shows the club’s comparison complete', () => {
    expect(page).toContain(strings.caution);
    expect(page).toContain('26.70\u00a0dBm ±0.37\u00a0dB');
    expect(page.match(/class="points-chart/g)).toHaveLength(2);
    for (const sentence of strings.cannot.list) expect(page).toContain(sentence);
    expect(page).not.toMatch(/NaN|undefined|Infinity| style=/);
  });
});

describe('the parts', () => {
  test('each row has its address, its problem, and a way out where there are more than two', () => {
    const state = run([{ type: 'add', address: '' }]);
    const markup = render(<SheetsPart state={state} send={quiet} />);
    expect(markup.match(/<textarea/g)).toHaveLength(3);
    expect(markup).toContain(strings.problems.none);
    expect(markup).toContain(strings.remove(3));
    expect(render(<SheetsPart state={preparedCompare()} send={quiet} />)).not.toContain(strings.remove(1));
  });

  test('what may be shared can be marked, and nothing is said to be nothing', () => {
    expect(render(<SharedPart state={preparedCompare()} send={quiet} />)).toMatch(
      /type="checkbox"[^>]*checked/,
    );
    expect(render(<SharedPart state={run([{ type: 'fresh' }])} send={quiet} />)).toContain(
      strings.shared.none,
    );
  });

  test('too few sheets are told, three have a table of their pairs', () => {
    expect(render(<ResultPart comparison={run([{ type: 'fresh' }]).comparison} />)).toContain(strings.tooFew);
    const three = run([{ type: 'add', address }]).comparison;
    expect(render(<ResultPart comparison={three} />)).toContain(strings.table.caption);
  });
});
