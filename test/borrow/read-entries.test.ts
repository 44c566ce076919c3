import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEMONSTRATIONS, demonstrationEntries } from '../../src/borrow/demonstration.ts';
import { type BorrowEntries, type BorrowTextKey, blankEntries } from '../../src/borrow/entries.ts';
import { outcomeOf } from '../../src/borrow/outcome.ts';
import { readEntries } from '../../src/borrow/read-entries.ts';
import { anyEntries } from './any-entries.ts';

const oneLevel = demonstrationEntries('oneLevel');
const problemsOf = (change: Partial<BorrowEntries>, from = oneLevel) =>
  Object.fromEntries(
    readEntries({ ...from, ...change }).problems.map(({ path, problem }) => [path, problem]),
  );

describe('the form', () => {
  test.each(DEMONSTRATIONS)('%s, as prepared, can be used', (name) => {
    const { checked, problems } = readEntries(demonstrationEntries(name));
    expect(problems).toEqual([]);
    expect(outcomeOf(checked ?? never()).kind).not.toBe('none');
  });

  test('whatever is typed is used or told, and never both', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const { checked, problems } = readEntries(entries);
        expect(checked === undefined).toBe(problems.length > 0);
        for (const { label, problem } of problems) {
          expect(label).not.toBe('');
          expect(problem).toMatch(/^[^\s].*[.:?]$/su);
        }
      }),
    );
  });

  test('what can be used has an outcome, or a reason why it has none', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const { checked } = readEntries(entries);
        if (checked === undefined) return;
        const outcome = outcomeOf(checked);
        if (outcome.kind === 'part') expect(Number.isFinite(outcome.part.value)).toBe(true);
        if (outcome.kind === 'calibration')
          expect(outcome.calibration.places.every(({ value }) => Number.isFinite(value))).toBe(true);
      }),
    );
  });

  test('texts of the kinds that are not chosen do not stand in the way', () => {
    const wrong: Partial<BorrowEntries> = { voltsIn: 'much', without: 'x', load: 'heavy' };
    expect(problemsOf(wrong)).toEqual({});
    expect(
      problemsOf({ amount: 'x', places: [{ id: 'a', at: '', readings: '?' }] }, demonstrationEntries('dc')),
    ).toEqual({});
  });
});

