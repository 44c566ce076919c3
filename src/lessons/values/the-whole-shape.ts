import { normalShareBelow } from '#compute';
import { shareWithin, wholeSumOf } from '../../sheet/evaluated-link-sum.ts';
import {
  badMatch,
  bellOf,
  comparedChain,
  halfDecibels,
  type LinkSum,
  longChain,
  probabilityOf,
  receiverChain,
} from '../../sheet/link-sum.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { numberText, percentText, quantityText } from '../../text/quantity-text.ts';

const even = (halfWidth: number): string => plusMinusText('shown', { halfWidth, decimals: 2, unit: 'dB' });
const percent = (share: number, decimals = 1): string =>
  percentText('shown', { percent: 100 * share, decimals });
const bell = (sum: LinkSum): string => even(bellOf(sum).propagation.expanded);
const whole = (sum: LinkSum): string => even(wholeSumOf(sum).interval.upper);
const worst = (sum: LinkSum): string => even(bellOf(sum).worstCase.interval.upper);
const covered = (sum: LinkSum): string => percent(wholeSumOf(sum).covered);
const factor = (sum: LinkSum): string => numberText('shown', { value: wholeSumOf(sum).factor, decimals: 2 });

/** So close to nothing that one would call it nothing, in dB. */
const NEAR_DB = 0.2;

/** Numbers of the lesson on shapes of sums. */
export function shapeValues(): Readonly<Record<string, () => string>> {
  const [one, two, three, four] = [1, 2, 3, 4].map(halfDecibels) as [LinkSum, LinkSum, LinkSum, LinkSum];
  const [receiver, long, match] = [receiverChain(), longChain(), badMatch()];
  const alone = { ...receiver, links: receiver.links.slice(0, 1) };
  const bellNear = (): number =>
    2 * normalShareBelow(NEAR_DB / bellOf(match).propagation.standardUncertainty) - 1;
  return {
    asked: () => percent(probabilityOf('two'), 2),
    oneU: () =>
      quantityText('shown', { value: bellOf(one).propagation.standardUncertainty, decimals: 2, unit: 'dB' }),
    oneBell: () => bell(one),
    oneWhole: () => whole(one),
    oneFactor: () => factor(one),
    twoCovered: () => covered(two),
    threeCovered: () => covered(three),
    fourCovered: () => covered(four),
    fourBell: () => bell(four),
    fourWhole: () => whole(four),
    fourWorst: () => worst(four),
    fourBeyondHalf: () => percent(1 - shareWithin(four, 1)),
    fourBeyondMost: () => percent(1 - shareWithin(four, 1.5)),
    receiverBell: () => bell(receiver),
    receiverWhole: () => whole(receiver),
    receiverAlone: () => whole(alone),
    receiverCovered: () => covered(receiver),
    receiverFactor: () => factor(receiver),
    receiverShare: () => percent(bellOf(receiver).propagation.budget[0]?.share ?? Number.NaN, 0),
    comparedBell: () => bell(comparedChain()),
    comparedWhole: () => whole(comparedChain()),
    matchBell: () => bell(match),
    matchWhole: () => whole(match),
    matchWorst: () => worst(match),
    matchFactor: () => factor(match),
    matchNear: () => percent(shareWithin(match, NEAR_DB), 0),
    bellNear: () => percent(bellNear(), 0),
    twiceAnyway: () =>
      `${bell(receiver)} is said where ${whole(receiver)} is true: it holds ${covered(receiver)}`,
    manyLinks: () =>
      `five links, and still nearly a box: ${bell(long)} is said, more than the receiver’s own limits, where ${whole(long)} is true`,
    calledNothing: () =>
      `within ${even(NEAR_DB)} of nothing lie ${percent(shareWithin(match, NEAR_DB), 0)}; the bell says ${percent(bellNear(), 0)}`,
  };
}
