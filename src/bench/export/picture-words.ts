import type { PictureWords } from '../../exchange/picture.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import { isolated } from '../../text/isolate.ts';
import { coverageText } from '../../text/probability-text.ts';
import { type Decimal, styleWith } from '../../text/style.ts';
import { levelAnswer, wattsAnswer } from '../../widgets/reading-band/words.ts';
import type { NumberedPoint } from '../results/point-result.ts';
import { demandText, measurandText } from '../words/measured-words.ts';
import { methodText } from '../words/method-words.ts';
import { pointLabel } from '../words/point-order.ts';
import { verdictReasons, verdictSentence } from '../words/verdict-words.ts';
import { pictureStrings as strings } from './picture-strings.ts';

/**
 * Everything that a picture of a point must say to stand alone: what, how much, how sure, against what, assumed what.
 * @param address where the site is found, without what follows `#`; undefined for a saved copy.
 * @param version of the site that worked it out.
 * @param assumes what is taken for granted, in a sentence; what holds for every sheet unless given.
 */
export function pictureWords(
  { title, points, setup }: Measurement,
  shown: NumberedPoint,
  {
    address,
    version,
    assumes = strings.assumes,
    decimal = 'point',
  }: {
    readonly address?: string | undefined;
    readonly version: string;
    readonly assumes?: string | undefined;
    readonly decimal?: Decimal | undefined;
  },
): PictureWords {
  const style = styleWith('unicode', decimal);
  const { chain } = shown.result;
  const name = isolated(title);
  const { coverageFactor: factor, coverageProbability: probability, expanded } = chain.result.propagation;
  const position = points.findIndex(({ id }) => id === shown.point.id);
  const level = levelAnswer(style, chain);
  const watts = wattsAnswer(style, chain);
  const coverage = coverageText(style, { factor, probability });
  return {
    title:
      points.length === 1
        ? name
        : strings.title({ title: name, point: pointLabel(style, shown.point, position) }),
    result: expanded === 0 ? strings.exact({ level, watts }) : strings.result({ level, coverage, watts }),
    above: [
      [`${verdictSentence(shown)}.`, demandText(style, shown.point), ...verdictReasons(style, shown)].join(
        ' ',
      ),
      [measurandText(style, shown.sheet, shown.point.frequencyHz), methodText(style, setup)].join(' '),
    ],
    below: [strings.legend, assumes, strings.made({ address: address ?? strings.bench, version })],
  };
}
