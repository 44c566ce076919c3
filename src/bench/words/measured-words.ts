import type { Point } from '../../sheet/measurement.ts';
import { readingOf } from '../../sheet/scatter.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { inDirection } from '../../text/isolate.ts';
import { baseOf, type Style } from '../../text/style.ts';
import { specificationText } from '../../text/summary/verdict-line.ts';
import { methodText } from './method-words.ts';
import { frequencyText } from './point-order.ts';
import { LISTED_ON_PAGE, readingSentences } from './reading-words.ts';
import { resultStrings } from './result-strings.ts';

const strings = resultStrings.record;

/** Exactly what was measured: which power, where, under which conditions, at which frequency if they do not say it. */
export function measurandText(
  style: Style,
  { measurand }: Pick<Sheet, 'measurand'>,
  frequencyHz?: number | undefined,
): string {
  const { power, delivery } = measurand;
  const [plane, conditions] = [inDirection(measurand.plane), inDirection(measurand.conditions)];
  const kind = strings.power[power];
  const which = delivery === undefined ? kind : `${kind} ${strings.delivery[delivery]}`;
  const frequency = frequencyHz === undefined ? '' : frequencyText(style, frequencyHz);
  return strings.of([
    plane === '' ? which : delivery === undefined ? `${which} ${plane}` : `${which}, ${plane}`,
    conditions,
    spaced(`${plane} ${conditions}`).includes(spaced(frequency)) ? '' : frequency,
  ]);
}

/** Every kind of space is one space, and either decimal sign the same: what is typed has no narrow ones, and its own sign. */
const spaced = (text: string): string => text.replace(/\s/g, ' ').replace(/(\d),(?=\d)/g, '$1.');

/** What was demanded: the specification, or what the licence allows. */
export function demandText(
  style: Style,
  { specification, licence }: Pick<Point, 'specification' | 'licence'>,
): string {
  const range = specificationText(style, specification, 'dBm', baseOf(style) === 'shown' ? 2 : undefined);
  return licence ? strings.licensed(range) : strings.specified(range);
}

/** What was measured, where and how, in sentences: the part of a record that another person needs to repeat it. */
export function recordSentences(
  style: Style,
  { sheet, point }: { sheet: Sheet; point: Pick<Point, 'specification' | 'licence' | 'frequencyHz'> },
): readonly string[] {
  const isLone = sheet.readings.length === 1 && sheet.repeatability === undefined;
  return [
    measurandText(style, sheet, point.frequencyHz),
    methodText(style, readingOf(sheet).setup),
    ...readingSentences(style, sheet, LISTED_ON_PAGE),
    ...(isLone ? [strings.noScatter] : []),
    demandText(style, point),
  ];
}
