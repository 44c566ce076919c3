import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { propagate } from '../../src/compute/combine/propagate.ts';
import { componentOf } from '../../src/compute/component.ts';
import { evaluate } from '../../src/compute/evaluate.ts';
import { correctedReading, TRANSFER_IDS, transferModel } from '../../src/compute/transfer.ts';
import { correctionOf, roundsOf, type TransferRound } from '../../src/compute/transfer-rounds.ts';
import { limited } from './combine/published-models.ts';

const lender = () =>
  componentOf({
    id: 'lender',
    statement: { form: 'expanded', expanded: 0.2, coverageFactor: 2 },
    unit: 'dB',
  });
const level = fc.double({ min: -20, max: 20, noNaN: true });
const rounds = fc.array(fc.record<TransferRound>({ before: level, own: level, after: level }), {
  minLength: 2,
  maxLength: 8,
});
const uOf = (model: Parameters<typeof propagate>[0]['model']) => propagate({ model }).standardUncertainty;

describe('alternating readings', () => {
  test("reading more on one's own instrument lowers the correction by as much", () => {
    fc.assert(
      fc.property(rounds, level, (data, shift) => {
        const moved = data.map((round) => ({ ...round, own: round.own + shift }));
        expect(correctionOf(moved).correction).toBeCloseTo(correctionOf(data).correction - shift, 10);
        expect(correctionOf(moved).standardDeviation).toBeCloseTo(
          correctionOf(data).standardDeviation ?? Number.NaN,
          9,
        );
        expect(correctionOf(moved).driftHalfWidth).toBe(correctionOf(data).driftHalfWidth);
      }),
    );
  });

  test('a drift that is straight in time cancels', () => {
    fc.assert(
      fc.property(level, fc.double({ min: -0.1, max: 0.1, noNaN: true }), (start, drift) => {
        // Reference and own instrument both follow the source, which drifts from reading to reading; own reads 0.75 more.
        const readings = Array.from({ length: 9 }, (_, i) => start + drift * i + (i % 2 === 1 ? 0.75 : 0));
        const found = correctionOf(roundsOf(readings));
        expect(found.correction).toBeCloseTo(-0.75, 9);
        expect(found.driftHalfWidth).toBeCloseTo(Math.abs(drift), 9);
        expect(found.rounds).toBe(4);
      }),
    );
  });

  test('one round has a correction and no scatter', () => {
    expect(correctionOf([{ before: 7.3, own: 8.1, after: 7.4 }])).toEqual({
      correction: expect.closeTo(-0.75, 12),
      rounds: 1,
      standardDeviation: undefined,
      driftHalfWidth: expect.closeTo(0.05, 12),
    });
  });

  test('the largest drift within a round is what may be left', () => {
    const rounds = roundsOf([7, 8, 7.1, 8, 7.4]);
    expect(rounds).toEqual([
      { before: 7, own: 8, after: 7.1 },
      { before: 7.1, own: 8, after: 7.4 },
    ]);
    expect(correctionOf(rounds).driftHalfWidth).toBeCloseTo(0.15, 12);
    expect(roundsOf([7, 8, 7.1])).toHaveLength(1);
  });

  test('what is no alternation is refused', () => {
    expect(() => roundsOf([1, 2])).toThrow(
      'roundsOf: there must be an odd number of readings, 3 or more, got 2',
    );
    expect(() => roundsOf([1, 2, 3, 4])).toThrow('got 4');
    expect(() => roundsOf([1])).toThrow('got 1');
    expect(() => correctionOf([])).toThrow('correctionOf: there must be 1 or more rounds, got 0');
    expect(() => correctionOf([{ before: Number.NaN, own: 1, after: 1 }])).toThrow(
      'correctionOf: reading must be a finite number, got NaN',
    );
  });
});

