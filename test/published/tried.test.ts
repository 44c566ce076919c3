import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { chapters } from '../../src/checks/index.ts';
import { halfLastDigit, readPrinted } from '../../src/checks/printed.ts';
import { checksOf } from '../../src/checks/summary.ts';
import { wholeSumOf } from '../../src/sheet/evaluated-link-sum.ts';
import { bellOf } from '../../src/sheet/link-sum.ts';
import { impedanceOf } from '../../src/sheet/simultaneous.ts';
import { written } from '../../src/sheet/stated-budget.ts';
import { budgetSpec, useOf } from '../../src/widgets/budget/spec.ts';
import { type LinkSumState, linkSumSpec, sumOf } from '../../src/widgets/link-sum/spec.ts';
import { sharedSpec, subjectOf } from '../../src/widgets/shared-cause/spec.ts';
import { thermometerFigures } from './thermometer-figures.ts';
import { triesFigures } from './tries-figures.ts';
import { verdictFigures } from './verdict-figures.ts';

/** Numbers of a figure in the state of an address, by what a check calls them. */
type Figures = Readonly<Record<string, number>> & {
  /** How far lots may carry a number, where numbers come of lots. */
  readonly noise?: number;
};

/** A simulation of a million trials may take its time on a busy machine. */
const PATIENCE_MS = 60_000;

function linkSum(address: string): Figures {
  const { state, problems } = decode(linkSumSpec, address);
  expect(problems).toEqual([]);
  const sum = sumOf(state as LinkSumState);
  const { standardUncertainty, interval } = bellOf(sum).propagation;
  const whole = wholeSumOf(sum).interval;
  return {
    u: standardUncertainty,
    'propagation, lower end': interval.lower,
    'propagation, upper end': interval.upper,
    'whole distribution, lower end': whole.lower,
    'whole distribution, upper end': whole.upper,
  };
}

function sharedCause(address: string): Figures {
  const { state, problems } = decode(sharedSpec, address);
  expect(problems).toEqual([]);
  const subject = subjectOf(state);
  if (subject.kind !== 'impedance') return {};
  const { estimate, standardUncertainty } = impedanceOf(subject);
  return { [subject.output]: estimate, [`u(${subject.output})`]: standardUncertainty };
}

function budget(address: string): Figures {
  const { state, problems } = decode(budgetSpec, address);
  expect(problems).toEqual([]);
  const use = useOf(state);
  const found = written(use);
  const part = (id: string): number => found.budget.find((row) => row.id === id)?.contribution ?? Number.NaN;
  return {
    'contribution of the standard': part('standard'),
    'of the expansion difference': part('expansion difference'),
    'of the temperature difference': part('temperature difference'),
    'combined variance': found.budget.reduce((sum, { contribution }) => sum + contribution ** 2, 0),
    'combined u': found.standardUncertainty,
    length: found.stated.estimate,
    't for 99 % and 16 degrees': found.coverageFactor,
    'U for 99 %, u and ν rounded as in print': found.expanded,
    'U for 99 %, nothing rounded': written({ ...use, onTheWay: false }).expanded,
  };
}

/** What stands in a figure, by the page that it is on. */
const pages: Readonly<Record<string, (address: string) => Figures>> = {
  '/learn/stacking/the-whole-shape/': linkSum,
  '/learn/stacking/shared-causes/': sharedCause,
  '/learn/stacking/a-million-tries/': triesFigures,
  '/learn/measuring/inside-outside-cant-tell/': verdictFigures,
  '/learn/stacking/writing-it-down/': budget,
  '/learn/measuring/borrowing-a-calibration/': thermometerFigures,
};

/** Checks of what propagation says, on a page that has trials as well. */
const PROPAGATED = ['s1-9.3-first-order', 's1-9.3-second-order'];

const tried = checksOf(chapters()).flatMap((check) =>
  check.tried ? [{ ...check, tried: check.tried }] : [],
);

describe('published examples that a figure gives back', () => {
  it('are the three sums of JCGM 101, 9.2', () => {
    const ids = tried.map(({ id }) => id);
    for (const id of ['s1-9.2.2', 's1-9.2.3', 's1-9.2.4']) expect(ids).toContain(id);
  });

  it('are the end gauge of GUM H.1, as printed and unrounded', () => {
    const ids = tried.map(({ id }) => id);
    for (const id of ['gum-h1-result', 'gum-h1-expanded']) expect(ids).toContain(id);
  });

  it('are the line of GUM H.3', () => {
    const ids = tried.map(({ id }) => id);
    for (const id of ['gum-h3-line', 'gum-h3-prediction', 'gum-h3-centred']) expect(ids).toContain(id);
  });

  it('are the outputs of GUM H.2', () => {
    const ids = tried.map(({ id }) => id);
    for (const id of ['gum-h2-r', 'gum-h2-x', 'gum-h2-z']) expect(ids).toContain(id);
  });

  it('are the weight, the comparison loss and the gauge block of JCGM 101, 9.3 to 9.5', () => {
    const ids = tried.map(({ id }) => id);
    const simulated = ['s1-9.3-simulated', 's1-f-intervals', 's1-9.4-simulated-10', 's1-9.4-simulated-50'];
    for (const id of [...PROPAGATED, ...simulated, 's1-9.5-simulated']) expect(ids).toContain(id);
  });

  it.each(tried)(
    '$clause, $id: the state of the address has every printed value, or the exact one where print differs',
    { timeout: PATIENCE_MS },
    ({ id, figures, tried: at }) => {
      const found = pages[at.path]?.(at.state) ?? {};
      const isPropagated = PROPAGATED.includes(id);
      for (const { what, printed, differs, tolerance } of figures) {
        const read = readPrinted(differs?.exact ?? printed);
        const own = found[isPropagated ? `propagated ${what}` : what];
        expect(own, `${what} in the figure of ${at.path}`).toBeDefined();
        const noise = isPropagated ? 0 : (found.noise ?? 0);
        const allowed = Math.max(tolerance?.within ?? halfLastDigit(read), noise);
        expect(Math.abs((own ?? Number.NaN) - read.value), what).toBeLessThanOrEqual(allowed + 1e-9);
      }
    },
  );
});
