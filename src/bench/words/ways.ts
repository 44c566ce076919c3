import type { Interval, Result } from '#compute';
import { coverageText, shareText } from '../../text/probability-text.ts';
import { dbText, numberText, percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { inputLabel } from '../results/input-labels.ts';
import { type BenchResult, wholeInterval } from '../results/result.ts';
import { resultStrings } from './result-strings.ts';
import { levelIntervalText, wattsIntervalText } from './result-words.ts';
import { whyStrings } from './why-strings.ts';

const strings = resultStrings.ways;

/** One way to add up, as text. */
export interface Way {
  readonly name: string;
  readonly level: string;
  readonly power: string;
  readonly says: string;
}

/** The three ways side by side. */
export function waysOf(style: Style, { chain }: BenchResult): readonly Way[] {
  const { propagation, worstCase } = chain.result;
  const { coverageFactor: factor, coverageProbability: probability } = propagation;
  const whole = wholeInterval(chain);
  const open = worstCase.unlimited.map((id) => inputLabel(chain.sheet, id));
  return [
    way(
      style,
      strings.worst,
      worstCase.interval,
      open.length > 0 ? strings.worstOpen(listed(open)) : strings.worstSays,
    ),
    way(
      style,
      strings.propagation,
      propagation.interval,
      strings.propagationSays(coverageText(style, { factor, probability })),
    ),
    whole === undefined
      ? { name: strings.whole, level: '', power: '', says: strings.wholeNot }
      : way(style, strings.whole, whole, strings.wholeSays(shareText(style, probability))),
  ];
}

const way = (style: Style, name: string, interval: Interval, says: string): Way => ({
  name,
  level: levelIntervalText(style, interval),
  power: wattsIntervalText(style, interval),
  says,
});

/** Names up to this many are all given. */
const NAMED = 3;

function listed(labels: readonly string[]): string {
  const rest = labels.length - NAMED;
  return rest > 1 ? `${labels.slice(0, NAMED).join(', ')} and ${rest} more` : labels.join(', ');
}

/** Intervals that differ by less than this share count as equal. */
const ALIKE = 0.015;

/** A part with this share of the variance makes up nearly all of the sum, which then has its shape. */
const NEARLY_ALL = 0.95;

const isOnePart = ({ propagation }: Result): boolean =>
  propagation.budget.some(({ share }) => share > NEARLY_ALL);

const half = ({ lower, upper }: Interval): number => (upper - lower) / 2;

function whyAlike(result: Result): string {
  if (isOnePart(result)) return whyStrings.worstAlike;
  return result.worstCase.unlimited.length > 0 ? whyStrings.worstAlikeOpen : whyStrings.worstAlikeFew;
}

/** One sentence on why the three differ. */
export function whyWaysDiffer(style: Style, { chain }: BenchResult): string {
  const { propagation, worstCase } = chain.result;
  const expanded = propagation.expanded;
  if (expanded === 0) return whyStrings.nothing;
  const worst = half(worstCase.interval) / expanded;
  const narrower = worstCase.unlimited.length > 0 ? whyStrings.worstOpen : whyStrings.worstNarrower;
  const first =
    worst > 1 + ALIKE
      ? whyStrings.worstWider(numberText(style, { value: worst, decimals: 1 }))
      : worst < 1 - ALIKE
        ? narrower
        : whyAlike(chain.result);
  const whole = wholeInterval(chain);
  if (whole === undefined) return first;
  const ratio = half(whole) / expanded;
  const by = percentText(style, { percent: 100 * Math.abs(ratio - 1), decimals: 0 });
  const difference = dbText(style, { db: Math.abs(half(whole) - expanded), decimals: 2 });
  const second =
    ratio < 1 - ALIKE
      ? whyStrings.wholeNarrower({ by, difference })
      : ratio > 1 + ALIKE
        ? whyStrings.wholeWider({ by, difference })
        : isOnePart(chain.result)
          ? whyStrings.wholeAlikeOne
          : whyStrings.wholeAlike;
  return `${first} ${second}`;
}
