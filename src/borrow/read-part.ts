import { mean, powerW } from '#compute';
import { readColumn } from '../text/read/column.ts';
import type { CheckedDc, CheckedSwap } from './checked.ts';
import { earlierOf, type Fields, notesOf } from './read-fields.ts';
import { readingStrings } from './reading-strings.ts';
import { LEVEL } from './specs.ts';
import { strings } from './strings.ts';

/** A pad or cable at DC. */
export function readDc(fields: Fields): CheckedDc {
  const { entries, number, optional, tell, collect } = fields;
  const [voltsIn, voltsOut] = [number('voltsIn'), number('voltsOut')];
  if (collect.problems.length === 0 && voltsOut >= voltsIn)
    tell('voltsOut', strings.labels.voltsOut, strings.noLoss);
  const rated = optional('rated');
  return {
    kind: 'dc',
    notes: notesOf(entries),
    voltsIn,
    voltsOut,
    percent: number('percent'),
    stepVolts: optional('step') ?? 0,
    oneMeter: entries.oneMeter === 'yes',
    loadOhms: number('load'),
    loadPercent: number('loadPercent'),
    rated: rated === undefined ? undefined : powerW(rated),
  };
}

/** A pad or cable that is swapped in and out. */
export function readSwap(fields: Fields): CheckedSwap {
  const { entries, optional, tell, collect } = fields;
  const column = (key: 'without' | 'with'): readonly number[] => {
    const { values, problems, mixed } = readColumn(entries[key], LEVEL);
    const problem =
      problems[0]?.problem ??
      (mixed ? readingStrings.mixed : values.length === 0 ? strings.noReading : undefined);
    if (problem !== undefined) tell(key, strings.labels[key], problem);
    return values.map(({ value }) => value);
  };
  const [without, withPart] = [column('without'), column('with')];
  const earlier = earlierOf(fields);
  if (collect.problems.length === 0 && mean(withPart) >= mean(without))
    tell('with', strings.labels.with, strings.noLossSwap);
  const usable = collect.problems.length === 0;
  for (const [key, values] of [
    ['without', without],
    ['with', withPart],
  ] as const)
    if (usable && values.length === 1 && earlier === undefined)
      tell(key, strings.labels[key], strings.oneReading);
  return {
    kind: 'swap',
    notes: notesOf(entries),
    without,
    with: withPart,
    earlier,
    straightness: optional('straightness') ?? 0,
    sourceSwr: optional('sourceSwr') ?? 1,
    receiverSwr: optional('receiverSwr') ?? 1,
    partSwr: optional('partSwr') ?? 1,
  };
}
