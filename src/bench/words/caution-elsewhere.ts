import { exceeded } from '#compute';
import type { Style } from '../../text/style.ts';
import type { PointResult } from '../results/point-result.ts';
import { cautionStrings as strings } from './caution-strings.ts';
import { type CautionWords, cautionWords } from './caution-words.ts';

/** A point with its name. */
export interface NamedResult {
  readonly label: string;
  readonly result: PointResult;
}

/** What a point may suffer. */
export const cautionsAt = (result: PointResult) =>
  result.inRange ? result.result.cautions : result.cautions;

/** The largest power that a point's cautions reckon with, in watts; 0 where none is known. */
export const largestPowerAt = (result: PointResult): number =>
  (result.inRange ? result.result.upper : result.upper)?.peakEnvelope ?? 0;

/**
 * What passes a limit at other points but not at the one that is shown, each once and with the name of the point that has the
 * largest power: what fails there fails at the others no sooner.
 */
export function cautionsElsewhere(
  style: Style,
  shown: PointResult,
  others: readonly NamedResult[],
): readonly CautionWords[] {
  const told = new Set(
    cautionWords(style, { sheet: shown.sheet, cautions: exceeded(cautionsAt(shown)) }).map(({ key }) => key),
  );
  return others
    .toSorted((a, b) => largestPowerAt(b.result) - largestPowerAt(a.result))
    .flatMap(({ label, result }) =>
      cautionWords(style, { sheet: result.sheet, cautions: exceeded(cautionsAt(result)) }).flatMap(
        (words) => {
          if (told.has(words.key)) return [];
          told.add(words.key);
          return [{ ...words, text: strings.atPoint({ point: label, text: words.text }) }];
        },
      ),
    );
}
