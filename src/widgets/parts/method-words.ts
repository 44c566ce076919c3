import type { BandResult } from '#compute';
import type { Found } from '../../sheet/found.ts';
import { aloud } from '../../text/aloud.ts';
import { namesAnd } from '../../text/and.ts';
import { deviationsText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { dbText, percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from './answer.ts';
import { bandText, largestParts, methodLevel } from './level-words.ts';
import { methodStrings as strings } from './method-strings.ts';

/** How far the limits together allow, about the estimate: hardly ever even, since percent of volts are not even in decibels. */
export function worstText(style: Style, { worstCase: { interval }, estimate }: BandResult): string {
  const decimals = decimalsFor((interval.upper - interval.lower) / 2);
  const ends = { lower: interval.lower - estimate, upper: interval.upper - estimate };
  return deviationsText(style, { ...ends, decimals, unit: 'dB' });
}

/** A share of the variance in percent. */
export const sharePercent = (style: Style, share: number): string =>
  percentText(style, { percent: 100 * share, decimals: 0 });

/** Answers of a method in its range: power, worst case, and the part that decides. */
export function levelAnswers(
  style: Style,
  result: BandResult,
  names: Readonly<Record<string, string>>,
): readonly [Answer, Answer, Answer] {
  const level = methodLevel(style, result);
  const { ids, share, left } = largestParts(result);
  const name = namesAnd(ids.map((id) => names[id] ?? id));
  return [
    { figure: level.figure, words: strings.level(level.words) },
    { figure: strings.worst(worstText(style, result)), words: strings.worstWords },
    {
      figure: strings.largest({ name, share: sharePercent(style, share) }),
      words: (ids.length > 1 ? strings.largestOfSeveral : strings.largestWords)(bandText(style, left)),
    },
  ];
}

/** The answers of a method in its range in spoken sentences. */
export const summariseLevel = ([level, worst, largest, ...more]: readonly [
  Answer,
  Answer,
  Answer,
  ...(readonly Answer[]),
]): string =>
  aloud([
    level.figure,
    worst.figure,
    strings.spokenLargest(largest.figure),
    ...more.map(({ figure }) => figure),
  ]);

/** Answers of a method that gives no number: why, that there is no worst case either, and what helps. */
export const noAnswers = ({
  why,
  help,
}: {
  readonly why: string;
  readonly help: string;
}): readonly [Answer, Answer, Answer] => [
  { figure: strings.noNumber, words: why },
  { figure: strings.noWorst, words: strings.noWorstWords },
  { figure: strings.helps, words: help },
];

/** A row of the table of parts. */
export interface PartRow {
  readonly id: string;
  readonly name: string;
  readonly stated: string;
  readonly u: string;
  readonly share: string;
  /** Whether it has the largest share. */
  readonly largest: boolean;
}

/** The parts of a method, what is stated of each, and what it does; without numbers of effect where the method gives none. */
export function partRows<Id extends string>(
  found: Found<unknown>,
  parts: readonly { readonly id: Id; readonly name: string; readonly stated: string }[],
): readonly PartRow[] {
  const largest = found.inRange ? largestParts(found.result).ids : [];
  return parts.map(({ id, name, stated }) => {
    const row = found.inRange ? found.result.propagation.budget.find((of) => of.id === id) : undefined;
    return {
      id,
      name,
      stated,
      u: row ? dbText('shown', { db: row.contribution, decimals: 2 }) : strings.none,
      share: row ? sharePercent('shown', row.share) : strings.none,
      largest: largest.includes(id),
    };
  });
}
