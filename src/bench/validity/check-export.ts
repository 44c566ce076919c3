import type { SheetEntries } from '../../sheet/entries.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import { type Decimal, styleWith } from '../../text/style.ts';
import type { PointResult } from '../results/point-result.ts';
import { checkQuestion } from './check-question.ts';

/**
 * What the validity checks say, one a sentence, for a text that is copied: `One more known pad: passed. 10.0 dB more moved ...`.
 * Fetched when it is asked for; rejects where that fails.
 */
export async function checkSentences(
  entries: Pick<SheetEntries, 'checks'>,
  measurement: Measurement,
  shown: PointResult,
  decimal: Decimal = 'point',
): Promise<readonly string[]> {
  const { checkLines } = await import('./check-words.ts');
  return checkLines(styleWith('ascii', decimal), checkQuestion(entries, measurement, shown)).map(
    ({ heading, says }) => (says === '' ? heading : `${heading}. ${says}`),
  );
}
