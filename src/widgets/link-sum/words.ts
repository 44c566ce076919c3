import type { ShapeLane } from '../../figures/shape.layout.ts';
import type { WholeSum } from '../../sheet/evaluated-link-sum.ts';
import { bellOf, probabilityOf } from '../../sheet/link-sum.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { fewestDecimals } from '../../text/place.ts';
import { numberText, percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { type LinkSumState, sumOf } from './spec.ts';
import { strings } from './strings.ts';

/** Ends of intervals are written to hundredths. */
const even = (style: Style, halfWidth: number): string =>
  plusMinusText(style, { halfWidth, decimals: 2, unit: 'dB' });

/** A coverage factor to two decimals, a whole one without any. */
function factorText(style: Style, value: number): string {
  const rounded = Number(value.toFixed(2));
  return numberText(style, { value: rounded, decimals: fewestDecimals(rounded, 2) });
}

/** A share as a percentage: to tenths, 95.45 to hundredths, all of it without any. */
export function shareText(style: Style, share: number): string {
  const percent = 100 * share;
  if (percent > 99.95) return percentText(style, { percent, decimals: percent > 99.995 ? 0 : 2 });
  return percentText(style, { percent, decimals: 1 });
}

/** The share that is asked for. */
const askedText = (style: Style, { coverage }: LinkSumState): string => {
  const percent = 100 * probabilityOf(coverage);
  return percentText(style, { percent, decimals: coverage === 'two' ? 2 : 0 });
};

/** The intervals under the curves. */
export function lanesOf(state: LinkSumState, whole?: WholeSum): readonly ShapeLane[] {
  const { worstCase, propagation } = bellOf(sumOf(state));
  const isLimited = worstCase.unlimited.length === 0;
  return [
    {
      id: 'whole',
      kind: 'strip',
      label: strings.lanes.whole,
      number: whole ? even('shown', whole.interval.upper) : strings.lanes.waiting,
      interval: whole?.interval,
    },
    {
      id: 'bell',
      kind: 'outline',
      label: strings.lanes.bell(factorText('shown', propagation.coverageFactor)),
      number: even('shown', propagation.expanded),
      interval: propagation.interval,
    },
    {
      id: 'worst',
      kind: 'marks',
      label: strings.lanes.worst,
      number: isLimited ? even('shown', worstCase.interval.upper) : strings.lanes.noLimit,
      interval: isLimited ? worstCase.interval : undefined,
    },
  ];
}

/** The same sum three ways, what the bell's interval really holds, and what factor would have been right. */
export function answersOf(state: LinkSumState, whole?: WholeSum, style: Style = 'shown'): readonly Answer[] {
  const { worstCase, propagation } = bellOf(sumOf(state));
  const asked = askedText(style, state);
  const { answers } = strings;
  const known = (text: (of: WholeSum) => string): string => (whole ? text(whole) : answers.waiting);
  return [
    { figure: known(({ interval }) => even(style, interval.upper)), words: answers.whole(asked) },
    {
      figure: even(style, propagation.expanded),
      words: answers.bell(factorText(style, propagation.coverageFactor)),
    },
    {
      figure: known(({ covered }) =>
        answers.coveredNow({
          factor: factorText(style, propagation.coverageFactor),
          share: shareText(style, covered),
        }),
      ),
      words: answers.covered,
    },
    {
      figure: known(({ factor }) => answers.factorNow(factorText(style, factor))),
      words: answers.factor(asked),
    },
    worstCase.unlimited.length > 0
      ? { figure: answers.noWorst, words: answers.noWorstWords }
      : { figure: even(style, worstCase.interval.upper), words: answers.worst },
  ];
}

/** The settled state in one spoken sentence. */
export function summarise(state: LinkSumState, whole?: WholeSum): string {
  const [own, bell] = answersOf(state, whole, 'spoken');
  return strings.summary({
    count: numberText('spoken', { value: state.count, decimals: 0 }),
    whole: own?.figure ?? '',
    bell: bell?.figure ?? '',
  });
}
