import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellCharacteristics } from '../../../src/compute/combine/cells.ts';
import { centreOf, extentOf, isHeavy, spreadOf } from '../../../src/compute/combine/extent.ts';
import { referenceOf } from '../../../src/compute/combine/reference.ts';
import { seriesOf } from '../../../src/compute/combine/series.ts';
import { spectrumOf } from '../../../src/compute/combine/spectrum.ts';
import { certain, moved, sumOfParts } from '../../../src/compute/combine/sum.ts';
import { gather } from '../../../src/compute/combine/term.ts';
import { arcsine } from '../../../src/compute/distribution/arcsine.ts';
import { constant } from '../../../src/compute/distribution/constant.ts';
import { curvilinear } from '../../../src/compute/distribution/curvilinear.ts';
import type { Distribution } from '../../../src/compute/distribution/distribution.ts';
import { normal } from '../../../src/compute/distribution/normal.ts';
import { rectangular } from '../../../src/compute/distribution/rectangular.ts';
import { scaled } from '../../../src/compute/distribution/scaled.ts';
import { isMember, type Member } from '../../../src/compute/distribution/standard.ts';
import { student } from '../../../src/compute/distribution/student.ts';
import { transformed } from '../../../src/compute/distribution/transformed.ts';
import { trapezoidal } from '../../../src/compute/distribution/trapezoidal.ts';
import { triangular } from '../../../src/compute/distribution/triangular.ts';
import { besselJ0 } from '../../../src/compute/special/bessel.ts';
import { normalShareBelow } from '../../../src/compute/special/normal.ts';
import { anySymmetric, inDecibels } from '../distribution/shapes.ts';

const within = (half: number) => rectangular({ lower: -half, upper: half });
const gauss = (standardDeviation: number, mean = 0) => normal({ mean, standardDeviation });
const uShape = (halfWidth: number) => arcsine({ centre: 0, halfWidth });
const t = (degreesOfFreedom: number, scale = 1) => student({ location: 0, scale, degreesOfFreedom });

/** The same shape, but no longer known by its family: it goes the numerical way. */
const unnamed = (of: Distribution): Distribution =>
  transformed({ of, forward: (x) => x, inverse: (y) => y, slope: () => 1 });

describe('characteristic functions from cells', () => {
  const period = 8;
  const frequencies = [1, 2, 5, 11, 30];
  const w = (j: number) => (2 * Math.PI * j) / period;

  test('are those of the formulas, for bounded shapes', () => {
    const shapes: [Distribution, (w: number) => number][] = [
      [within(1), (x) => Math.sin(x) / x],
      [triangular({ lower: -1, upper: 1 }), (x) => (Math.sin(x / 2) / (x / 2)) ** 2],
      [uShape(1), besselJ0],
      [
        trapezoidal({ lower: -1, upper: 1, topRatio: 0.5 }),
        (x) => ((Math.sin(0.75 * x) / (0.75 * x)) * Math.sin(0.25 * x)) / (0.25 * x),
      ],
    ];
    for (const [shape, formula] of shapes)
      for (const size of [512, 2048]) {
        const [row] = cellCharacteristics([unnamed(shape)], { period, size }, size / 4);
        for (const j of frequencies) {
          expect(Math.abs((row?.re[j] as number) - formula(w(j)))).toBeLessThan(size === 512 ? 2e-5 : 2e-7);
          expect(Math.abs(row?.im[j] as number)).toBeLessThan(1e-10);
        }
      }
  });

  test('of the curvilinear trapezoid are the mean over its half-widths', () => {
    const shape = curvilinear({ lower: -1, upper: 1, limitHalfWidth: 0.3 });
    const [row] = cellCharacteristics([shape], { period, size: 2048 }, 512);
    for (const j of frequencies) {
      let mean = 0;
      for (let k = 0; k < 2000; k++) {
        const half = 0.7 + (0.6 * (k + 0.5)) / 2000;
        mean += Math.sin(w(j) * half) / (w(j) * half) / 2000;
      }
      expect(Math.abs((row?.re[j] as number) - mean)).toBeLessThan(1e-6);
    }
  });

  test('of a normal shape are right whether it is wide, narrow or in between', () => {
    for (const standardDeviation of [0.002, 0.01, 0.03, 0.05, 0.3]) {
      const [row] = cellCharacteristics([unnamed(gauss(standardDeviation))], { period, size: 1024 }, 256);
      for (const j of frequencies) {
        const wanted = Math.exp(-0.5 * (w(j) * standardDeviation) ** 2);
        expect(Math.abs((row?.re[j] as number) - wanted)).toBeLessThan(1e-6);
      }
    }
  });

  test('are taken about the mean, wherever that lies', () => {
    for (const standardDeviation of [0.002, 0.3]) {
      const parts = [0, 3].map((mean) => unnamed(gauss(standardDeviation, mean)));
      const [here, there] = cellCharacteristics(parts, { period, size: 1024 }, 256);
      for (const j of frequencies) {
        expect(there?.re[j]).toBeCloseTo(here?.re[j] as number, 6);
        expect(there?.im[j]).toBeCloseTo(0, 6);
      }
    }
  });

  test('come in the order asked for, however many', () => {
    const parts = [within(1), within(0.5), within(0.25)].map(unnamed);
    const rows = cellCharacteristics(parts, { period, size: 1024 }, 256);
    expect(rows).toHaveLength(3);
    for (const [k, half] of [1, 0.5, 0.25].entries())
      expect(rows[k]?.re[3]).toBeCloseTo(Math.sin(w(3) * half) / (w(3) * half), 6);
    expect(cellCharacteristics([], { period, size: 1024 }, 256)).toEqual([]);
  });

  test('are taken about the centre of the part', () => {
    const [row] = cellCharacteristics(
      [unnamed(rectangular({ lower: 4, upper: 6 }))],
      { period, size: 1024 },
      256,
    );
    expect(row?.re[2]).toBeCloseTo(Math.sin(w(2)) / w(2), 6);
    expect(row?.im[2]).toBeCloseTo(0, 9);
  });
});

