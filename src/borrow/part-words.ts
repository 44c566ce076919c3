import { answersAloud } from '../text/answers-aloud.ts';
import { powerText } from '../text/power-text.ts';
import { dbText, percentText } from '../text/quantity-text.ts';
import type { Style } from '../text/style.ts';
import type { Answer } from '../widgets/parts/answer.ts';
import type { PadFound } from './pad.ts';
import { resultStrings as strings } from './result-strings.ts';
import { bandText, factorOf, placesOf } from './result-words.ts';

const POWER_DIGITS = 3;

/** The attenuation of a part, and what makes it uncertain most. */
export function partAnswers({ value, propagation }: PadFound, style: Style = 'shown'): readonly Answer[] {
  const figure = dbText(style, { db: value, decimals: placesOf(propagation) });
  if (propagation.expanded === 0)
    return [
      { figure, words: strings.partWords({ k: factorOf(style, propagation) }) },
      { figure: strings.nothing, words: strings.nothingWords },
    ];
  const largest = propagation.budget.toSorted((a, b) => b.share - a.share)[0];
  const share = percentText(style, { percent: 100 * (largest?.share ?? 0), decimals: 0 });
  return [
    {
      figure: `${figure} ${bandText(style, propagation)}`,
      words: strings.partWords({ k: factorOf(style, propagation) }),
    },
    {
      figure: strings.largest(strings.inputs[largest?.id ?? ''] ?? '', share),
      words: strings.largestWords,
    },
  ];
}

/** Where it holds, and the heat that the direct voltage leaves in the part; whether it is too much. */
export function partNotes({ checked, heat }: PadFound): readonly {
  readonly text: string;
  readonly caution: boolean;
}[] {
  if (checked.kind === 'swap' || heat === undefined) return [{ text: strings.swapHolds, caution: false }];
  const power = (powerW: number): string => powerText('shown', { powerW, digits: POWER_DIGITS });
  const { rated } = checked;
  const end =
    rated === undefined
      ? strings.heatUnrated
      : heat > rated
        ? strings.heatBeyond(power(rated))
        : strings.heatWithin(power(rated));
  return [
    { text: strings.dcHolds, caution: false },
    { text: `${strings.heat(power(heat))}: ${end}`, caution: rated !== undefined && heat > rated },
  ];
}

/** The settled state in spoken sentences. */
export const summarisePart = (part: PadFound): string => answersAloud(partAnswers(part, 'spoken'));