describe('a correction with its uncertainty', () => {
  /** Five rounds that give -0.75 dB with a scatter of 0.06 dB and a drift of 0.1 dB. */
  const found = {
    correction: -0.75,
    rounds: 5,
    standardDeviation: 0.06,
    driftHalfWidth: 0.1,
  };
  const parts = () => [
    limited('resolution', 0.05),
    limited('temperature', 0.1),
    limited('mismatch', 0.1, { shape: 'arcsine' }),
  ];
  const later = () => [
    componentOf({
      id: 'later scatter',
      statement: { form: 'standard', standardUncertainty: 0.06 },
      unit: 'dB',
    }),
    limited('later resolution', 0.05),
    limited('later temperature', 0.1),
    limited('later mismatch', 0.1, { shape: 'arcsine' }),
  ];

  test('the borrowed calibration: -0.75 dB with 0.152 dB, and 7.15 dBm +-0.38 dB later', () => {
    const correction = transferModel({ found, lender: lender(), parts: parts() });
    expect(correction.constant).toBe(-0.75);
    expect(uOf(correction)).toBeCloseTo(0.152, 3);
    expect(2 * uOf(correction)).toBeCloseTo(0.3, 2);
    const corrected = correctedReading({ reading: 7.9, correction, parts: later() });
    expect(evaluate({ model: corrected }).estimate).toBeCloseTo(7.15, 12);
    expect(2 * uOf(corrected)).toBeCloseTo(0.38, 2);
  });

  test('however many rounds, it is never better than the lender', () => {
    fc.assert(
      fc.property(rounds, (data) => {
        const correction = transferModel({ found: correctionOf(data), lender: lender() });
        expect(uOf(correction)).toBeGreaterThanOrEqual(0.1);
        expect(uOf(correctedReading({ reading: 1, correction, parts: later() }))).toBeGreaterThan(
          uOf(correction),
        );
      }),
    );
    const many = { ...found, rounds: 1e6, driftHalfWidth: 0 };
    expect(uOf(transferModel({ found: many, lender: lender() }))).toBeCloseTo(0.1, 6);
  });

  test('scatter counts by the root of the rounds with n - 1 degrees, drift as limits', () => {
    const { budget } = propagate({ model: transferModel({ found, lender: lender() }) });
    const row = (id: string) => budget.find((r) => r.id === id);
    expect(row(TRANSFER_IDS.scatter)).toMatchObject({
      standardUncertainty: expect.closeTo(0.06 / Math.sqrt(5), 12),
      degreesOfFreedom: 4,
    });
    expect(row(TRANSFER_IDS.drift)?.standardUncertainty).toBeCloseTo(0.1 / Math.sqrt(3), 12);
    const steady = transferModel({ found: { ...found, driftHalfWidth: 0 }, lender: lender() });
    expect(steady.inputs.map(({ id }) => id)).toEqual(['lender', TRANSFER_IDS.scatter]);
  });

  test('one round leans on a pooled scatter, and is refused without', () => {
    const one = { ...found, rounds: 1, standardDeviation: undefined };
    expect(() => transferModel({ found: one, lender: lender() })).toThrow(
      'transferModel: one round needs a pooled scatter, got 1',
    );
    const pooled = { standardDeviation: 0.05, degreesOfFreedom: 12 };
    const { budget } = propagate({ model: transferModel({ found: one, lender: lender(), pooled }) });
    expect(budget[1]).toMatchObject({ standardUncertainty: 0.05, degreesOfFreedom: 12 });
    const four = propagate({
      model: transferModel({ found: { ...found, rounds: 4 }, lender: lender(), pooled }),
    });
    expect(four.budget[1]?.standardUncertainty).toBeCloseTo(0.025, 12);
  });

  test('a cause that correction and later reading share counts once, with its whole effect', () => {
    const correction = transferModel({
      found: { ...found, driftHalfWidth: 0, standardDeviation: 0 },
      lender: lender(),
      parts: [limited('temperature', 0.1, { cause: 'room' })],
    });
    const model = correctedReading({
      reading: 0,
      correction,
      parts: [limited('later', 0.1, { cause: 'room' })],
    });
    expect(uOf(model)).toBeCloseTo(Math.hypot(0.1, 0.2 / Math.sqrt(3)), 10);
  });

  test('a reading without parts of its own brings the correction alone', () => {
    const correction = transferModel({ found, lender: lender() });
    const model = correctedReading({ reading: 7, correction });
    expect(model).toEqual({ ...correction, constant: 7 + correction.constant });
  });

  test('a reading that is no number is refused', () => {
    const correction = transferModel({ found, lender: lender() });
    expect(() => correctedReading({ reading: Number.NaN, correction })).toThrow(
      'correctedReading: reading must be a finite number',
    );
  });
});
