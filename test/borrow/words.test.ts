import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { residualsOf } from '../../src/borrow/figure.ts';
import { outcomeOf } from '../../src/borrow/outcome.ts';
import { placeText } from '../../src/borrow/place-text.ts';
import { readEntries } from '../../src/borrow/read-entries.ts';
import {
  agreementOf,
  answersOf,
  mainCorrection,
  notesOf,
  summariseCalibration,
} from '../../src/borrow/result-words.ts';
import { budgetLines, placeLines } from '../../src/borrow/tables.ts';
import { anyEntries } from './any-entries.ts';
import { calibrated } from './prepared.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('the result in words', () => {
  test('gives correction, the lender’s share and the later reading', () => {
    const answers = answersOf(calibrated('oneLevel')).map(({ figure, words }) =>
      plain(`${figure} | ${words}`),
    );
    expect(answers).toEqual([
      '−0.75 dB ±0.30 dB | to be added to what it shows, from 5 rounds at 8.10 dBm; U with k = 2.00',
      expect.stringMatching(
        /^43 % from the lender \| of the squared uncertainty: ±0\.20 dB came with it, ±0\.30 dB goes home/,
      ),
      expect.stringMatching(/^7\.15 dBm ±0\.38 dB \| where it shows 7\.90 dBm: .* k = 2\.01$/),
    ]);
  });

  test('leaves the later reading out where there is none', () => {
    expect(answersOf(calibrated('oneLevel', { later: '' }))).toHaveLength(2);
  });

  test('a line is given at its middle, with its ends', () => {
    const [first] = answersOf(calibrated('line'));
    expect(plain(first?.figure ?? '')).toMatch(/^−0\.7\d dB ±0\.\d\d dB at \d\.\d\d dBm$/);
    expect(plain(first?.words ?? '')).toContain('through 4 places, from −9.26 dBm to 13.63 dBm');
  });

  test('is spoken without signs that nobody hears', () => {
    const spoken = summariseCalibration(calibrated('oneLevel'));
    expect(spoken).toContain('Minus 0.75 decibels plus or minus 0.30 decibels');
    expect(spoken).not.toMatch(/[−±]/);
  });

  test('says scatter and drift, or that there was none', () => {
    expect(notesOf(calibrated('oneLevel')).map(plain).slice(0, 2)).toEqual([
      'Single rounds scatter by 0.060 dB (standard deviation, 4 degrees of freedom).',
      expect.stringContaining('at most ±0.10 dB'),
    ]);
    const steady = calibrated('oneLevel', { places: [{ id: 'a', at: '', readings: '7 8 7\n7 8.1 7' }] });
    expect(notesOf(steady)).toContain('The reference read the same before and after every round.');
    expect(notesOf(steady)[0]).toContain('one degree of freedom');
  });

  test('says whether the places lie on their line, and that two always do', () => {
    expect(notesOf(calibrated('line')).at(-1)).toMatch(/Birge ratio/);
    const at = (correction: number, level: number, id: string) => ({
      id,
      at: '',
      readings: `${level};${level - correction};${level}\n${level};${level - correction + 0.01};${level}`,
    });
    const bent = calibrated('line', { later: '', places: [at(0, 0, 'a'), at(1, 10, 'b'), at(0, 20, 'c')] });
    expect(notesOf(bent).at(-1)).toMatch(/the scatter has taken their place/);
    const two = calibrated('line', { later: '', places: [at(0, 0, 'a'), at(1, 10, 'b')] });
    expect(notesOf(two).at(-1)).toMatch(/^Two places always make a line/);
  });

  test('warns of a later reading far from the only level, unless its scale is said to be straight', () => {
    const far = notesOf(calibrated('oneLevel', { later: '-10' })).at(-1) ?? '';
    expect(plain(far)).toBe(
      'The later reading, −10.00 dBm, is 18.1 dB away from the calibrated 8.10 dBm: say how straight the scale is, or calibrate there too.',
    );
    expect(notesOf(calibrated('oneLevel', { later: '-10', linearity: '0.3' }))).toHaveLength(2);
    expect(notesOf(calibrated('oneLevel', { later: '8.9' }))).toHaveLength(2);
  });

  test('says whether the data sheet is kept, where it is farthest off', () => {
    expect(plain(agreementOf(calibrated('line')) ?? '')).toMatch(/^Where it is farthest off: At −9\.26 dBm/);
    expect(plain(agreementOf(calibrated('oneLevel')) ?? '')).toMatch(
      /^At 8\.10 dBm .* Normalised error 0\.63: the two agree/,
    );
    expect(agreementOf(calibrated('oneLevel', { claimed: '0.2' }))).toContain(
      'beyond 1: one of the two is not what it claims',
    );
    expect(agreementOf(calibrated('oneLevel', { claimed: '' }))).toBeUndefined();
  });

  test('names places with their unit', () => {
    expect(plain(placeText('level', -9.256))).toBe('−9.26 dBm');
    expect(plain(placeText('frequency', 3.58))).toBe('3.58 MHz');
    expect(plain(placeText('frequency', 145))).toBe('145 MHz');
  });
});

