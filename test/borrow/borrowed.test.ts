import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calibrationOf, correctionAt, found } from '../../src/borrow/calibration.ts';
import type { CheckedAlternation } from '../../src/borrow/checked.ts';
import { demonstrationEntries } from '../../src/borrow/demonstration.ts';
import { mainCorrection } from '../../src/borrow/result-words.ts';
import { calibrated, checkedOf } from './prepared.ts';

const uOf = ({ propagation }: { propagation: { standardUncertainty: number } }) =>
  propagation.standardUncertainty;

describe('the borrowed calibration at one level', () => {
  const borrowed = calibrated('oneLevel');
  const [place] = borrowed.places;

  // An invented scenario; expected values computed by hand beside it, from 7.35 and 8.10 dBm, U 0.20 dB (k = 2), s 0.06 dB of
  // 5 rounds, step +-0.05, drift +-0.1, temperature +-0.1, mismatch +-0.1 dB (U-shaped).
  test('its readings have the means, scatter and drift that the scenario states', () => {
    expect(place?.referenceMean).toBeCloseTo(7.35, 12);
    expect(place?.ownMean).toBeCloseTo(8.1, 12);
    expect(place?.correction.standardDeviation).toBeCloseTo(0.06, 12);
    expect(place?.correction.driftHalfWidth).toBeCloseTo(0.1, 12);
    expect(place?.rounds).toHaveLength(5);
  });

  test('the correction is -0.75 dB with u 0.152 dB and U 0.30 dB', () => {
    const main = mainCorrection(borrowed);
    expect(main.value).toBeCloseTo(-0.75, 12);
    const byHand = Math.hypot(
      0.1,
      0.06 / Math.sqrt(5),
      0.05 / Math.sqrt(3),
      0.1 / Math.sqrt(3),
      0.1 / Math.sqrt(3),
      0.1 / Math.SQRT2,
    );
    expect(uOf(main)).toBeCloseTo(byHand, 12);
    expect(uOf(main)).toBeCloseTo(0.152, 3);
    expect(main.propagation.expanded).toBeCloseTo(0.3, 2);
  });

  test('a later 7.90 dBm is 7.15 dBm +-0.38 dB', () => {
    expect(borrowed.later?.value).toBeCloseTo(7.15, 12);
    expect(borrowed.later?.propagation.expanded).toBeCloseTo(0.38, 2);
  });

  test('the data sheet of +-1 dB is not contradicted: E_n 0.63', () => {
    // 0.75 against sqrt((2 / sqrt 3)^2 + 0.304^2)
    expect(place?.agreement?.normalisedError).toBeCloseTo(0.75 / Math.hypot(2 / Math.sqrt(3), 0.304), 3);
    expect(place?.agreement?.compatible).toBe(true);
    const narrow = calibrated('oneLevel', { claimed: '0.3' });
    expect(narrow.places[0]?.agreement?.compatible).toBe(false);
    expect(calibrated('oneLevel', { claimed: '' }).places[0]?.agreement).toBeUndefined();
  });

  test('no number of rounds makes it better than the lender', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 60 }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        (rounds, amount) => {
          const checked = checkedOf(demonstrationEntries('oneLevel')) as CheckedAlternation;
          const [one] = checked.places;
          const round = one?.rounds[4] ?? { before: 0, own: 0, after: 0 };
          const many: CheckedAlternation = {
            ...checked,
            lender: { form: 'expanded', amount, factor: 2, drift: 0 },
            places: [{ id: 'place1', at: 8.1, rounds: Array.from({ length: rounds }, () => round) }],
          };
          const calibration = calibrationOf(many);
          if (typeof calibration === 'string') throw new Error(calibration);
          expect(uOf(mainCorrection(calibration))).toBeGreaterThanOrEqual(amount / 2);
          expect(uOf(calibration.later ?? mainCorrection(calibration))).toBeGreaterThan(
            uOf(mainCorrection(calibration)),
          );
        },
      ),
    );
  });

  test('limits of a data sheet take the place of U, and then its drift is not counted', () => {
    const limits = calibrated('oneLevel', { stated: 'rectangular', amount: '0.3', lenderDrift: '5' });
    const row = mainCorrection(limits).propagation.budget.find(({ id }) => id === 'lender');
    expect(row?.standardUncertainty).toBeCloseTo(0.3 / Math.sqrt(3), 12);
    expect(mainCorrection(limits).propagation.budget.map(({ id }) => id)).not.toContain('lender drift');
    const drifted = calibrated('oneLevel', { lenderDrift: '0.3' });
    expect(uOf(mainCorrection(drifted))).toBeCloseTo(
      Math.hypot(uOf(mainCorrection(borrowed)), 0.3 / Math.sqrt(3)),
      12,
    );
  });

  test('one round needs a scatter known from earlier', () => {
    const one = { places: [{ id: 'place1', at: '', readings: '7.3 8.1 7.4' }] };
    const checked = checkedOf({ ...demonstrationEntries('oneLevel'), ...one }) as CheckedAlternation;
    expect(calibrationOf(checked)).toBe('noScatter');
    const known = calibrated('oneLevel', { ...one, scatter: '0.05', repeats: '13' });
    expect(known.scatter).toEqual({ standardDeviation: expect.closeTo(0.05, 12), degreesOfFreedom: 12 });
    expect(mainCorrection(known).propagation.budget[1]?.standardUncertainty).toBeCloseTo(0.05, 12);
  });

  test('what was known from earlier is pooled with what was read', () => {
    const pooled = calibrated('oneLevel', { scatter: '0.03', repeats: '5' }).scatter;
    expect(pooled.degreesOfFreedom).toBe(8);
    expect(pooled.standardDeviation).toBeCloseTo(Math.sqrt((4 * 0.06 ** 2 + 4 * 0.03 ** 2) / 8), 12);
  });

  test('a scale that may bend widens the later reading and not the correction', () => {
    const bent = calibrated('oneLevel', { linearity: '0.5' });
    expect(uOf(mainCorrection(bent))).toBe(uOf(mainCorrection(borrowed)));
    expect(uOf(bent.later ?? mainCorrection(bent))).toBeCloseTo(
      Math.hypot(uOf(borrowed.later ?? mainCorrection(borrowed)), 0.5 / Math.sqrt(3)),
      12,
    );
  });
});

