import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MOST_READINGS, readRounds } from '../../src/borrow/read-rounds.ts';
import { readTable } from '../../src/borrow/read-table.ts';

const round = { before: 7.34, own: 8.1, after: 7.36 };
const level = fc.integer({ min: -9000, max: 3000 }).map((hundredths) => hundredths / 100);
const written = (value: number): string => value.toFixed(2);

describe('readings in turn', () => {
  test.each([
    ['one to a line', '7.34\n8.10\n7.36'],
    ['a round to a line', '7.34 8.10 7.36'],
    ['with semicolons', '7.34; 8.10; 7.36'],
    ['with tabs', '7.34\t8.10\t7.36'],
    ['with decimal commas', '7,34\n8,10\n7,36'],
    ['decimal commas in a line', '7,34; 8,10; 7,36'],
    ['with units', '7.34 dBm\n8.10 dBm\n7.36 dBm'],
    ['under a heading', 'reading / dBm\n7.34\n8.10\n7.36'],
    ['with empty lines', '\n7.34\n\n8.10\n7.36\n\n'],
  ])('%s are one round', (_, text) => {
    expect(readRounds(text)).toEqual({ rounds: [round] });
  });

  test('one to a line share the reference between two rounds, rounds of their own do not', () => {
    expect(readRounds('7\n8\n7.1\n8\n7.4').rounds).toEqual([
      { before: 7, own: 8, after: 7.1 },
      { before: 7.1, own: 8, after: 7.4 },
    ]);
    expect(readRounds('7 8 7.1\n7.2 8 7.4').rounds).toEqual([
      { before: 7, own: 8, after: 7.1 },
      { before: 7.2, own: 8, after: 7.4 },
    ]);
  });

  test('a line may hold several rounds', () => {
    expect(readRounds('7 8 7 8 7\n7 8 7').rounds).toHaveLength(3);
  });

  test('every odd number of readings comes back as it was written', () => {
    fc.assert(
      fc.property(fc.array(level, { minLength: 1, maxLength: 20 }), level, (values, last) => {
        const turns = [...values.flatMap((value) => [value, value + 1]), last];
        const read = readRounds(turns.map(written).join('\n'));
        expect(read.rounds?.map(({ own }) => own)).toEqual(values.map((value) => Number(written(value + 1))));
        expect(read.rounds?.at(-1)?.after).toBeCloseTo(last, 9);
      }),
    );
  });

  test.each([
    ['', 'No reading yet: readings in turn are expected'],
    ['7.34', 'One reading: the reference comes first and last'],
    ['7.34\n8.10', '2 readings: the reference comes first and last'],
    ['7 8 7\n7 8', 'Line 2 of readings has 2: in each line the reference'],
    ['7 8 7\n7', 'Line 2 of readings has one: in each line'],
    ['7.34\nabout 8\n7.36', 'Line 2, “about 8”'],
    ['7.34 mW\n8.1\n7.36', 'Some readings have a unit and some have none'],
    ['7.34 dB\n8.1 dB\n7.3 dB', 'dB is a ratio'],
  ])('%j is told, and how it should be', (text, problem) => {
    expect(readRounds(text).rounds).toBeUndefined();
    expect(readRounds(text)).toMatchObject({ problem: expect.stringContaining(problem) });
  });

  test('more than anybody takes by hand is refused', () => {
    expect(readRounds('1\n'.repeat(MOST_READINGS + 1))).toMatchObject({
      problem: expect.stringContaining(String(MOST_READINGS)),
    });
  });

  test('nothing that is pasted makes it throw', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        const { rounds } = readRounds(text);
        for (const { before, own, after } of rounds ?? [])
          expect([before, own, after].every(Number.isFinite)).toBe(true);
      }),
    );
  });
});

describe('a whole table', () => {
  test('has the place first, and lines of the same place belong together', () => {
    const table = 'MHz\tlent\town\tlent\n3.58\t7.3\t8.1\t7.4\n3.58\t7.2\t8.0\t7.3\n14.2\t7.1\t7.9\t7.0\n';
    expect(readTable(table)).toEqual([
      { at: '3.58', readings: '7.3; 8.1; 7.4\n7.2; 8.0; 7.3' },
      { at: '14.2', readings: '7.1; 7.9; 7.0' },
    ]);
  });

  test('may have semicolons or spaces, decimal commas and several rounds to a line', () => {
    expect(readTable('3,58; 7,3; 8,1; 7,4; 8,0; 7,2')).toEqual([
      { at: '3,58', readings: '7,3; 8,1; 7,4; 8,0; 7,2' },
    ]);
    expect(readTable('-10 1 2 1\n0 1 2 1')?.map(({ at }) => at)).toEqual(['-10', '0']);
  });

  test('each place of it can be read as rounds', () => {
    const places = readTable('1;7.34;8.10;7.36\n2;7.34;8.10;7.36') ?? [];
    expect(places.map(({ readings }) => readRounds(readings).rounds)).toEqual([[round], [round]]);
  });

  test.each([[''], ['7 8 7'], ['1;2;3'], ['1;2;3;4;5'], ['1;2;;4'], ['level; own'], ['1 2 3 4\n1 2']])(
    '%j is none',
    (text) => {
      expect(readTable(text)).toBeUndefined();
    },
  );

  test('with more places than fit is none', () => {
    const lines = Array.from({ length: 31 }, (_, index) => `${index} 1 2 1`);
    expect(readTable(lines.slice(0, 30).join('\n'))).toHaveLength(30);
    expect(readTable(lines.join('\n'))).toBeUndefined();
  });
});
