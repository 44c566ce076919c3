import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { chapters } from '../../src/checks/index.ts';
import { fixedTables, levelTable, type PrintTable } from '../../src/tables/index.ts';

const math = create(all ?? {}, { number: 'BigNumber', precision: 40 });
const nb = '\u00a0';
const tables = [...fixedTables(), levelTable(50)];
const tableOf = (id: string): PrintTable => {
  const found = tables.find((table) => table.id === id);
  if (found === undefined) throw new RangeError(`tableOf: wish one of the tables, got ${id}`);
  return found;
};
const rowOf = (id: string, name: string): readonly string[] =>
  tableOf(id).rows.find(([first]) => first === name) ?? [];
/** A cell as a number; its minus sign is the typographic one. */
/** A cell of volts with its prefix, as volts. */
const voltsIn = (cell: string | undefined): number => {
  const [digits, unit = ''] = (cell ?? '').split(nb);
  return Number(digits) * ({ V: 1, mV: 1e-3, µV: 1e-6, nV: 1e-9 }[unit] ?? Number.NaN);
};
const numberIn = (cell: string | undefined): number => Number((cell ?? '').replace('−', '-'));
/** Value of an expression by a general-purpose library at forty digits, an oracle apart from our own functions. */
const by = (expression: string): number => Number(math.evaluate(expression).toString());

describe('every table to print', () => {
  it('has a name of its own, a source, and a chapter of checks that there is', () => {
    expect(new Set(tables.map(({ id }) => id)).size).toBe(tables.length);
    const known = chapters().map(({ id }) => id as string);
    for (const { source, checks, words } of tables) {
      expect(source).toMatch(/^(GUM|ITU-R|Follows by mathematics)/);
      expect(known).toContain(checks);
      expect(words).toMatch(/\.$/);
    }
  });

  it('has a text in every cell, as many as there are columns, and no row twice', () => {
    for (const { id, columns, rows } of tables) {
      for (const row of rows) {
        expect(row, id).toHaveLength(columns.length);
        for (const cell of row) expect(cell, id).not.toMatch(/NaN|Infinity|undefined|^$/);
      }
      expect(new Set(rows.map(([name]) => name)).size, id).toBe(rows.length);
    }
  });

  it('fits one sheet: no more rows than a page of paper holds', () => {
    for (const { id, rows } of tables) expect(rows.length, id).toBeLessThanOrEqual(55);
  });
});

describe('the table of decibels', () => {
  it('agrees with a library of forty digits, cell by cell, to the digits that it shows', () => {
    for (const [db, up, down, voltsUp, voltsDown] of tableOf('decibels').rows) {
      for (const [cell, expression] of [
        [up, `10 ^ (${db} / 10)`],
        [down, `10 ^ (-${db} / 10)`],
        [voltsUp, `10 ^ (${db} / 20)`],
        [voltsDown, `10 ^ (-${db} / 20)`],
      ] as const)
        expect(numberIn(cell) / by(expression), `${db} dB`).toBeCloseTo(1, 3);
    }
  });

  /** Common practice, no source: halving is 3 dB, a 10 dB pad passes a tenth. */
  it('has the landmarks that everybody knows', () => {
    expect(rowOf('decibels', '3')).toEqual(['3', '1.995', '0.5012', '1.413', '0.7079']);
    expect(rowOf('decibels', '10')[2]).toBe('0.1000');
    expect(rowOf('decibels', '20').slice(1)).toEqual(['100.0', '0.01000', '10.00', '0.1000']);
  });
});

describe('the table of levels', () => {
  it('agrees with a library of forty digits across several resistances', () => {
    for (const resistance of [50, 75, 600]) {
      for (const [dbm, , rms, peak, peakToPeak] of levelTable(resistance).rows) {
        const level = (dbm ?? '').replace('−', '-');
        const exact = by(`sqrt(10 ^ (${level} / 10) / 1000 * ${resistance})`);
        expect(voltsIn(rms) / exact, `${dbm} dBm`).toBeCloseTo(1, 2);
        expect(voltsIn(peak) / (exact * Math.SQRT2)).toBeCloseTo(1, 2);
        expect(voltsIn(peakToPeak) / (exact * 2 * Math.SQRT2)).toBeCloseTo(1, 2);
      }
    }
  });

  /** Common practice, no source: 0 dBm is 0.224 V across 50 ohms and 0.775 V across 600; 30 dBm is 1 W. */
  it('has the levels that are known by heart', () => {
    expect(rowOf('levels', '0')).toEqual(['0', `1.00${nb}mW`, `224${nb}mV`, `316${nb}mV`, `632${nb}mV`]);
    expect(levelTable(600).rows.find(([name]) => name === '0')?.[2]).toBe(`775${nb}mV`);
    expect(rowOf('levels', '30')[1]).toBe(`1.00${nb}W`);
    expect(rowOf('levels', '27')[1]).toBe(`501${nb}mW`);
  });

  it('refuses a resistance of nothing', () => {
    expect(() => levelTable(0)).toThrow(RangeError);
  });
});

