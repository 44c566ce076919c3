import { expansionUm, remainingDifferenceK } from '#compute';
import {
  CERTIFICATE_UM,
  type Comparison,
  claimOf,
  clubBlocks,
  differenceUm,
  FILM_UM,
  NOMINAL_MM,
  STEEL_PPM,
} from '../sheet/gauge-blocks.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { changeText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const um = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'um' });
const length = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'um' });
const mm = (value: number): string => quantityText('shown', { value, decimals: 0, unit: 'mm' });
const celsius = (value: number): string => quantityText('shown', { value, decimals: 0, unit: 'degC' });
const kelvin = (value: number): string => quantityText('shown', { value, decimals: 0, unit: 'K' });
const minutes = (value: number): string =>
  `${quantityText('shown', { value, decimals: 0, unit: 'none' })} minutes`;
const even = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'um' });

/** How much longer 100 mm of a material are for so many kelvin. */
const growth = (ppm: number, warmerK: number): number =>
  expansionUm({ lengthMm: NOMINAL_MM, expansionPerK: ppm * 1e-6, temperatureC: 20 + warmerK });

/** The guess that opens the lesson: the comparator shows far more than the certificates say. */
export function whatHappened(): Question {
  const club = clubBlocks();
  const calm = differenceUm({ ...club, stackC: 20 });
  const warmer = club.stackC - club.singleC;
  return {
    id: 'blocks-what-happened',
    stem: `A member wrings three gauge blocks together by hand and at once compares them with one block of ${mm(NOMINAL_MM)}, which has lain on the plate all day. By all that is known of the blocks the stack should be longer by ${length(calm)}. The comparator shows ${um(differenceUm(club))}. What is most of it?`,
    answer: 'c',
    worked: `Warm hands. ${mm(NOMINAL_MM)} of steel grow by ${length(growth(STEEL_PPM, 1))} in each kelvin, and hands warm a small block by some kelvin in a short time. Here it was ${kelvin(warmer)}: ${length(growth(STEEL_PPM, warmer))}. Nothing else on the plate is of that size.`,
    options: [
      {
        id: 'a',
        text: 'The films between the wrung blocks.',
        reply: `There are two, of about ${length(FILM_UM)} each. A hundred times as much would not do.`,
      },
      {
        id: 'b',
        text: 'The certificates are wrong.',
        reply: `Each states ${even(CERTIFICATE_UM)} (k = 2). Four of them together do not come near.`,
      },
      {
        id: 'c',
        text: 'The stack is still warm from the hands.',
        reply: 'And nobody sees it: the blocks look the same, and feel cool even then.',
      },
      {
        id: 'd',
        text: `The room is not at ${celsius(20)}.`,
        reply: 'Then both would be longer, by the same. What both share does not show in a difference.',
      },
    ],
  };
}

/** What both share cancels, as far as they are alike: a bar of aluminium against a stack of steel. */
export function roomWarm(): Question {
  const aluminium = 23.1;
  const [steelUm, barUm] = [growth(STEEL_PPM, 3), growth(aluminium, 3)];
  return {
    id: 'blocks-room-warm',
    stem: `A bar of aluminium, ${mm(NOMINAL_MM)} long at ${celsius(20)}, is compared with a steel stack of just the same length at ${celsius(20)}. Both have lain on the plate for hours, at ${celsius(23)}. Aluminium grows by ${quantityText('shown', { value: aluminium, decimals: 1, unit: 'ppm' })} in each kelvin, steel by ${quantityText('shown', { value: STEEL_PPM, decimals: 1, unit: 'ppm' })}. What does the comparator show, stack less bar?`,
    answer: 'b',
    worked: `Each grows by its own coefficient: the stack by ${length(steelUm)}, the bar by ${length(barUm)}. Stack less bar is ${um(steelUm - barUm)}.`,
    options: [
      {
        id: 'a',
        text: 'Nothing: both have the same temperature.',
        reply: 'The temperature is the same, the growth is not. It cancels between like materials only.',
      },
      {
        id: 'b',
        text: um(steelUm - barUm),
        reply: 'The difference of both growths; which is why lengths are stated at one temperature.',
      },
      {
        id: 'c',
        text: um(-barUm),
        reply: 'That is the bar against a stack that does not grow. Steel grows too.',
      },
      {
        id: 'd',
        text: um(-(steelUm + barUm)),
        reply: 'Both grow in the same direction: in a difference they are taken from each other.',
      },
    ],
  };
}

