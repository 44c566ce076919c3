import type { Point } from '../sheet/measurement.ts';
import { asMeter } from '../sheet/scatter.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { Style } from '../text/style.ts';
import { specificationText } from '../text/summary/verdict-line.ts';
import { methodText } from './method-words.ts';
import { LISTED_ON_PAGE, readingSentences } from './reading-words.ts';
import { resultStrings } from './result-strings.ts';

const strings = resultStrings.record;

/** Exactly what was measured: which power, where, under which conditions. */
export function measurandText({
  measurand: { power, delivery, plane, conditions },
}: Pick<Sheet, 'measurand'>): string {
  const kind = strings.power[power];
  const which = delivery === undefined ? kind : `${kind} ${strings.delivery[delivery]}`;
  return strings.of([
    plane === '' ? which : delivery === undefined ? `${which} ${plane}` : `${which}, ${plane}`,
    conditions,
  ]);
}

/** What was demanded: the specification, or what the licence allows. */
export function demandText(
  style: Style,
  { specification, licence }: Pick<Point, 'specification' | 'licence'>,
): string {
  const range = specificationText(style, specification, 'dBm', style === 'shown' ? 2 : undefined);
  return licence ? strings.licensed(range) : strings.specified(range);
}

/** What was measured, where and how, in sentences: the part of a record that another person needs to repeat it. */
export function recordSentences(
  style: Style,
  { sheet, point }: { sheet: Sheet; point: Pick<Point, 'specification' | 'licence'> },
): readonly string[] {
  const isLone = sheet.readings.length === 1 && sheet.repeatability === undefined;
  return [
    measurandText(sheet),
    methodText(style, (sheet.method ?? asMeter(sheet)).setup),
    ...readingSentences(style, sheet, LISTED_ON_PAGE),
    ...(isLone ? [strings.noScatter] : []),
    demandText(style, point),
  ];
}