describe('the tables of reflections', () => {
  it('agree with a library of forty digits', () => {
    for (const [swr, reflection, loss, back, mismatch] of tableOf('swr').rows) {
      const exact = `((${swr} - 1) / (${swr} + 1))`;
      expect(numberIn(reflection)).toBeCloseTo(by(exact), 4);
      expect(numberIn(loss)).toBeCloseTo(by(`-20 * log10(${exact})`), 1.9);
      expect(numberIn(back)).toBeCloseTo(by(`100 * ${exact} ^ 2`), 1.9);
      expect(numberIn(mismatch)).toBeCloseTo(by(`-10 * log10(1 - ${exact} ^ 2)`), 2.9);
    }
  });

  it('give the same whichever of two standing wave ratios is the source', () => {
    const { columns, rows } = tableOf('mismatch');
    expect(columns.slice(1).map(({ what }) => what)).toEqual(rows.map(([name]) => name));
    for (const [i, row] of rows.entries())
      for (const j of rows.keys()) expect(row[j + 1]).toBe(rows[j]?.[i + 1]);
  });

  it('agree with the limits worked out by hand: 20 lg(1 ± 1/3 · 1/5) for 2 and 1.5', () => {
    const upper = by('20 * log10(1 + 1 / 15)').toFixed(2);
    const lower = by('-20 * log10(1 - 1 / 15)').toFixed(2);
    const column = tableOf('mismatch').columns.findIndex(({ what }) => what === '1.5');
    expect(rowOf('mismatch', '2.0')[column]).toBe(`+${upper}/−${lower}`);
  });
});

describe('the tables of percent', () => {
  it('agree with a library of forty digits, both ways', () => {
    for (const [name, ...cells] of tableOf('to-percent').rows) {
      const db = name?.slice(1);
      const exact = ['10', '-10', '20', '-20'].map((part) => by(`100 * (10 ^ (${db} / ${part}) - 1)`));
      for (const [index, value] of exact.entries()) expect(numberIn(cells[index])).toBeCloseTo(value, 1.9);
    }
    for (const [name, ...cells] of tableOf('from-percent').rows) {
      const share = `${name?.slice(1)} / 100`;
      const exact = [
        `10 * log10(1 + ${share})`,
        `10 * log10(1 - ${share})`,
        `20 * log10(1 + ${share})`,
        `20 * log10(1 - ${share})`,
      ];
      for (const [index, expression] of exact.entries())
        expect(numberIn(cells[index])).toBeCloseTo(by(expression), 2.9);
    }
  });

  it('bring a percentage back to itself', () => {
    expect(rowOf('to-percent', '±3').slice(1)).toEqual(['+99.53', '−49.88', '+41.25', '−29.21']);
    expect(rowOf('from-percent', '±5').slice(1)).toEqual(['+0.212', '−0.223', '+0.424', '−0.446']);
  });
});

describe('the tables of factors', () => {
  /** GUM table G.2 (JCGM 100:2008), rows of 1, 5, 10 and 100 degrees and the last, as printed; of 35 degrees at 90 % it prints 1.70 for 1.69. */
  it('print what table G.2 of the GUM prints', () => {
    expect(rowOf('student', '1')).toEqual(['1', '1.84', '6.31', '12.71', '13.97', '63.66', '235.80']);
    expect(rowOf('student', '5')).toEqual(['5', '1.11', '2.02', '2.57', '2.65', '4.03', '5.51']);
    expect(rowOf('student', '10')).toEqual(['10', '1.05', '1.81', '2.23', '2.28', '3.17', '3.96']);
    expect(rowOf('student', '35')).toEqual(['35', '1.01', '1.69', '2.03', '2.07', '2.72', '3.23']);
    expect(rowOf('student', '∞')).toEqual(['∞', '1.00', '1.64', '1.96', '2.00', '2.58', '3.00']);
  });

  it('divide limits by the roots that their shapes ask for', () => {
    const divisors = tableOf('divisors').rows.map(
      ([, shape, divisor]) => [shape, numberIn(divisor)] as const,
    );
    const of = (start: string): number =>
      divisors.find(([shape]) => shape?.startsWith(start))?.[1] ?? Number.NaN;
    expect(of('rectangular')).toBeCloseTo(by('sqrt(3)'), 4);
    expect(of('triangular')).toBeCloseTo(by('sqrt(6)'), 4);
    expect(of('U-shaped')).toBeCloseTo(by('sqrt(2)'), 4);
    expect(of('trapezoid, top 1/2')).toBeCloseTo(by('sqrt(6 / (1 + 0.25))'), 4);
    // two rectangles, one half as wide: u squared is (1 + 1/4)/3 of the wider one's square, the base three halves of it
    expect(of('trapezoid, top 1/3')).toBeCloseTo(by('1.5 / sqrt((1 + 1 / 4) / 3)'), 4);
  });
});
