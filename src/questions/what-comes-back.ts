import {
  mismatchLossDb,
  powerRatioToDb,
  reflectionOfReturnLoss,
  reflectionOfSwr,
  swrOfReflection,
} from '#compute';
import {
  clubLine,
  linePowers,
  reachesDb,
  reflectionThere,
  returnLossHere,
  swrHere,
} from '../sheet/what-comes-back.ts';
import { powerText } from '../text/power-text.ts';
import { changeText, dbText, numberText, percentText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const change = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const db = (value: number, decimals = 1): string => dbText('shown', { db: value, decimals });
const percent = (share: number): string => percentText('shown', { percent: 100 * share, decimals: 1 });
const swr = (value: number, decimals = 1): string => numberText('shown', { value, decimals });
const watts = (powerW: number, digits = 3): string => powerText('shown', { powerW, digits });

/** The guess that opens the lesson: how much does an antenna with an SWR of three miss? */
export function backHowMuch(): Question {
  const line = { ...clubLine(), match: 'tuner' } as const;
  const rho = reflectionThere(line);
  const missed = 1 - 10 ** (reachesDb(line) / 10);
  return {
    id: 'back-how-much',
    stem: `An antenna has an SWR of ${swr(line.antennaSwr)}. Its line is short and loses ${db(line.lossDb)} when matched. At the transmitter a good tuner makes a match. How much of the transmitter’s power does not get into the antenna?`,
    answer: 'c',
    worked: `The antenna turns back ${percent(rho ** 2)} of what arrives. The tuner sends it out again, and again, until it is in. Only the line takes its share at each passage: together ${percent(missed)}, or ${change(reachesDb(line))}.`,
    options: [
      {
        id: 'a',
        text: percent(rho),
        reply:
          'That is the reflection: a share of the volts. Of the power it is the square, and even that is not lost here.',
      },
      {
        id: 'b',
        text: percent(rho ** 2),
        reply:
          'That much is turned back at the antenna. What is turned back is not gone: the tuner sends it out again.',
      },
      {
        id: 'c',
        text: percent(missed),
        reply: 'A little more than the line’s own loss, since the wave passes more than once.',
      },
      {
        id: 'd',
        text: percent(1 - 1 / line.antennaSwr),
        reply: 'An SWR is a ratio of volts along the line. Its inverse is no share of the power.',
      },
    ],
  };
}

/** From a return loss to a standing-wave ratio and a share of power. */
export function backReturnLoss(): Question {
  const loss = 14;
  const rho = reflectionOfReturnLoss(loss);
  const both = (reflection: number, share: number): string =>
    `SWR ${swr(swrOfReflection(reflection))}, ${percent(share)} of the power`;
  return {
    id: 'back-return-loss',
    stem: `A return loss of ${db(loss, 0)}: which SWR, and how much of the power comes back?`,
    answer: 'b',
    worked: `${db(loss, 0)} down in power is ${percent(rho ** 2)}. The root of that is the reflection, ${swr(rho, 2)}, and (1 + ρ)/(1 − ρ) is ${swr(swrOfReflection(rho))}.`,
    options: [
      {
        id: 'a',
        text: both(rho ** 2, rho ** 2),
        reply: 'The share of the power was put in as the reflection. The reflection is its root.',
      },
      {
        id: 'b',
        text: both(rho, rho ** 2),
        reply: 'Power first, its root is the reflection, and that makes the SWR.',
      },
      {
        id: 'c',
        text: both(rho, rho),
        reply: 'The SWR is right. The share is that of the volts; of the power it is the square.',
      },
      {
        id: 'd',
        text: both(10 ** (-loss / 40), 10 ** (-loss / 20)),
        reply: 'Return loss compares powers, as every decibel does. Here it was halved first.',
      },
    ],
  };
}

/** From the SWR at the transmitter back to the antenna. */
export function backHidden(): Question {
  const line = { ...clubLine(), antennaSwr: 4, lossDb: 3 };
  const shown = swrHere(line);
  const once = swrOfReflection(reflectionOfReturnLoss(returnLossHere(line) - line.lossDb));
  const wrongWay = swrOfReflection(reflectionOfReturnLoss(returnLossHere(line) + 2 * line.lossDb));
  return {
    id: 'back-hidden',
    stem: `At the transmitter an SWR of ${swr(shown, 2)} is measured, a return loss of ${db(returnLossHere(line))}. The line to the antenna loses ${db(line.lossDb, 0)}. What is the SWR at the antenna?`,
    answer: 'd',
    worked: `The wave passed the line twice, so ${db(2 * line.lossDb, 0)} of the return loss are the line’s. ${db(returnLossHere(line) - 2 * line.lossDb)} are left for the antenna: an SWR of ${swr(line.antennaSwr)}.`,
    options: [
      {
        id: 'a',
        text: swr(shown, 2),
        reply: 'That is at the transmitter. Between there and the antenna the line takes its share, twice.',
      },
      {
        id: 'b',
        text: swr(once, 2),
        reply: 'The loss was taken off once. The wave goes out and comes home.',
      },
      {
        id: 'c',
        text: swr(wrongWay, 2),
        reply: 'The loss was added instead of taken off. A line makes what comes back smaller, never larger.',
      },
      { id: 'd', text: swr(line.antennaSwr, 2), reply: 'Out and home: twice the loss.' },
    ],
  };
}

/** Forward and reflected power. */
export function backNet(): Question {
  const swrThere = 1.5;
  const line = { ...clubLine(), antennaSwr: swrThere, lossDb: 0 };
  const { forward, back, into } = linePowers(line);
  const rho = reflectionOfSwr(swrThere);
  return {
    id: 'back-net',
    stem: `A meter in the line shows ${watts(forward)} forward and ${watts(back)} back. What goes into the line, and how does that compare with the forward power?`,
    answer: 'a',
    worked: `Forward less back: ${watts(into)}. Against ${watts(forward)} forward that is ${change(0 - mismatchLossDb(rho))}, hardly anything.`,
    options: [
      {
        id: 'a',
        text: `${watts(into)}, ${change(powerRatioToDb(into / forward))}`,
        reply: 'The difference of the two waves.',
      },
      {
        id: 'b',
        text: `${watts(forward + back)}, ${change(powerRatioToDb((forward + back) / forward))}`,
        reply: 'The two waves run against each other: what comes back is taken away, not added.',
      },
      {
        id: 'c',
        text: `${watts(forward * (1 - rho))}, ${change(powerRatioToDb(1 - rho))}`,
        reply: 'That takes the share of the volts off the power.',
      },
      {
        id: 'd',
        text: `${watts(forward)}, ${change(0)}`,
        reply: 'Forward power is what is on its way. What comes back has not gone in.',
      },
    ],
  };
}