describe('a line of corrections over levels', () => {
  const line = calibrated('line');

  test('has a place for each level, in order, with the scatter of all rounds together', () => {
    expect(line.places.map(({ at }) => at)).toEqual(
      [...line.places.map(({ at }) => at)].toSorted((a, b) => a - b),
    );
    expect(line.places).toHaveLength(4);
    expect(line.scatter.degreesOfFreedom).toBe(4 * 2);
    expect(line.line?.range.lower).toBe(line.places[0]?.at);
    expect(line.line?.range.upper).toBe(line.places[3]?.at);
  });

  test('what the places share is added whole when the line is read', () => {
    const bare = calibrated('line', { temperature: '', mismatch: '' });
    const at = line.line?.middle ?? 0;
    const u = (calibration: typeof line) => uOf(found(correctionAt(calibration, at)));
    expect(u(line)).toBeCloseTo(Math.hypot(u(bare), 0.1 / Math.sqrt(3), 0.1 / Math.SQRT2), 12);
    expect(u(bare)).toBeGreaterThan(0.1);
  });

  test('weighs its places with what is their own: scatter, drift and step', () => {
    for (const place of line.places) {
      const own = Math.hypot(
        line.scatter.standardDeviation / Math.sqrt(place.rounds.length),
        place.correction.driftHalfWidth / Math.sqrt(3),
        0.05 / Math.sqrt(3),
      );
      expect(place.ownUncertainty).toBeCloseTo(own, 12);
    }
  });

  test('corrects a later reading at the level that is shown', () => {
    const at = line.checked.later?.reading ?? 0;
    expect(line.later?.value).toBeCloseTo(at + found(correctionAt(line, at)).value, 12);
  });

  test('beyond its ends there is no correction', () => {
    expect(() => correctionAt(line, 25)).toThrow('at must be from');
  });

  test('readings that agree to the last digit cannot weigh a line', () => {
    const equal = ['0;1;0\n0;1;0', '10;11;10\n10;11;10'];
    const places = equal.map((readings, index) => ({ id: `place${index}`, at: '', readings }));
    const checked = checkedOf({ ...demonstrationEntries('line'), places, resolution: '', later: '' });
    expect(calibrationOf(checked as CheckedAlternation)).toBe('nothingOwn');
    expect(
      typeof calibrationOf(
        checkedOf({ ...demonstrationEntries('line'), places, later: '' }) as CheckedAlternation,
      ),
    ).toBe('object');
  });

  test('over frequencies, a later reading is corrected at its own', () => {
    const byFrequency = calibrated('line', {
      along: 'frequency',
      later: '5',
      laterAt: '7.1',
      places: [
        { id: 'a', at: '14.2', readings: '5 5.9 5\n5 5.95 5' },
        { id: 'b', at: '3.58 MHz', readings: '5 5.5 5\n5 5.55 5' },
      ],
    });
    expect(byFrequency.places.map(({ at }) => at)).toEqual([3.58, 14.2]);
    const share = (7.1 - 3.58) / (14.2 - 3.58);
    expect(byFrequency.later?.value).toBeCloseTo(5 - 0.525 - 0.4 * share, 10);
  });
});
