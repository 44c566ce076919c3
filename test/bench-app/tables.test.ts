import { csvParseRows, dsvFormat } from 'd3';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demonstrationEntries } from '../../src/bench/entries/fresh.ts';
import { budgetRows } from '../../src/bench/export/budget-table.ts';
import { readingRows } from '../../src/bench/export/reading-table.ts';
import { tableStrings } from '../../src/bench/export/table-strings.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { csvText, type Row } from '../../src/exchange/csv.ts';
import type { Measurement } from '../../src/sheet/measurement.ts';
import { usableEntries } from './any-entries.ts';
import { typedMeasurement } from './typed-sheet.ts';

const rowsOf = (measurement: Measurement): readonly Row[] =>
  budgetRows(
    measurement,
    measurement.points.map(({ id }) => pointResult(measurement, id)),
  );
/** The two tables, each as records by heading. */
function tablesOf(rows: readonly Row[]) {
  const gap = rows.findIndex((row) => row.length === 0);
  const records = ([head = [], ...rest]: readonly Row[]) =>
    rest.map((row) => new Map(row.map((cell, index) => [String(head[index]), cell])));
  return { parts: records(rows.slice(0, gap)), results: records(rows.slice(gap + 1)) };
}
const club = (): Measurement => {
  const { measurement } = readMeasurement(demonstrationEntries());
  if (measurement === undefined) throw new Error('club: wish a measurement');
  return measurement;
};
const num = (record: ReadonlyMap<string, unknown> | undefined, name: keyof typeof tableStrings): number =>
  Number(record?.get(String(tableStrings[name])));

describe('the readings as a table', () => {
  it('have a row a reading and bare numbers in the unit of the heading', () => {
    const measurement = typedMeasurement({
      points: [
        { readings: '27 dBm\n500 mW', frequency: '3.58 MHz' },
        { label: 'low', readings: '-13,4' },
      ],
    });
    const [head, first, second, third] = readingRows(measurement).map((row) =>
      row.map((cell) => (typeof cell === 'string' ? cell.replaceAll('\u00a0', ' ') : cell)),
    );
    expect(head).toEqual(['Point', 'Frequency, MHz', 'No.', 'Reading, dBm']);
    expect(first).toEqual(['3.58 MHz', 3.58, 1, 27]);
    expect(second?.slice(0, 3)).toEqual(['3.58 MHz', 3.58, 2]);
    // 10 lg 500
    expect(second?.[3]).toBeCloseTo(26.9897, 4);
    expect(third).toEqual(['low', '', 1, -13.4]);
  });

  it('have a column for each that the method asks for', () => {
    const measurement = typedMeasurement({
      method: 'dcSubstitution',
      points: [{ readings: '9.5\n9.6', riseDc: '9.4', volts: '5', amperes: '0.1\n0.101\n0.1' }],
    });
    const rows = readingRows(measurement);
    expect(rows[0]?.slice(3)).toEqual(['Rise with RF, K', 'Rise with DC, K', 'DC volts, V', 'DC amperes, A']);
    expect(rows.slice(1).map((row) => row.slice(3))).toEqual([
      [9.5, 9.4, 5, 0.1],
      [9.6, '', '', 0.101],
      ['', '', '', 0.1],
    ]);
  });

  it('come back from the file as they were read, with a point as with a comma', () => {
    fc.assert(
      fc.property(usableEntries, (entries) => {
        const { measurement } = readMeasurement(entries);
        if (measurement === undefined) return;
        const rows = readingRows(measurement);
        const numbers = rows.slice(1).map((row) => row.slice(3));
        const point = csvParseRows(csvText(rows, 'point').slice(1));
        const comma = dsvFormat(';').parseRows(csvText(rows, 'comma').slice(1));
        const read = (table: readonly (readonly string[])[]) =>
          table
            .slice(1)
            .map((row) => row.slice(3).map((cell) => (cell === '' ? '' : Number(cell.replace(',', '.')))));
        expect(read(point)).toEqual(numbers);
        expect(read(comma)).toEqual(numbers);
      }),
    );
  });
});

