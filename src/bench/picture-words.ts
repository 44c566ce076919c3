import type { PictureWords } from '../exchange/picture.ts';
import type { Measurement } from '../sheet/measurement.ts';
import { coverageText } from '../text/probability-text.ts';
import { levelAnswer, wattsAnswer } from '../widgets/reading-band/words.ts';
import { demandText, measurandText } from './measured-words.ts';
import { methodText } from './method-words.ts';
import { pictureStrings as strings } from './picture-strings.ts';
import { pointLabel } from './point-order.ts';
import type { NumberedPoint } from './point-result.ts';
import { verdictReasons, verdictSentence } from './verdict-words.ts';

/**
 * Everything that a picture of a point must say to stand alone: what, how much, how sure, against what, assumed what.
 * @param address where the site is found, without what follows `#`; undefined for a saved copy.
 * @param assumes what is taken for granted, in a sentence; what holds for every sheet unless given.
 */
export function pictureWords(
  { title, points, setup }: Measurement,
  shown: NumberedPoint,
  {
    address,
    assumes = strings.assumes,
  }: { readonly address?: string | undefined; readonly assumes?: string | undefined },
): PictureWords {
  const { chain } = shown.result;
  const { coverageFactor: factor, coverageProbability: probability, expanded } = chain.result.propagation;
  const position = points.findIndex(({ id }) => id === shown.point.id);
  const level = levelAnswer('unicode', chain);
  const watts = wattsAnswer('unicode', chain);
  const coverage = coverageText('unicode', { factor, probability });
  return {
    title:
      points.length === 1
        ? title
        : strings.title({ title, point: pointLabel('unicode', shown.point, position) }),
    result: expanded === 0 ? strings.exact({ level, watts }) : strings.result({ level, coverage, watts }),
    above: [
      [
        `${verdictSentence(shown)}.`,
        demandText('unicode', shown.point),
        ...verdictReasons('unicode', shown),
      ].join(' '),
      [measurandText('unicode', shown.sheet, shown.point.frequencyHz), methodText('unicode', setup)].join(
        ' ',
      ),
    ],
    below: [strings.legend, assumes, strings.made(address ?? strings.bench)],
  };
}