/** Certificates that hang on one instrument add in full. */
export function oneInstrument(): Question {
  const count = 4;
  const alone: Comparison = { ...clubBlocks(), known: 'own' };
  const two = claimOf({ ...alone, deviationsUm: [0] }).propagation.expanded;
  return {
    id: 'blocks-one-instrument',
    stem: `Four blocks of a set were measured one after the other with one instrument, and what its zero may be off by is nearly all of what their certificates state: ${even(CERTIFICATE_UM)} each (k = 2). What is the expanded uncertainty of the four wrung together, films aside?`,
    answer: 'd',
    worked: `If the zero was off, all four came out wrong by the same, in the same direction. Such parts add as they are: ${count} times ${length(CERTIFICATE_UM)}, ${even(count * CERTIFICATE_UM)}. The root of the sum of squares is for parts that know nothing of each other.`,
    options: [
      {
        id: 'a',
        text: even(CERTIFICATE_UM),
        reply: 'That is one block. The zero is in each of the four.',
      },
      {
        id: 'b',
        text: even(CERTIFICATE_UM * Math.sqrt(count)),
        reply:
          'That is for four certificates that have nothing in common. These have the instrument in common.',
      },
      {
        id: 'c',
        text: even(two),
        reply: 'That is for two independent ones. There are four, and they are not.',
      },
      {
        id: 'd',
        text: even(count * CERTIFICATE_UM),
        reply: 'What is common adds in full. Between two sides that share it, it would cancel.',
      },
    ],
  };
}

/** How long warm blocks have to lie. */
export function howLong(): Question {
  const [warmK, timeConstantMinutes, wishUm] = [3, 10, 0.1];
  const left = (after: number): number =>
    growth(STEEL_PPM, remainingDifferenceK({ differenceK: warmK, minutes: after, timeConstantMinutes }));
  const exact = timeConstantMinutes * Math.log(left(0) / wishUm);
  const needed = Math.ceil(exact);
  return {
    id: 'blocks-how-long',
    stem: `A stack of ${mm(NOMINAL_MM)} of steel is ${kelvin(warmK)} warmer than the plate. A trial has shown that 1/e of the difference, a good third, is left after each ${minutes(timeConstantMinutes)}. How long must it lie until less than ${length(wishUm)} of warmth is left?`,
    answer: 'b',
    worked: `At first it is ${length(left(0))} too long. Every ${minutes(timeConstantMinutes)} divide that by 2.718: the time is ${timeConstantMinutes} times the natural logarithm of ${length(left(0))}/${length(wishUm)}, ${quantityText('shown', { value: exact, decimals: 1, unit: 'none' })}: ${minutes(needed)}. Then ${quantityText('shown', { value: left(needed), decimals: 3, unit: 'um' })} are left.`,
    options: [
      {
        id: 'a',
        text: minutes(timeConstantMinutes),
        reply: `After one such time ${length(left(timeConstantMinutes))} are left.`,
      },
      {
        id: 'b',
        text: minutes(needed),
        reply: 'Some three and a half such times. In practice: longer, and look whether it still moves.',
      },
      {
        id: 'c',
        text: minutes(2 * timeConstantMinutes),
        reply: `Then ${length(left(2 * timeConstantMinutes))} are left: it is not gone after twice the time, it only becomes less by the same factor again.`,
      },
      {
        id: 'd',
        text: minutes(Math.round(timeConstantMinutes * (left(0) / wishUm))),
        reply:
          'That divides the length, as if the same amount went in each minute. It goes faster while it is warmer.',
      },
    ],
  };
}