describe('a part not known by its family', () => {
  test('gives the same sum as the family does', () => {
    fc.assert(
      fc.property(anySymmetric, anySymmetric, fc.constantFrom(0.025, 0.3, 0.975), (one, other, p) => {
        fc.pre(one.shape !== 'student' || (one as Member).standard.degreesOfFreedom !== undefined);
        fc.pre(one.shape !== 'student');
        const known = sumOfParts([one, other]);
        const numerical = sumOfParts([unnamed(one), other]);
        const spread = known.quantile(0.84) - known.quantile(0.16);
        expect(Math.abs(known.quantile(p) - numerical.quantile(p))).toBeLessThan(1e-4 * spread);
      }),
      { numRuns: 40 },
    );
  });

  test('has its long tails followed as well, to 1e-4', () => {
    for (const n of [2.2, 3, 5, 9]) {
      const [known, numerical] = [sumOfParts([t(n), within(1)]), sumOfParts([unnamed(t(n)), within(1)])];
      for (const p of [0.025, 0.5, 0.975])
        expect(Math.abs(known.quantile(p) - numerical.quantile(p))).toBeLessThan(1e-3);
    }
  });
});

describe('small parts beside a large one', () => {
  test('with long tails widen a U shape as they do where all are known by their families, to 1e-6', () => {
    const parts = [t(3, 0.01), uShape(1), gauss(0.02)];
    const [known, numerical] = [sumOfParts(parts), sumOfParts(parts.map(unnamed))];
    for (const p of [0.001, 0.025, 0.16, 0.975])
      expect(Math.abs(known.quantile(p) - numerical.quantile(p))).toBeLessThan(1e-6);
  });

  // A t of so many degrees is a normal, but for the fourth digit.
  test('leave a t of very many degrees as they leave a normal, to 1e-3', () => {
    const [one, other] = [sumOfParts([t(1e5), within(0.01)]), sumOfParts([gauss(1), within(0.01)])];
    for (const p of [0.001, 0.025, 0.3, 0.975])
      expect(Math.abs(one.quantile(p) - other.quantile(p))).toBeLessThan(1e-3);
  });
});

