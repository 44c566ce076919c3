import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propagate } from '#compute';
import { sheetAt } from '../../src/sheet/at-point.ts';
import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import {
  clubInLine,
  type InLineUse,
  inLineFound,
  otherParts,
  scaleErrorW,
  scaleLimitsDb,
  swrFound,
} from '../../src/sheet/in-line-meter.ts';
import { usualLinks } from '../../src/sheet/method-links.ts';
import { toModel } from '../../src/sheet/to-model.ts';

const uses: fc.Arbitrary<InLineUse> = fc.record({
  forwardW: fc.integer({ min: 1, max: 2000 }).map((hundredths) => hundredths / 100),
  reflectedW: fc.integer({ min: 0, max: 2000 }).map((hundredths) => hundredths / 100),
  fullScaleW: fc.integer({ min: 1, max: 100 }),
  percentOfFullScale: fc.integer({ min: 0, max: 20 }).map((halves) => halves / 2),
  directivityDb: fc.integer({ min: 10, max: 50 }),
  wanted: fc.constantFrom('net' as const, 'incident' as const),
});

describe('the power from a meter in the line', () => {
  it('is there just where both needles are on the scale, less comes back, and the scale errs by no more than a third', () => {
    fc.assert(
      fc.property(uses, (use) => {
        const readable = use.forwardW <= use.fullScaleW && use.reflectedW < use.forwardW;
        const [power, needles] =
          use.wanted === 'net' ? [use.forwardW - use.reflectedW, 2] : [use.forwardW, 1];
        const ratio = (needles * scaleErrorW(use)) / power;
        fc.pre(Math.abs(ratio - 1 / 3) > 1e-6);
        expect(inLineFound(use).found).toBe(readable && ratio < 1 / 3);
      }),
    );
  });

  it('is, for the club, what the bench makes of the same readings', () => {
    const outcome = inLineFound(clubInLine());
    if (!outcome.found) throw new Error('wish a result, got none');
    const model = toModel(sheetAt(clubMeasurement('inLine'), 'point1'));
    const bench = propagate({ model });
    expect(outcome.result.propagation.standardUncertainty).toBeCloseTo(bench.standardUncertainty, 9);
  });

  it('counts the other parts as the bench assumes them', () => {
    const usual = usualLinks('inLine').map(({ id, stated, unit }) => ({ id, statement: stated, unit }));
    expect(otherParts()).toEqual(usual);
  });

  it('falls with what comes back, and is forward alone where that is wanted', () => {
    const level = (use: InLineUse): number => {
      const outcome = inLineFound(use);
      if (!outcome.found) throw new Error('wish a result, got none');
      return outcome.result.estimate;
    };
    const use = { ...clubInLine(), percentOfFullScale: 0 };
    expect(level({ ...use, reflectedW: 0.1 })).toBeCloseTo(10 * Math.log10(410), 3);
    expect(level({ ...use, wanted: 'incident' })).toBeCloseTo(10 * Math.log10(510), 3);
  });
});

describe('the limits of a reading by its scale', () => {
  it('are the same watts everywhere, and none below three times them', () => {
    fc.assert(
      fc.property(uses, fc.double({ min: 0.001, max: 1, noNaN: true }), (use, part) => {
        const reading = part * use.fullScaleW;
        const found = scaleLimitsDb(use, reading);
        const error = scaleErrorW(use);
        fc.pre(Math.abs(3 * error - reading) > 1e-6 * reading);
        expect(found !== undefined).toBe(3 * error < reading);
        if (found === undefined) return;
        expect(reading * 10 ** (found.upper / 10)).toBeCloseTo(reading + error, 9);
        expect(reading * 10 ** (found.lower / 10)).toBeCloseTo(reading - error, 9);
      }),
    );
  });

  it('are still given at just a third: three watts on twenty', () => {
    const limits = scaleLimitsDb({ ...clubInLine(), fullScaleW: 20 }, 3);
    expect(limits?.upper).toBeCloseTo(1.249, 3);
    expect(limits?.lower).toBeCloseTo(-1.761, 3);
  });
});

describe('the match from a meter in the line', () => {
  it('lies between its limits, which hold the SWR as read', () => {
    fc.assert(
      fc.property(uses, (use) => {
        const outcome = swrFound(use);
        if (!outcome.found) return;
        expect(outcome.lower).toBeLessThanOrEqual(outcome.swr);
        expect(outcome.upper).toBeGreaterThanOrEqual(outcome.swr);
        expect(outcome.lower).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  it('is 1.34 to 1.69 for SWR 1.50 at a directivity of 25 dB, and narrower for a better coupler', () => {
    const use = { ...clubInLine(), forwardW: 5, reflectedW: 0.2, fullScaleW: 20, percentOfFullScale: 0 };
    const [fair, good] = [swrFound(use), swrFound({ ...use, directivityDb: 35 })];
    if (!(fair.found && good.found)) throw new Error('wish an SWR, got none');
    const leak = 10 ** (-25 / 20);
    const swr = (r: number): number => (1 + r) / (1 - r);
    expect(fair.swr).toBeCloseTo(1.5, 9);
    expect(fair.lower).toBeCloseTo(swr(0.2 - leak), 9);
    expect(fair.upper).toBeCloseTo(swr(0.2 + leak), 9);
    expect(good.upper - good.lower).toBeLessThan(fair.upper - fair.lower);
  });

  it('is not there where the reflected needle stands too low', () => {
    expect(swrFound(clubInLine())).toMatchObject({ found: false, reason: { code: 'fullScaleError' } });
    expect(swrFound({ ...clubInLine(), reflectedW: 0.48 })).toMatchObject({ found: false });
  });
});
