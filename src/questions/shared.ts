import { componentOf, evaluateBand, type Input } from '#compute';
import {
  asIndependent,
  clubPair,
  correlationOfPair,
  type SharedPair,
  withCause,
} from '../sheet/shared-cause.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { numberText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const band = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
const limit = (halfWidth: number): string => plusMinusText('shown', { halfWidth, decimals: 1, unit: 'dB' });
const expanded = (pair: SharedPair): string => band(withCause(pair).propagation.expanded);
const independent = (pair: SharedPair): string => band(asIndependent(pair).propagation.expanded);
const worst = (pair: SharedPair): string => band(withCause(pair).worstCase.interval.upper);

/** The guess that opens the lesson: two pads of one batch, one behind the other. */
export function sharedTwoPads(): Question {
  const pair = clubPair();
  return {
    id: 'shared-two-pads',
    stem: `Two pads come from one batch. The whole batch may be off by up to ${limit(pair.sharedDb)}, nobody knows which way, and each pad by up to ${limit(pair.ownDb)} more for itself. One stands behind the other. How sure is their sum (U, k = 2)?`,
    answer: 'c',
    worked: `What the batch is off counts twice, with one sign: it is one line of the budget with a factor of 2. Beside it the two pads’ own parts hardly count. Together ${expanded(pair)}; taken to be independent they would make ${independent(pair)}.`,
    options: [
      {
        id: 'a',
        text: expanded({ ...pair, combined: 'difference' }),
        reply:
          'That is what is left if the batch cancels. In a sum it does not: both pads err on the same side.',
      },
      {
        id: 'b',
        text: independent(pair),
        reply:
          'Roots of squares of four parts, as if the batch were off one way for the first pad and had a new chance for the second.',
      },
      { id: 'c', text: expanded(pair), reply: 'What is shared is added first, and squared afterwards.' },
      {
        id: 'd',
        text: worst(pair),
        reply:
          'That is the worst case: every limit reached at once. A guarantee, and not the U that was asked for.',
      },
    ],
  };
}

/** One instrument for both readings of a comparison. */
export function sharedDifference(): Question {
  const pair: SharedPair = { combined: 'difference', ownDb: 0.1, sharedDb: 1 };
  const sum = { ...pair, combined: 'sum' } as const;
  return {
    id: 'shared-difference',
    stem: `The club finds the loss of its cable with one receiver: a reading without the cable, a reading with it, minutes apart. The receiver’s level may be off by up to ${limit(pair.sharedDb)}, the same in both readings; each reading by up to ${limit(pair.ownDb)} more. How sure is the loss (U, k = 2)?`,
    answer: 'a',
    worked: `The loss is a difference. What is off alike in both readings is subtracted from itself; two parts of ${limit(pair.ownDb)} remain: ${expanded(pair)}.`,
    options: [
      { id: 'a', text: expanded(pair), reply: 'Nobody has to know how far off the receiver is.' },
      {
        id: 'b',
        text: independent(pair),
        reply: 'Squares added as if two different receivers had been used. With two it would be right.',
      },
      {
        id: 'c',
        text: expanded(sum),
        reply:
          'The common part counted twice: that belongs to a sum. In a difference its signs are opposite.',
      },
      {
        id: 'd',
        text: worst({ ...pair, combined: 'mean' }),
        reply:
          'The data sheet’s promise for one level. The loss is no level, and that promise is not needed for it.',
      },
    ],
  };
}

/** What a mean of several readings of one instrument keeps. */
export function sharedMean(): Question {
  const pair: SharedPair = { combined: 'mean', ownDb: 0.1, sharedDb: 0.3 };
  return {
    id: 'shared-mean',
    stem: `The same power is read twice with one meter and the mean is taken. The meter may be off by up to ${limit(pair.sharedDb)}, alike in both readings; each reading by up to ${limit(pair.ownDb)} more for itself. How sure is the mean (U, k = 2)?`,
    answer: 'b',
    worked: `Only what is new at each reading averages out. What the meter is off is the same both times and stays in full: ${expanded(pair)}, hardly less than for one reading.`,
    options: [
      {
        id: 'a',
        text: independent(pair),
        reply:
          'Everything divided by the root of two, what the meter is off as well. That did not change between the readings.',
      },
      { id: 'b', text: expanded(pair), reply: 'Repeat to be rid of scatter; compare to be rid of the rest.' },
      {
        id: 'c',
        text: expanded({ ...pair, combined: 'difference' }),
        reply:
          'That holds for a difference of the two. In their mean, what the meter is off does not cancel.',
      },
      {
        id: 'd',
        text: expanded({ ...pair, combined: 'sum' }),
        reply: 'That is the sum. The mean is half of it, and so is its uncertainty.',
      },
    ],
  };
}

const RESISTORS = 10;
const STANDARD_OHM = 0.1;

/** Standard uncertainty of ten resistors in a row, compared with one standard or each with one of its own. Source: GUM 5.2.2. */
function resistorsOhm({ isShared }: { isShared: boolean }): number {
  const inputs = Array.from({ length: RESISTORS }, (_, i): Input => {
    const statement = { form: 'standard', standardUncertainty: STANDARD_OHM } as const;
    const input = componentOf({ id: `resistor ${i + 1}`, statement, unit: 'own' });
    return isShared ? { ...input, cause: 'standard' } : input;
  });
  const sensitivities = inputs.map(() => 1);
  const model = { kind: 'sum', constant: 0, inputs, sensitivities } as const;
  return evaluateBand({ model, coverageFactor: 1 }).propagation.standardUncertainty;
}

/** The Guide's own example of a shared cause. */
export function sharedResistors(): Question {
  const ohm = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'ohm' });
  const count = numberText('shown', { value: RESISTORS, decimals: 0 });
  const r = numberText('shown', {
    value: correlationOfPair({ combined: 'sum', ownDb: 0, sharedDb: 1 }),
    decimals: 0,
  });
  return {
    id: 'shared-resistors',
    stem: `${count} resistors are connected in a row. Each was compared with the same standard, whose standard uncertainty is ${ohm(STANDARD_OHM)}; the comparisons add next to nothing. What is the standard uncertainty of the row?`,
    answer: 'd',
    worked: `One cause, ${count} times with the same sign (r = ${r}): the uncertainties add up as they are, ${count} × ${ohm(STANDARD_OHM)} = ${ohm(resistorsOhm({ isShared: true }))}. The example is the Guide’s own (GUM 5.2.2).`,
    options: [
      {
        id: 'a',
        text: ohm(0),
        reply: 'A common standard cancels in a difference or a ratio of two resistors. Here they are added.',
      },
      { id: 'b', text: ohm(STANDARD_OHM), reply: 'Counted once. It is in every one of them.' },
      {
        id: 'c',
        text: ohm(resistorsOhm({ isShared: false })),
        reply: 'Roots of squares: right if each had been compared with a standard of its own.',
      },
      {
        id: 'd',
        text: ohm(resistorsOhm({ isShared: true })),
        reply: 'If the standard is off, all of them are off with it.',
      },
    ],
  };
}