describe('the extent of a sum', () => {
  test('a part is centred at its mean, or its median where it has none', () => {
    expect(centreOf(gauss(1, 5))).toBe(5);
    expect(centreOf(student({ location: 3, scale: 1, degreesOfFreedom: 1 }))).toBe(3);
    const lopsided = inDecibels(within(0.3));
    expect(centreOf(lopsided)).toBe(lopsided.mean);
    const noMean = inDecibels(t(1, 0.01));
    expect(centreOf(noMean)).toBe(noMean.quantile(0.5));
  });

  test('its spread is its standard deviation, or that of its core', () => {
    expect(spreadOf(gauss(2))).toBe(2);
    expect(spreadOf(t(4, 2))).toBe(2);
    const noDeviation = inDecibels(t(2, 0.01));
    expect(spreadOf(noDeviation)).toBeCloseTo(
      (noDeviation.quantile(0.84) - noDeviation.quantile(0.16)) / 2,
      12,
    );
  });

  test('tails are long up to 40 degrees of freedom', () => {
    expect([t(1), t(39.9)].map(isHeavy)).toEqual([true, true]);
    expect([t(40), gauss(1), within(1), inDecibels(t(3, 0.01))].map(isHeavy)).toEqual([
      false,
      false,
      false,
      false,
    ]);
  });

  test('a bounded sum has a period just wider than it', () => {
    const { period, centre, heavy, lightVariance } = extentOf([within(1), uShape(0.5)]);
    expect(period).toBeGreaterThan(3);
    expect(period).toBeLessThan(3.1);
    expect(centre).toBe(0);
    expect(heavy).toEqual([]);
    expect(lightVariance).toBeCloseTo(1 / 3 + 1 / 8, 12);
  });

  test('a trace of a normal part does not widen it to that of a normal sum', () => {
    expect(extentOf([uShape(1), gauss(1e-4)]).period).toBeLessThan(2.1);
    expect(extentOf([gauss(1), gauss(1)]).period).toBeCloseTo(2 * 1.02 * 7.5 * Math.SQRT2, 10);
  });

  test('many parts need no more than a normal sum', () => {
    const many = Array.from({ length: 100 }, () => within(1));
    expect(extentOf(many).period).toBeCloseTo(2 * 1.02 * 7.5 * Math.sqrt(100 / 3), 8);
  });

  test('long tails ask for more, two of them for much more', () => {
    const [none, one, two] = [
      extentOf([gauss(1), gauss(1)]),
      extentOf([gauss(1), t(3)]),
      extentOf([gauss(1), t(3), t(2)]),
    ];
    expect(one.period).toBeGreaterThan(none.period);
    expect(two.period).toBeGreaterThan(3 * one.period);
    expect(two.heavy).toHaveLength(2);
    expect(two.lightVariance).toBe(1);
  });
});

describe('the stand-in for long tails', () => {
  const extent = extentOf([t(2), within(1), gauss(0.5)]);
  const reference = referenceOf(extent);

  test('is a distribution: from 0 to 1, rising, symmetric', () => {
    expect(reference.at(0).value).toBeCloseTo(0.5, 9);
    expect(reference.at(1e7).value).toBeCloseTo(1, 6);
    for (const x of [0.1, 1, 5, 40]) {
      expect(reference.at(x).value + reference.at(-x).value).toBeCloseTo(1, 9);
      expect(reference.at(x).slope).toBeGreaterThan(0);
      const slope = (reference.at(x + 1e-4).value - reference.at(x - 1e-4).value) / 2e-4;
      expect(slope).toBeCloseTo(reference.at(x).slope, 7);
    }
  });

  test('has the tail of t far out', () => {
    for (const x of [50, 200]) {
      const tail = 1 - t(2).shareBelow(x);
      // Widened by a variance v, a tail of T grows by v T''/2 = 3 v T/x^2.
      const widened = tail * (1 + (3 * (1 / 3 + 0.25)) / (x * x));
      expect((1 - reference.at(x).value) / widened).toBeCloseTo(1, 4);
    }
  });

  test('its characteristic function belongs to it', () => {
    for (const w of [0.05, 0.3, 1, 3]) {
      let sum = 0;
      const step = 0.01;
      for (let x = -4000 + step / 2; x < 4000; x += step * (Math.abs(x) > 50 ? 10 : 1)) {
        const width = step * (Math.abs(x) > 50 ? 10 : 1);
        sum += Math.cos(w * x) * reference.at(x).slope * width;
      }
      expect(Math.abs(sum - reference.characteristicAlong(w / 40)(40))).toBeLessThan(2e-3);
    }
    expect(reference.characteristicAlong(1)(0)).toBeCloseTo(1, 9);
  });

  test('of two long tails counts the middle once', () => {
    const two = referenceOf(extentOf([t(3), t(2), gauss(1)]));
    expect(two.at(0).value).toBeCloseTo(0.5, 9);
    expect(two.characteristicAlong(1)(0)).toBeCloseTo(1, 9);
    const x = 300;
    const tails = 2 - t(3).shareBelow(x) - t(2).shareBelow(x);
    expect((1 - two.at(x).value) / tails).toBeCloseTo(1, 2);
  });
});

