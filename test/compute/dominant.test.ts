import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dominantInputs } from '#compute';

const row = (id: string, share: number) => ({
  id,
  standardUncertainty: share,
  sensitivity: 1,
  contribution: share,
  share,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});
const budgetOf = (shares: readonly number[]) => ({
  budget: shares.map((share, index) => row(`part-${index}`, share)),
});

describe('the inputs that bring most of the variance', () => {
  it('are one, or all that are level, in their order', () => {
    expect(dominantInputs(budgetOf([0.2, 0.7, 0.1]))).toEqual(['part-1']);
    expect(dominantInputs(budgetOf([0.4, 0.2, 0.4]))).toEqual(['part-0', 'part-2']);
    // 0.1 + 0.2 is not 0.3 in binary: rounding makes nothing the larger one
    expect(dominantInputs(budgetOf([0.1 + 0.2, 0.3, 0.4 - 1e-3]))).toEqual(['part-2']);
    expect(dominantInputs(budgetOf([0.1 + 0.2, 0.3]))).toEqual(['part-0', 'part-1']);
  });

  it('are none where nothing adds any', () => {
    expect(dominantInputs(budgetOf([]))).toEqual([]);
    expect(dominantInputs(budgetOf([0, 0]))).toEqual([]);
  });

  it('have the largest share, and nothing that is left out has as much', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(share, { minLength: 1, maxLength: 8 }), (shares) => {
        const most = Math.max(...shares);
        const ids = dominantInputs(budgetOf(shares));
        shares.forEach((each, index) => {
          const level = each > 0 && each >= most * (1 - 1e-9);
          expect(ids.includes(`part-${index}`)).toBe(level);
        });
      }),
    );
  });
});
