import { outOfRangeText } from '../../text/out-of-range-text.ts';
import { type Line, line } from '../../text/summary/piece.ts';
import { dominantLine, resultLine, wholeLine, worstLine } from '../../text/summary/result-lines.ts';
import { specificationText, verdictLine } from '../../text/summary/verdict-line.ts';
import { inputLabel } from '../results/input-labels.ts';
import type { NumberedPoint, PointResult } from '../results/point-result.ts';
import { outlierWords } from '../words/outlier-words.ts';
import { LISTED_IN_TEXT, readingSentences } from '../words/reading-words.ts';
import { halfWidthText } from '../words/result-words.ts';
import { unstopped } from './sheet-lines.ts';
import { textStrings as strings } from './text-strings.ts';

/**
 * One point in lines: result or the reason why there is none, raw readings, verdict with its rule. `what` begins the first line.
 * The worst case is told where there is one point only: over many the whole distribution, which decides, is enough.
 */
export function pointLines(what: string, shown: PointResult, isOnly: boolean): readonly Line[] {
  const { sheet } = shown;
  const readings = line('readings', {
    sentence: (style) => unstopped(readingSentences(style, sheet, LISTED_IN_TEXT).join(' ')),
  });
  const outliers = outlierWords('ascii', sheet).map((_, index) =>
    line('readings', { sentence: (style) => unstopped(outlierWords(style, sheet)[index] ?? '') }),
  );
  if (!shown.inRange)
    return [
      line('result', { foreign: what }, ': ', {
        sentence: (style) => unstopped(outOfRangeText(style, shown.reason)),
      }),
      readings,
      ...outliers,
      line('demand', strings.demanded, (style) => specificationText(style, sheet.specification, 'dBm')),
    ];
  return [...numbersOf(what, shown, isOnly), readings, ...outliers, ...judgedLines(shown)];
}

function numbersOf(what: string, { sheet, result }: NumberedPoint, isOnly: boolean): readonly Line[] {
  const stated = { result: result.chain.result, unit: 'dBm' as const };
  const labelOf = (id: string): string => inputLabel(sheet, id);
  const dominant = dominantLine(stated, labelOf);
  return [
    resultLine(what, stated),
    wholeLine(stated),
    ...(isOnly ? [worstLine(stated, labelOf)] : []),
    ...aloneLines(result),
    ...(dominant === undefined ? [] : [dominant]),
  ];
}

function aloneLines({ alone, chain }: NumberedPoint['result']): readonly Line[] {
  if (alone === undefined) return [];
  const { expanded } = chain.result.propagation;
  return [
    line(
      'result',
      strings.alone,
      (style) => halfWidthText(style, alone.expanded),
      strings.withSpread,
      (style) => halfWidthText(style, expanded),
    ),
  ];
}

const judgedLines = ({ sheet, point, result }: NumberedPoint): readonly Line[] => [
  verdictLine(
    { result: result.chain.result, unit: 'dBm' },
    {
      specification: sheet.specification,
      rule: sheet.rule,
      judgement: result.judgement,
      ...(point.licence && { licence: point.licence }),
    },
  ),
];