describe('the series', () => {
  test('of a normal sum needs a few dozen terms only', () => {
    const parts = [gauss(3), gauss(4)];
    const extent = extentOf(parts);
    const spectrum = spectrumOf(parts, extent, undefined);
    expect(spectrum.count).toBeLessThan(40);
    expect(spectrum.re.length).toBeLessThan(200);
    const at = seriesOf(spectrum, true);
    for (const x of [-12, -3, 0, 5, 11]) {
      expect(at(x).value).toBeCloseTo(normalShareBelow(x / 5), 10);
      expect(at(x).slope).toBeCloseTo(Math.exp(-0.5 * (x / 5) ** 2) / (5 * Math.sqrt(2 * Math.PI)), 10);
    }
  });

  test('of sharp edges takes all terms and is tapered', () => {
    const parts = [uShape(1), within(0.2)];
    const spectrum = spectrumOf(parts, extentOf(parts), undefined);
    expect(spectrum.count).toBe(2048);
    expect(Math.abs(spectrum.re[2048] as number)).toBeLessThan(1e-15);
  });

  test('of ten parts takes fewer cells than of two', () => {
    const ten = Array.from({ length: 10 }, () => unnamed(within(1)));
    expect(spectrumOf(ten, extentOf(ten), undefined).re.length).toBeLessThan(
      spectrumOf(ten.slice(0, 2), extentOf(ten.slice(0, 2)), undefined).re.length,
    );
  });

  test('however long the tails, is looked at in 16384 cells at the most', () => {
    const parts = [unnamed(t(1)), within(1)];
    expect(spectrumOf(parts, extentOf(parts), undefined).re.length - 1).toBe(16384 / 4);
  });

  test('starts at 0 at the lower end of the period and reaches 1 at the upper, lopsided or not', () => {
    const parts = [inDecibels(within(0.4)), inDecibels(uShape(0.1), -10), gauss(0.2)];
    const extent = extentOf(parts);
    const at = seriesOf(spectrumOf(parts, extent, undefined), true);
    expect(at(-extent.period / 2).value).toBeCloseTo(0, 8);
    expect(at(extent.period / 2 - 1e-9).value).toBeCloseTo(1, 8);
  });
});

describe('sums', () => {
  test('moved by nothing is the very same, moved by something moves everything', () => {
    const sum = sumOfParts([within(1), gauss(1)]);
    expect(moved(sum, 0)).toBe(sum);
    const up = moved(sum, 5);
    expect(up.mean).toBe(5);
    expect(up.standardDeviation).toBe(sum.standardDeviation);
    expect(up.shareBelow(5.5)).toBe(sum.shareBelow(0.5));
    expect(up.density(4)).toBe(sum.density(-1));
    expect(up.quantile(0.3)).toBe(sum.quantile(0.3) + 5);
    expect(moved(sumOfParts([within(1), within(1)]), 5).limits).toEqual({ lower: 3, upper: 7 });
    expect(moved(sumOfParts([t(1), within(1)]), 5).mean).toBeUndefined();
  });

  test('what is certain is certain', () => {
    expect(certain(4).quantile(0.9)).toBe(4);
    expect(certain(4).standardDeviation).toBe(0);
  });

  test('outside the limits there is neither share nor density', () => {
    const sum = sumOfParts([within(1), within(0.5)]);
    expect([-1.51, 1.51].map((x) => sum.density(x))).toEqual([0, 0]);
    expect([-1.5, 1.5].map((x) => sum.shareBelow(x))).toEqual([0, 1]);
    expect(sum.density(0)).toBeCloseTo(0.5, 4);
    expect(() => sum.quantile(1.2)).toThrow(new RangeError('quantile: share must be 0 to 1, got 1.2'));
  });
});

