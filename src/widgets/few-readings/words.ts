import type { ShapeLane } from '../../figures/shape.layout.ts';
import type { FoundMean, WholeMean } from '../../sheet/evaluated-readings.ts';
import { EVENING_DBM } from '../../sheet/evening.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { levelText, numberText, percentText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { strings } from './strings.ts';

const even = (style: Style, halfWidth: number): string =>
  plusMinusText(style, { halfWidth, decimals: 2, unit: 'dB' });
const halfOf = ({ interval }: WholeMean): number => (interval.upper - interval.lower) / 2;

/** The readings that are used, one after the other. */
export const readingsText = ({ use }: FoundMean): string =>
  strings.readings(
    EVENING_DBM.slice(0, use.count)
      .map((value) => numberText('shown', { value, decimals: 2 }))
      .join(', '),
  );

/** The intervals under the curves. */
export function lanesOf({ use, meanDbm, band }: FoundMean): readonly ShapeLane[] {
  const about = (half: number) => ({ lower: meanDbm - half, upper: meanDbm + half });
  const { lanes } = strings;
  return [
    {
      id: 'whole',
      kind: 'strip',
      label: lanes.whole,
      number: band ? even('shown', halfOf(band.whole)) : lanes.unknown,
      interval: band?.whole.interval,
    },
    {
      id: 'careless',
      kind: 'outline',
      label: lanes.careless,
      number: band ? even('shown', band.carelessDb) : lanes.unknown,
      interval: band && about(band.carelessDb),
    },
    {
      id: 'common',
      kind: 'marks',
      label: lanes.common,
      number: use.limitsDb > 0 ? even('shown', use.limitsDb) : lanes.none,
      interval: use.limitsDb > 0 ? about(use.limitsDb) : undefined,
    },
  ];
}

/** Mean and band, what somebody careless claims, the factor that was needed, and what no repeating takes away. */
export function answersOf(
  { use, coverageProbability, meanDbm, floorDb, band }: FoundMean,
  style: Style = 'shown',
): readonly Answer[] {
  const { answers } = strings;
  const level = levelText(style, { levelDbm: meanDbm, decimals: 2 });
  const floor = { figure: use.limitsDb > 0 ? even(style, floorDb) : answers.nothing, words: answers.floor };
  if (band === undefined)
    return [
      { figure: level, words: answers.alone },
      { figure: answers.unknown, words: answers.unknownWords },
      floor,
    ];
  const percent = (value: number, decimals: number): string =>
    percentText(style, { percent: value, decimals });
  const { degreesOfFreedom, standardUncertainty } = band;
  return [
    {
      figure: `${level} ${even(style, halfOf(band.whole))}`,
      words: answers.whole(percent(100 * coverageProbability, 2)),
    },
    { figure: even(style, band.carelessDb), words: answers.careless(percent(100 * band.whole.covered, 1)) },
    {
      figure: answers.factor(numberText(style, { value: band.coverageFactor, decimals: 2 })),
      words: answers.factorWords({
        u: quantityText(style, { value: standardUncertainty, decimals: 3, unit: 'dB' }),
        degrees:
          degreesOfFreedom === undefined
            ? answers.many
            : numberText(style, { value: degreesOfFreedom, decimals: 1 }),
      }),
    },
    floor,
  ];
}

/** The settled state in one spoken sentence. */
export function summarise(found: FoundMean): string {
  const [band, careless] = answersOf(found, 'spoken');
  return strings.summary({
    count: numberText('spoken', { value: found.use.count, decimals: 0 }),
    band: band?.figure ?? '',
    careless: careless?.figure ?? '',
  });
}
