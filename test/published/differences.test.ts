import { describe, expect, it } from 'vitest';
import type { Figure } from '../../src/checks/check.ts';
import { differencesOf, groupedByReason, sortedDifferences } from '../../src/checks/differences.ts';
import { chapters } from '../../src/checks/index.ts';
import { outcomeOf } from '../../src/checks/outcome.ts';
import { checksOf, figuresOf } from '../../src/checks/summary.ts';

const differences = differencesOf(chapters());

/** The differing figures of one check. */
const of = (checkId: string): Figure[] =>
  differences.filter((one) => one.checkId === checkId).map(({ figure }) => figure);

const computed = (checkId: string): number[] => of(checkId).map((figure) => outcomeOf(figure).computed);

describe('known differences between print and computation', () => {
  it('are all found, and each is either a lesson or a slip of print', () => {
    const { lessons, slips } = sortedDifferences(differences);
    const differing = figuresOf(checksOf(chapters())).filter(({ figure }) => figure.differs);
    expect(differences).toHaveLength(differing.length);
    expect(lessons.length + slips.length).toBe(differences.length);
    expect(lessons.filter((one) => slips.includes(one))).toEqual([]);
  });

  it('are told together where one check has them for one reason', () => {
    const groups = groupedByReason(differences);
    expect(groups.flat()).toHaveLength(differences.length);
    const reasons = groups.map((group) => new Set(group.map(({ figure }) => figure.differs?.because)).size);
    expect(reasons.every((size) => size === 1)).toBe(true);
    const resistors = groups.filter(([one]) => one?.checkId === 'jcgm106-resistors');
    expect(resistors.map((group) => group.map(({ figure }) => figure.printed))).toEqual([['84', '44']]);
  });

  it('name the source, the clause and the row of a table', () => {
    const [entry] = differences.filter(({ checkId }) => checkId === 'gum-g2-35');
    expect(entry?.place).toBe('GUM: tables of coverage factors, Table G.2, 35');
    expect(entry?.chapterId).toBe('gum');
  });

  it('show what a rounded 32 nm does to the degrees of freedom of GUM H.1: 17.47, where 16.7 is printed', () => {
    expect(computed('gum-h1-degrees')).toEqual([expect.closeTo(17.47, 2)]);
    expect(of('gum-h1-degrees').map(({ printed }) => printed)).toEqual(['16.7']);
  });

  it('show that the printed u(X) of GUM H.2 is not that of propagation', () => {
    expect(computed('gum-h2-x')).toEqual([expect.closeTo(0.29558, 5)]);
  });

  it('show the one wrong entry of GUM table G.2', () => {
    expect(computed('gum-g2-35')).toEqual([expect.closeTo(1.6896, 4)]);
    expect(differences.filter(({ checkId }) => checkId.startsWith('gum-g2-'))).toHaveLength(1);
  });

  it('show the first-order rule and the wrong divisor of a mismatch', () => {
    expect(computed('mismatch-first-order')).toEqual([expect.closeTo(3.669, 3)]);
    expect(computed('mismatch-divisor')).toEqual([expect.closeTo(Math.SQRT1_2, 12)]);
  });
});
