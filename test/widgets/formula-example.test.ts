import fc from 'fast-check';
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { rowsOf, TOPICS, type TopicId } from '../../src/formulas/index.ts';
import { TOPIC_WORDS } from '../../src/formulas/topics.ts';
import { pocketText } from '../../src/text/pocket-text.ts';
import FormulaExample from '../../src/widgets/formula-example/FormulaExample.tsx';
import { run } from '../../src/widgets/formula-example/run.ts';
import { entriesOf, readEntries, readEntry } from '../../src/widgets/formula-example/state.ts';
import { strings } from '../../src/widgets/formula-example/strings.ts';

const rows = (Object.keys(TOPICS) as TopicId[]).flatMap((topic) => rowsOf(topic));

describe('a number on the formula sheet', () => {
  it('reads back to seven digits, whatever its size', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e12, max: 1e12, noNaN: true }), (value) => {
        const read = readEntry(pocketText(value), false);
        if (typeof read !== 'number') throw new Error(String(read));
        expect(Math.abs(read - value)).toBeLessThanOrEqual(1e-6 * Math.abs(value) + 1e-300);
      }),
    );
  });

  it('has no zeros at its end and no thousands signs', () => {
    expect([0, -20, 0.30103, 1e6, 123456.789, 1.602176634e-19].map(pocketText)).toEqual([
      '0',
      '-20',
      '0.30103',
      '1000000',
      '123456.8',
      '1.602177e-19',
    ]);
  });

  it('says where there is no limit', () => {
    expect(pocketText(Number.POSITIVE_INFINITY)).toBe('∞');
    expect(pocketText(Number.NEGATIVE_INFINITY)).toBe('−∞');
  });
});

describe('a live example', () => {
  it.each(rows.map((row) => [row.id, row] as const))(
    'of %s gives its printed result from its printed numbers',
    (id, { example }) => {
      const read = readEntries(example.given, entriesOf(example.given));
      if (!read.ok) throw new Error(read.problem);
      const result = run(id, read.numbers);
      const expected = example.result();
      expect(Math.abs(result - expected)).toBeLessThanOrEqual(1e-5 * Math.max(1e-300, Math.abs(expected)));
    },
  );

  it('takes several numbers apart by semicolons, with decimal commas too', () => {
    expect(readEntry('0,5; 0.5 ;2', true)).toEqual([0.5, 0.5, 2]);
  });

  it('names the field whose text is no number', () => {
    const given = { powerRatio: 2, count: 3 };
    expect(readEntries(given, { powerRatio: 'two', count: '3' })).toMatchObject({
      ok: false,
      name: 'powerRatio',
    });
    expect(readEntries(given, { powerRatio: '2' })).toMatchObject({ ok: false, name: 'count' });
  });

  it('leaves a forbidden number to the function, which says what it wants', () => {
    expect(() => run('powerRatioToDb', { powerRatio: -1 })).toThrow(
      'powerRatioToDb: powerRatio must be > 0, got -1',
    );
    expect(strings.refused('powerRatioToDb: powerRatio must be > 0, got -1')).toBe(
      'No result: powerRatio must be > 0, got -1.',
    );
  });

  it('is named by the heading of its row, since a page has many', () => {
    const given = { powerRatio: 2 };
    const markup = render(h(FormulaExample, { id: 'powerRatioToDb', given, labels: {}, result: '3.0103' }));
    const [, legend] = /<fieldset[^>]* aria-labelledby="powerRatioToDb ([^" ]+)"/.exec(markup) ?? [];
    expect(markup).toContain(`<legend id="${legend}">${strings.legend}</legend>`);
  });
});

describe('topics of the formula sheet', () => {
  it('each have a title and a sentence', () => {
    expect(Object.keys(TOPIC_WORDS).sort()).toEqual(Object.keys(TOPICS).sort());
  });
});