describe('a comparison in turns', () => {
  test.each<[BorrowTextKey, string, RegExp]>([
    ['amount', '', /Nothing is typed yet: a limit is expected/],
    ['amount', '0', /below the smallest value accepted here, 0\.001\sdB/],
    ['factor', '0.5', /1/],
    ['resolution', '-1', /0/],
    ['temperature', '3 K', /does not fit/],
    ['claimed', '1 dBm', /dBm is a level/],
    ['later', 'loud', /not a number/],
  ])('%s of %j is told beside its field', (key, text, problem) => {
    expect(problemsOf({ [key]: text })).toEqual({ [key]: expect.stringMatching(problem) });
  });

  test('what may be empty may be empty', () => {
    const keys = [
      'lenderDrift',
      'resolution',
      'temperature',
      'mismatch',
      'other',
      'claimed',
      'later',
    ] as const;
    const empty = Object.fromEntries(keys.map((key) => [key, '']));
    expect(problemsOf(empty)).toEqual({});
    expect(readEntries({ ...oneLevel, ...empty }).checked).toMatchObject({
      influences: { resolution: 0, temperature: 0, mismatch: 0, other: 0 },
      claimed: undefined,
      later: undefined,
    });
  });

  test('a scatter known from earlier needs the number it comes from, and the other way round', () => {
    expect(Object.keys(problemsOf({ scatter: '0.05' }))).toEqual(['repeats']);
    expect(Object.keys(problemsOf({ repeats: '5' }))).toEqual(['scatter']);
    expect(problemsOf({ scatter: '0.05', repeats: '5' })).toEqual({});
  });

  test('a level that is not typed is the mean of what is shown, a typed one stands', () => {
    const places = [{ id: 'a', at: '', readings: '7 8 7\n7 8.2 7' }];
    expect(readEntries({ ...oneLevel, places }).checked).toMatchObject({
      places: [{ at: expect.closeTo(8.1, 12) }],
    });
    const typed = [{ id: 'a', at: '10 mW', readings: '7 8 7\n7 8.2 7' }];
    expect(readEntries({ ...oneLevel, places: typed }).checked).toMatchObject({
      places: [{ at: expect.closeTo(10, 12) }],
    });
  });

  test('a frequency has to be typed', () => {
    expect(problemsOf({ along: 'frequency' })).toEqual({
      'place1.at': expect.stringContaining('a frequency is expected'),
    });
  });

  test('two places that are the same are told at the second', () => {
    const places = ['a', 'b'].map((id) => ({ id, at: '3.58', readings: '7 8 7\n7 8 7' }));
    expect(problemsOf({ along: 'frequency', later: '', places })).toEqual({
      'b.at': 'This place is there already: put its readings together.',
    });
  });

  test('a later reading beyond the places is refused with their ends', () => {
    const line = demonstrationEntries('line');
    expect(problemsOf({ later: '14' }, line)).toEqual({
      later: expect.stringMatching(
        /^Calibrated from −9\.26\sdBm to 13\.63\sdBm: beyond that nothing has been measured/,
      ),
    });
    expect(problemsOf({ later: '13.6' }, line)).toEqual({});
    // of one level the reader says how straight the scale is
    expect(problemsOf({ later: '14' })).toEqual({});
  });

  test('a later reading at another frequency than the only one is refused', () => {
    const places = [{ id: 'a', at: '3.58', readings: '7 8 7\n7 8 7' }];
    const only = { along: 'frequency', places, later: '7' } as const;
    expect(problemsOf(only)).toEqual({});
    expect(problemsOf({ ...only, laterAt: '3580 kHz' })).toEqual({});
    expect(problemsOf({ ...only, laterAt: '7.1' })).toEqual({
      laterAt: expect.stringContaining('Calibrated from 3.58'),
    });
  });
});

describe('a part', () => {
  const dc = demonstrationEntries('dc');
  const swap = demonstrationEntries('swap');

  test('at DC must take something away', () => {
    expect(problemsOf({ voltsOut: '3.1' }, dc)).toEqual({
      voltsOut: expect.stringContaining('are the two exchanged?'),
    });
    expect(problemsOf({ voltsOut: '3' }, dc)).toHaveProperty('voltsOut');
  });

  test('at DC asks for both voltages, the meter’s limits and the load', () => {
    expect(Object.keys(problemsOf({}, blankEntries('dc')))).toEqual([
      'voltsIn',
      'voltsOut',
      'percent',
      'loadPercent',
    ]);
  });

  test('swapped in must lower the reading', () => {
    expect(problemsOf({ with: '-13.2', scatter: '0.1', repeats: '9' }, swap)).toEqual({
      with: expect.stringContaining('less than without it'),
    });
  });

  test('swapped in and out asks for readings, and one alone for its scatter', () => {
    expect(Object.keys(problemsOf({}, blankEntries('swap')))).toEqual(['without', 'with']);
    expect(problemsOf({ without: '-13.4' }, swap)).toEqual({
      without: expect.stringContaining('says nothing of its scatter'),
    });
    expect(problemsOf({ without: '-13.4', scatter: '0.02', repeats: '10' }, swap)).toEqual({});
    expect(problemsOf({ with: 'low' }, swap)).toEqual({ with: expect.stringContaining('No reading yet') });
  });

  test('a reading that is none is told with its line', () => {
    expect(problemsOf({ with: '-33.3\nlow' }, swap)).toEqual({
      with: expect.stringContaining('Line 2, “low”'),
    });
  });

  test('without standing-wave ratios nothing is reflected', () => {
    const bare = { ...swap, sourceSwr: '', receiverSwr: '', partSwr: '' };
    expect(readEntries(bare).checked).toMatchObject({ sourceSwr: 1, receiverSwr: 1, partSwr: 1 });
  });
});

function never(): never {
  throw new Error('wish usable entries, got none');
}