describe('gathering terms', () => {
  test('applies sensitivities and sets constants apart', () => {
    const { constant: start, parts } = gather(1, [
      { distribution: constant(3), sensitivity: -2 },
      { distribution: gauss(1, 4), sensitivity: -0.5 },
      { distribution: gauss(1), sensitivity: 0 },
    ]);
    expect(start).toBe(-5);
    expect(parts.map(({ mean, standardDeviation }) => [mean, standardDeviation])).toEqual([[-2, 0.5]]);
  });

  test('merges t of one degree, and only these', () => {
    const { parts } = gather(0, [
      { distribution: student({ location: 1, scale: 2, degreesOfFreedom: 1 }), sensitivity: 1 },
      { distribution: gauss(1), sensitivity: 1 },
      { distribution: student({ location: 1, scale: 3, degreesOfFreedom: 1 }), sensitivity: -1 },
      { distribution: t(2), sensitivity: 1 },
    ]);
    expect(parts.map(({ shape }) => shape)).toEqual(['normal', 'student', 'student']);
    const merged = parts.at(-1) as Distribution;
    expect(isMember(merged) && [merged.location, merged.scale]).toEqual([0, 5]);
    expect(gather(0, [{ distribution: t(1, 2), sensitivity: 1 }]).parts).toHaveLength(1);
  });
});

describe('a sum stands wherever its parts do, at any size', () => {
  const grown = transformed({ of: gauss(0.4), forward: Math.exp, inverse: Math.log, slope: Math.exp });
  const groups: Distribution[][] = [
    [grown, within(1)],
    [unnamed(t(3)), within(2)],
    [unnamed(gauss(0.01)), unnamed(uShape(3)), within(1)],
  ];
  const ranks = [0.001, 0.02, 0.3, 0.5, 0.9, 0.999];

  test('parts moved far to either side move their sum', () => {
    for (const parts of groups) {
      const sum = sumOfParts(parts);
      for (const shift of [-500, 500]) {
        const shifted = sumOfParts(parts.map((part) => scaled(part, { factor: 1, shift })));
        for (const p of ranks)
          expect(shifted.quantile(p) - parts.length * shift).toBeCloseTo(sum.quantile(p), 7);
      }
    }
  });

  test('parts a million times smaller, or larger, have a sum as much smaller or larger', () => {
    for (const parts of groups) {
      const sum = sumOfParts(parts);
      for (const factor of [1e-6, 1e6]) {
        const stretched = sumOfParts(parts.map((part) => scaled(part, { factor, shift: 0 })));
        for (const p of ranks) expect(stretched.quantile(p) / factor).toBeCloseTo(sum.quantile(p), 7);
      }
    }
  });

  test('beyond its limits there is nothing at all, and all of it lies below', () => {
    const sum = sumOfParts([within(1), uShape(1), triangular({ lower: 0, upper: 3 })]);
    for (const beyond of [1e-9, 0.01, 0.3, 1]) {
      expect([sum.density(-2 - beyond), sum.density(5 + beyond)]).toEqual([0, 0]);
      expect([sum.shareBelow(-2 - beyond), sum.shareBelow(5 + beyond)]).toEqual([0, 1]);
    }
  });
});

describe('what is gathered before the sum', () => {
  test('parts too narrow to be seen, constants and what counts nothing add their centres', () => {
    const { constant: sum, parts } = gather(1, [
      { distribution: normal({ mean: 3, standardDeviation: 1e-300 }), sensitivity: 2 },
      { distribution: constant(4), sensitivity: -1 },
      { distribution: within(1), sensitivity: 0 },
    ]);
    expect(sum).toBe(3);
    expect(parts).toEqual([]);
  });

  test('t of one degree at two places are one at the sum of both', () => {
    const at = (location: number) => student({ location, scale: 1, degreesOfFreedom: 1 });
    const { parts } = gather(0, [
      { distribution: at(5), sensitivity: 1 },
      { distribution: at(-2), sensitivity: 3 },
    ]);
    expect(parts).toHaveLength(1);
    expect(parts[0]?.quantile(0.5)).toBeCloseTo(-1, 14);
    expect(parts[0]?.quantile(0.75)).toBeCloseTo(3, 14);
  });
});