describe('the budget as a table', () => {
  it('gives the club’s result in numbers: 27.10 dBm, U 0.69 dB, 513 mW from 438 to 601', () => {
    const [result] = tablesOf(rowsOf(club())).results;
    expect(num(result, 'level')).toBeCloseTo(27.1, 6);
    expect(num(result, 'expanded')).toBeCloseTo(0.69, 2);
    // 10^(27.1/10) mW, and the ends of 27.10 plus and minus U
    expect(num(result, 'watts')).toBeCloseTo(10 ** 2.71 / 1000, 6);
    expect(num(result, 'lowerWatts')).toBeCloseTo(0.438, 3);
    expect(num(result, 'upperWatts')).toBeCloseTo(0.601, 3);
    expect([num(result, 'lowerLimit'), num(result, 'upperLimit')]).toEqual([25.5, 28.5]);
    expect(result?.get(tableStrings.verdict)).toBe('inside');
    expect(result?.get(tableStrings.conformity)).toBe('more than 99.9 %');
  });

  it('has contributions that add up as squares to the combined uncertainty (GUM 5.1.2), and k of it is U', () => {
    const { parts, results } = tablesOf(rowsOf(club()));
    const squares = parts.reduce((sum, part) => sum + num(part, 'contribution') ** 2, 0);
    const [result] = results;
    expect(Math.sqrt(squares)).toBeCloseTo(num(result, 'combined'), 8);
    expect(num(result, 'factor') * num(result, 'combined')).toBeCloseTo(num(result, 'expanded'), 8);
    expect(parts.reduce((sum, part) => sum + num(part, 'share'), 0)).toBeCloseTo(100, 6);
    // limits of 0.5 dB by the root of 3
    const pad = parts.find((part) => part.get('Part') === '20 dB pad');
    expect(num(pad, 'uncertainty')).toBeCloseTo(0.5 / Math.sqrt(3), 8);
    expect(num(pad, 'added')).toBe(20);
    expect(pad?.get(tableStrings.source)).toBe('data sheet');
  });

  it('has rows of one length in each table, numbers where numbers belong, and no sign but the point in them', () => {
    fc.assert(
      fc.property(usableEntries, (entries) => {
        const { measurement } = readMeasurement(entries);
        if (measurement === undefined) return;
        const rows = rowsOf(measurement);
        const gap = rows.findIndex((row) => row.length === 0);
        for (const row of rows.slice(0, gap)) expect(row).toHaveLength(11);
        expect(rows.length - gap - 2).toBe(measurement.points.length);
        for (const cell of rows.flat())
          if (typeof cell === 'number')
            expect(csvText([[cell]], 'point')).toMatch(/^\ufeff-?[\d.]+(e-?\d+)?\r\n$/);
      }),
      { numRuns: 50 },
    );
  });

  it('says why, where a point has no number', () => {
    const measurement = typedMeasurement({ sheet: { largest: '10 dBm' }, points: [{ readings: '12 dBm' }] });
    const { parts, results } = tablesOf(rowsOf(measurement));
    expect(parts).toEqual([]);
    expect(String(results[0]?.get(tableStrings.level))).toMatch(/above the meter/);
  });

  it('guards against names that a spreadsheet would compute', () => {
    const measurement = typedMeasurement({
      points: [{ label: '=HYPERLINK("https://example.org")', readings: '27 dBm' }],
      links: [{ label: '@SUM(1+1)' }, { label: '-2+3' }],
    });
    const text = csvText(rowsOf(measurement), 'comma');
    expect(text).toContain(`"'=HYPERLINK(""https://example.org"")"`);
    expect(text).toContain(`"'@SUM(1+1)"`);
    expect(text).toContain(`"'-2+3"`);
    expect(text).not.toMatch(/(?:^|[;\n])[=@+]/);
  });

  it('tells infinite degrees of freedom in a word, and finite ones as a number', () => {
    const { parts } = tablesOf(rowsOf(typedMeasurement({ links: [{}, { form: 'standard', freedom: '9' }] })));
    expect(parts.map((part) => part.get(tableStrings.freedom)).slice(0, 2)).toEqual(['infinite', 9]);
  });
});
