import { type RobustnessRow, robustnessOf } from '#compute';
import { COVERAGE_PROBABILITY } from '../../sheet/coverage.ts';
import { addedShare, probabilityText } from '../../text/probability-text.ts';
import { numberText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { verdictLabel } from '../../text/words.ts';
import type { BenchResult } from '../results/result.ts';
import { resultStrings } from './result-strings.ts';
import { levelIntervalText } from './result-words.ts';
import { shownWords } from './verdict-words.ts';

const strings = resultStrings.robustness;

/** A row of the table as text. */
export interface RobustnessLine {
  readonly taken: string;
  readonly interval: string;
  readonly verdict: string;
  readonly probability: string;
}

/** The verdict under other choices that could be defended, and whether it is the same under all of them. */
export interface Robustness {
  readonly lines: readonly RobustnessLine[];
  readonly steady: boolean;
  readonly says: string;
}

/** Judges the sheet under each other choice: six evaluations, so not for every letter typed. */
export function robustnessWords(style: Style, { chain }: BenchResult): Robustness {
  const { model, sheet } = chain;
  const { specification, rule } = sheet;
  const { rows, steady } = robustnessOf({
    model,
    specification,
    rule,
    coverageProbability: COVERAGE_PROBABILITY,
  });
  return {
    lines: rows.map((row) => lineOf(style, row)),
    steady,
    says: steady ? strings.steady : strings.unsteady,
  };
}

const lineOf = (
  style: Style,
  { taken, interval, verdict, probabilityOfConformity: probability }: RobustnessRow,
): RobustnessLine => ({
  taken: takenText(style, taken),
  interval: levelIntervalText(style, interval),
  verdict: shownWords(verdictLabel(verdict)),
  probability: probability === undefined ? strings.none : probabilityText(style, addedShare(probability)),
});

function takenText(style: Style, taken: RobustnessRow['taken']): string {
  switch (taken.as) {
    case 'stated':
      return strings.stated;
    case 'shape':
      return strings.shape(strings.shapes[taken.shape]);
    case 'coverageFactor':
      return strings.factor(numberText(style, { value: taken.coverageFactor, decimals: 0 }));
  }
}