describe('the tables', () => {
  test('the budget has every part in words, the largest first, and its shares make a whole', () => {
    const { propagation } = mainCorrection(calibrated('oneLevel'));
    const lines = budgetLines(propagation);
    expect(lines[0]?.label).toBe('Lender’s statement');
    expect(lines.map(({ label }) => label)).not.toEqual(
      expect.arrayContaining([expect.stringMatching(/^[a-z]/)]),
    );
    const shares = lines.map(({ shareOf }) => shareOf);
    expect(shares).toEqual(shares.toSorted((a, b) => b - a));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  test('the places have their own correction beside the line’s', () => {
    const lines = placeLines(calibrated('line'));
    expect(lines.map(({ at }) => plain(at))).toEqual(['−9.26 dBm', '0.73 dBm', '8.09 dBm', '13.63 dBm']);
    for (const { correction, line, ratio, rounds } of lines) {
      expect(correction).toMatch(/^−0\.\d\d/);
      expect(line).toMatch(/^−0\.\d\d/);
      expect(ratio).toMatch(/^0\.\d\d$/);
      expect(rounds).toBe('3');
    }
    expect(placeLines(calibrated('oneLevel'))[0]).toMatchObject({ line: undefined, lineExpanded: undefined });
  });
});

describe('the figure', () => {
  test('has a point a round, whose mean is nothing, and the drift as bars', () => {
    const { points, band, domain } = residualsOf(calibrated('oneLevel'));
    expect(points.map(({ x }) => x)).toEqual([1, 2, 3, 4, 5]);
    expect(points.reduce((sum, { y }) => sum + y, 0)).toBeCloseTo(0, 12);
    expect(points[0]).toEqual({ x: 1, y: expect.closeTo(0.06, 12), half: expect.closeTo(0.1, 12) });
    expect(band.map(({ upper }) => upper)).toEqual(
      Array(2).fill(expect.closeTo((2 * 0.06) / Math.sqrt(5), 12)),
    );
    expect(domain).toEqual({ lower: 0.5, upper: 5.5 });
  });

  test('over places has the weighted residuals of the line, and all rounds', () => {
    const line = calibrated('line');
    const { points, dots, band } = residualsOf(line);
    expect(dots).toHaveLength(12);
    const weighted = points.reduce((sum, { y, half }) => sum + y / half ** 2, 0);
    expect(weighted).toBeCloseTo(0, 8);
    // narrowest at the middle of the line
    const middle = line.line?.middle ?? 0;
    const narrowest = band.toSorted((a, b) => a.upper - b.upper)[0];
    expect(Math.abs((narrowest?.x ?? 0) - middle)).toBeLessThan(1);
  });

  test('of anything that can be computed, everything is finite and can be said', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const { checked } = readEntries(entries);
        const outcome = checked && outcomeOf(checked);
        if (outcome?.kind !== 'calibration') return;
        const { calibration } = outcome;
        const said = [
          summariseCalibration(calibration),
          ...notesOf(calibration),
          agreementOf(calibration) ?? '',
          ...placeLines(calibration).flatMap((line) => Object.values(line)),
        ].join(' ');
        expect(said).not.toMatch(/NaN|undefined|Infinity/);
        for (const { x, y, half } of residualsOf(calibration).points)
          expect([x, y, half].every(Number.isFinite)).toBe(true);
      }),
    );
  });
});
