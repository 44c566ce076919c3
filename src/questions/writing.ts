import { componentOf, evaluateBand, type Statement } from '#compute';
import { clubUse, written } from '../sheet/stated-budget.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { numberText, quantityText } from '../text/quantity-text.ts';
import type { UnitName } from '../text/units.ts';
import type { Question } from './question.ts';

const plusMinus = (halfWidth: number, decimals = decimalsFor(halfWidth), unit: UnitName = 'dB'): string =>
  plusMinusText('shown', { halfWidth, decimals, unit });
const level = (value: number, decimals: number): string =>
  quantityText('shown', { value, decimals, unit: 'dBm' });

/** The propagation of one statement by itself. */
function propagationOf(
  statement: Statement,
  wish: { coverageProbability?: number; coverageFactor?: number },
) {
  const model = {
    kind: 'sum',
    constant: 0,
    inputs: [componentOf({ id: 'stated', statement, unit: 'own' })],
    sensitivities: [1],
  } as const;
  return evaluateBand({ model, ...wish }).propagation;
}

const doubled = (statement: Statement): string =>
  plusMinus(propagationOf(statement, { coverageFactor: 2 }).expanded);

/** The guess that opens the lesson: a plus-minus without a word. */
export function writingPlusMinus(): Question {
  const stated = 0.5;
  const asStandard = doubled({ form: 'standard', standardUncertainty: stated });
  const asLimits = doubled({ form: 'limits', shape: 'rectangular', halfWidth: stated });
  return {
    id: 'writing-plus-minus',
    stem: `In a club’s journal you read: “Output ${level(27.1, 1)} ${plusMinus(stated, 1)}.” Nothing more. How sure were they, with a coverage factor of 2?`,
    answer: 'd',
    worked: `Nobody can know. As an expanded uncertainty with k = 2 it is ${plusMinus(stated, 1)}; as a standard uncertainty it would make ${asStandard}; as plain limits ${asLimits}. A factor of two lies between them, and one word would have settled it.`,
    options: [
      {
        id: 'a',
        text: plusMinus(stated, 1),
        reply: 'If it is an expanded uncertainty, and if its k is 2. It says neither.',
      },
      {
        id: 'b',
        text: asStandard,
        reply: 'If it is one standard deviation, as many a program prints it. It does not say so.',
      },
      {
        id: 'c',
        text: asLimits,
        reply:
          'If it was copied from a data sheet: limits, divided by the root of three, times two. It does not say so.',
      },
      { id: 'd', text: 'That cannot be known.', reply: 'A plus-minus needs a word.' },
    ],
  };
}

/** Rounding the result of the club's budget. */
export function writingRounded(): Question {
  const found = written(clubUse());
  const { estimate, expanded, standardUncertainty, coverageFactor } = found;
  const onTheWay = written({ ...clubUse(), onTheWay: true });
  const u = quantityText('shown', { value: standardUncertainty, decimals: 4, unit: 'dB' });
  const k = numberText('shown', { value: coverageFactor, decimals: 0 });
  const places = decimalsFor(expanded);
  const right = `${level(estimate, places)} ${plusMinus(expanded)}`;
  return {
    id: 'writing-rounded',
    stem: `A budget ends with ${level(estimate, 4)} and u = ${u}. You state it with k = ${k}. What do you write?`,
    answer: 'b',
    worked: `U = ${k} × ${u} = ${quantityText('shown', { value: expanded, decimals: 4, unit: 'dB' })}. Two digits of it, rounded now and not before: ${plusMinus(expanded)}. The value then gets the same last place.`,
    options: [
      {
        id: 'a',
        text: `${level(estimate, 4)} ${plusMinus(expanded, 4)}`,
        reply: 'Four digits of an uncertainty that is itself hardly known to one. Nobody can use them.',
      },
      { id: 'b', text: right, reply: 'Two digits of U, and the value to the same place.' },
      {
        id: 'c',
        text: `${level(estimate, places)} ${plusMinus(onTheWay.expanded)}`,
        reply: 'u was rounded first and multiplied afterwards. Keep all digits until the end.',
      },
      {
        id: 'd',
        text: `${level(estimate, 0)} ${plusMinus(expanded)}`,
        reply: 'The value is cut farther than U bears: what was cut off is a part of U that nobody counted.',
      },
    ],
  };
}

const MASS = { form: 'standard', standardUncertainty: 0.35, degreesOfFreedom: 9 } as const;

/** An expanded uncertainty from few degrees of freedom. Source: GUM 7.2.4. */
export function writingFew(): Question {
  const milligram = (value: number): string => `${numberText('shown', { value, decimals: 2 })}\u00a0mg`;
  const right = propagationOf(MASS, { coverageProbability: 0.95 });
  const normal = propagationOf(
    { form: 'standard', standardUncertainty: 0.35 },
    { coverageProbability: 0.95 },
  );
  const times = (coverageFactor: number): string =>
    milligram(propagationOf(MASS, { coverageFactor }).expanded);
  const k = numberText('shown', { value: right.coverageFactor, decimals: 2 });
  return {
    id: 'writing-few',
    stem: `A mass is known with u = ${milligram(MASS.standardUncertainty)} from ${MASS.degreesOfFreedom} degrees of freedom. What is U for a coverage probability of 95\u00a0%?`,
    answer: 'c',
    worked: `From so few readings u itself is not well known, and Student’s t says by how much the factor has to grow: k = ${k}, U = ${milligram(right.expanded)}. The example is the Guide’s own (GUM 7.2.4).`,
    options: [
      {
        id: 'a',
        text: milligram(normal.expanded),
        reply:
          'That factor belongs to an uncertainty that is known exactly: infinitely many degrees of freedom.',
      },
      {
        id: 'b',
        text: times(2),
        reply: 'k = 2 by habit. From nine degrees of freedom it covers less than 95\u00a0%.',
      },
      { id: 'c', text: milligram(right.expanded), reply: 'Student’s t for nine degrees of freedom.' },
      { id: 'd', text: times(3), reply: 'k = 3 covers more than was asked for.' },
    ],
  };
}

/** A value with its uncertainty in brackets, as a certificate may have it. */
export function writingBrackets(): Question {
  const u = 0.04;
  const statement = { form: 'standard', standardUncertainty: u } as const;
  const twice = plusMinus(propagationOf(statement, { coverageFactor: 2 }).expanded, 2);
  return {
    id: 'writing-brackets',
    stem: 'A table gives the loss of a pad as 20.02(4) dB. What is its expanded uncertainty with k = 2?',
    answer: 'a',
    worked: `The digits in brackets are a standard uncertainty, counted in the last place of the number (GUM 7.2.2): u = ${quantityText('shown', { value: u, decimals: 2, unit: 'dB' })}. Times two: ${twice}.`,
    options: [
      { id: 'a', text: twice, reply: 'Brackets hold u, in the last place.' },
      { id: 'b', text: plusMinus(u, 2), reply: 'That is u. Brackets do not hold an expanded uncertainty.' },
      {
        id: 'c',
        text: plusMinus(100 * u, 0),
        reply: 'The digit in brackets stands in the last place of the number, not before its point.',
      },
      {
        id: 'd',
        text: plusMinus(u / 2, 2),
        reply: 'Halved where it should be doubled: that takes the brackets for U and asks for u.',
      },
    ],
  };
}
