import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import Borrow from '../../src/borrow/Borrow.tsx';
import { DEMONSTRATIONS, demonstrationEntries } from '../../src/borrow/demonstration.ts';
import type { BorrowEntries } from '../../src/borrow/entries.ts';
import { outcomeOf } from '../../src/borrow/outcome.ts';
import { resultStrings } from '../../src/borrow/result-strings.ts';
import { type BorrowState, preparedBorrow, reduceBorrow } from '../../src/borrow/state.ts';
import { strings } from '../../src/borrow/strings.ts';
import { Form } from '../../src/borrow/views/Form.tsx';
import { Problems } from '../../src/borrow/views/Problems.tsx';
import { ResultPart } from '../../src/borrow/views/ResultPart.tsx';
import { checkedOf } from './prepared.ts';

const quiet = (): void => {};
const stateOf = (entries: Partial<BorrowEntries>): BorrowState =>
  reduceBorrow(preparedBorrow(), {
    type: 'open',
    entries: { ...demonstrationEntries('oneLevel'), ...entries },
    problems: [],
  });
const form = (entries: Partial<BorrowEntries>): string =>
  render(<Form state={stateOf(entries)} send={quiet} />);
const result = (name: (typeof DEMONSTRATIONS)[number]): string =>
  render(<ResultPart outcome={outcomeOf(checkedOf(demonstrationEntries(name)))} />);

describe('the page without script', () => {
  const page = render(<Borrow instruments="/bench/instruments/" />);

  test('shows the club’s calibration complete: caution, result, figure, readings, limits of the method', () => {
    expect(page).toContain(strings.caution);
    expect(page).toContain('−0.75\u00a0dB ±0.30\u00a0dB');
    expect(page).toContain('7.15\u00a0dBm ±0.38\u00a0dB');
    expect(page.match(/<svg class="plot /g)).toHaveLength(2);
    expect(page).toContain('7.45; 8.04; 7.25');
    for (const sentence of resultStrings.cannot.alternation) expect(page).toContain(sentence);
  });

  test('has no style of its own and nothing that is no number', () => {
    expect(page).not.toMatch(/NaN|undefined|Infinity| style=/);
  });
});

describe('the form', () => {
  test('names every field it shows, each with a label', () => {
    for (const kind of ['alternation', 'dc', 'swap'] as const) {
      const markup = form({ kind });
      const ids = [...markup.matchAll(/<(?:input|select|textarea)[^>]* id="([^"]+)"/g)].map(([, id]) => id);
      expect(new Set(ids).size).toBe(ids.length);
      // a label names its field, or stands around it
      for (const id of ids)
        expect(markup).toMatch(new RegExp(`for="${id}"|<label[^>]*><input[^>]* id="${id}"`));
    }
  });

  test('asks for what the kind needs, and for nothing else', () => {
    expect(form({ kind: 'dc' })).toContain(strings.labels.voltsIn);
    expect(form({ kind: 'dc' })).not.toContain(strings.sections.readings);
    expect(form({ kind: 'swap' })).toContain(strings.labels.partSwr);
    expect(form({ kind: 'swap' })).not.toContain(strings.labels.voltsIn);
    expect(form({})).not.toContain(strings.labels.laterAt);
    expect(form({ along: 'frequency' })).toContain(strings.labels.laterAt);
    expect(form({})).toContain(strings.labels.lenderDrift);
    expect(form({ stated: 'rectangular' })).not.toContain(strings.labels.lenderDrift);
  });

  test('says what is wrong beside its field', () => {
    const markup = form({ amount: 'much' });
    expect(markup).toMatch(/id="field-amount-problem"><span aria-hidden="true">“much” is not a number/);
    expect(markup).toContain('value="much"');
  });

  test('offers to spread a whole table, and to take a place away where there are several', () => {
    const table = '1;7;8;7\n2;7;8;7';
    expect(form({ places: [{ id: 'a', at: '', readings: table }] })).toContain(strings.spread(2));
    expect(form({})).not.toContain(strings.spread(2));
    expect(form({})).not.toContain(strings.removePlace(1));
    const two = ['a', 'b'].map((id) => ({ id, at: '', readings: '7 8 7' }));
    expect(form({ places: two })).toContain(strings.removePlace(2));
  });
});

describe('the result', () => {
  test.each(DEMONSTRATIONS)('of %s has answers and a budget', (name) => {
    const markup = result(name);
    expect(markup.match(/<dt>/g)?.length).toBeGreaterThanOrEqual(2);
    expect(markup).toContain(resultStrings.budget.caption);
    expect(markup).not.toMatch(/NaN|undefined/);
  });

  test('of a line has a table of its places, of one level it has none', () => {
    expect(result('line')).toContain(resultStrings.table.caption);
    expect(result('oneLevel')).not.toContain(resultStrings.table.caption);
    expect(result('dc')).not.toContain('<svg class="plot');
  });

  test('that is none says why', () => {
    const one = checkedOf({
      ...demonstrationEntries('oneLevel'),
      places: [{ id: 'a', at: '', readings: '7 8 7' }],
    });
    expect(render(<ResultPart outcome={outcomeOf(one)} />)).toContain(resultStrings.faults.noScatter);
    const refused = {
      kind: 'none',
      fault: 'sums',
      because: 'padBySwap: withDb must be < withoutDb',
    } as const;
    expect(render(<ResultPart outcome={refused} />)).toContain('padBySwap: withDb must be');
  });

  test('problems lead to their fields, and none is no box', () => {
    expect(render(<Problems problems={[]} />)).toBe('');
    const [problem] = stateOf({ amount: 'much' }).problems;
    const markup = render(<Problems problems={problem ? [problem, problem] : []} />);
    expect(markup).toContain(strings.problems(2));
    expect(markup).toContain(strings.labels.amount);
  });
});
