import { dbToPercentOfPower, gainDb, mismatchLossDb, percentOfPowerToDb, swrOfReflection } from '#compute';
import { clubInLine, type InLineUse, inLineFound, scaleErrorW, swrFound } from '../sheet/in-line-meter.ts';
import { deviationsText } from '../text/deviation-text.ts';
import { powerIntervalText, powerText } from '../text/power-text.ts';
import { dbText, numberText, percentText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const watts = (powerW: number): string => powerText('shown', { powerW, digits: 2 });
const about = (powerW: number, half: number): string =>
  powerIntervalText('shown', { lowerW: powerW - half, upperW: powerW + half });
const two = (value: number): string => numberText('shown', { value, decimals: 2 });

const low = (): InLineUse => ({ ...clubInLine(), forwardW: 3, fullScaleW: 20, wanted: 'incident' });
const whip = (): InLineUse => ({
  ...clubInLine(),
  forwardW: 5,
  reflectedW: 0.2,
  fullScaleW: 20,
  percentOfFullScale: 0,
});

/** The guess that opens the lesson: a percentage of what? */
export function inLineScale(): Question {
  const use = low();
  const error = scaleErrorW(use);
  const share = (100 * error) / use.forwardW;
  const decibels = deviationsText('shown', {
    upper: percentOfPowerToDb(share),
    lower: percentOfPowerToDb(-share),
    decimals: 2,
    unit: 'dB',
  });
  return {
    id: 'inline-scale',
    stem: `A meter in the line has a scale of ${watts(use.fullScaleW)} and a data sheet that says “${use.percentOfFullScale} % of full scale”. It shows ${watts(use.forwardW)}. Between what may the power lie?`,
    answer: 'd',
    worked: `The percentage is of the full scale: ${use.percentOfFullScale} % of ${watts(use.fullScaleW)} are ${watts(error)}, wherever the needle stands. On ${watts(use.forwardW)} that is a third: ${about(use.forwardW, error)}, or ${decibels}.`,
    options: [
      {
        id: 'a',
        text: about(use.forwardW, (use.percentOfFullScale / 100) * use.forwardW),
        reply:
          'That would be a percentage of the reading. The data sheet says another thing, in small letters.',
      },
      {
        id: 'b',
        text: about(use.forwardW, 0.05),
        reply: 'Half of a tenth is what you can read off the dial. It is not how well the dial was made.',
      },
      {
        id: 'c',
        text: about(use.forwardW, error / 2),
        reply: 'A limit holds to both sides in full: five percent more, and five percent less.',
      },
      { id: 'd', text: about(use.forwardW, error), reply: 'Low on a scale the same watts weigh more.' },
    ],
  };
}

/** Forward less reflected. */
export function inLineNet(): Question {
  const { forwardW, reflectedW } = whip();
  return {
    id: 'inline-net',
    stem: `A portable whip, with the meter at its foot: it shows ${watts(forwardW)} forward and ${watts(reflectedW)} reflected. How much power stays in the whip?`,
    answer: 'b',
    worked: `What goes out and does not come back has stayed: ${watts(forwardW)} less ${watts(reflectedW)}, ${watts(forwardW - reflectedW)}. That is right for any load, provided that the meter tells the two waves apart at the impedance it was made for. (Its SWR is that of your line only if your line has the same impedance.)`,
    options: [
      {
        id: 'a',
        text: watts(forwardW + reflectedW),
        reply: 'What comes back is a part of what went out, not an addition to it.',
      },
      { id: 'b', text: watts(forwardW - reflectedW), reply: 'Power less power, in watts.' },
      {
        id: 'c',
        text: watts(forwardW * (1 - Math.sqrt(reflectedW / forwardW))),
        reply: 'A fifth of the volts comes back, which is a twenty-fifth of the power.',
      },
      {
        id: 'd',
        text: watts(forwardW / 1.5),
        reply:
          'The standing-wave ratio divides no power. It tells how crests and troughs of the volts compare.',
      },
    ],
  };
}

/** How far an SWR can be believed. */
export function inLineSwr(): Question {
  const outcome = swrFound(whip());
  if (!outcome.found) throw new RangeError('inLineSwr: an SWR must be there, got none');
  const { swr, lower, upper } = outcome;
  const { forwardW, reflectedW, directivityDb } = whip();
  const [ofVolts, ofPower] = [10 ** (-directivityDb / 20), 10 ** (-directivityDb / 10)];
  const asPower = (sign: 1 | -1): string =>
    two(swrOfReflection(Math.sqrt(reflectedW / forwardW + sign * ofPower)));
  return {
    id: 'inline-swr',
    stem: `The same whip reads SWR ${two(swr)}. The coupler in the meter has a directivity of 25 dB; take its needles as exact. Between what does the true SWR lie?`,
    answer: 'c',
    worked: `A directivity of 25 dB lets ${percentText('shown', { percent: 100 * ofVolts, decimals: 1 })} of the forward volts leak into the reflected side. They add to the reflection or take from it, by an unknown phase: from ${two(lower)} to ${two(upper)}.`,
    options: [
      {
        id: 'a',
        text: `${two(swr)}: forward and reflected are exact.`,
        reply:
          'The needles are. What they are fed is not: some of the forward wave gets into the reflected side.',
      },
      {
        id: 'b',
        text: `${asPower(-1)} to ${asPower(1)}`,
        reply: 'That adds the leak, three thousandths of the power, as power. Waves add as volts.',
      },
      {
        id: 'c',
        text: `${two(lower)} to ${two(upper)}`,
        reply: 'To both sides, and farther up than down.',
      },
      {
        id: 'd',
        text: `${two(swr)} to ${two(upper)}: a leak only adds.`,
        reply: 'It may also take away. That is how a bad match can look like a good one.',
      },
    ],
  };
}

/** Which scale gives a number? */
export function inLineRange(): Question {
  const club = clubInLine();
  const on = (fullScaleW: number): InLineUse => ({ ...club, fullScaleW });
  const gives = (fullScaleW: number): boolean => inLineFound(on(fullScaleW)).found;
  if (!gives(1) || gives(5)) throw new RangeError('inLineRange: 1 W must give a number and 5 W none');
  const error = (fullScaleW: number): string => watts(scaleErrorW(on(fullScaleW)));
  const loss = mismatchLossDb(Math.sqrt(club.reflectedW / club.forwardW));
  return {
    id: 'inline-range',
    stem: `The club’s transmitter gives about ${watts(0.5)}. Three meters can be borrowed, each good to ${club.percentOfFullScale} % of full scale: with scales of 1 W, 5 W and 20 W. Which of them can say what the transmitter puts into its load?`,
    answer: 'a',
    worked: `Forward less reflected carries the error of both needles. On the scale of 1 W that is twice ${error(1)}; on 5 W twice ${error(5)}, as much as the reading; on 20 W twice ${error(20)}. Above a third of the reading there is no number to stand behind. What the reflection takes, ${dbText('shown', { db: loss, decimals: 2 })} or ${percentText('shown', { percent: -dbToPercentOfPower(gainDb(-loss)), decimals: 0 })}, is small against all of these.`,
    options: [
      { id: 'a', text: 'Only the one of 1 W.', reply: 'And that one to no better than a fifth or so.' },
      {
        id: 'b',
        text: 'The ones of 1 W and of 5 W.',
        reply: `Half a watt may stand low on a scale of 5 W, but ${error(5)} to either side is half of it, and there are two needles.`,
      },
      {
        id: 'c',
        text: 'All three: five percent is five percent.',
        reply: 'Of the scale. Five percent of 20 W is twice what is to be measured.',
      },
      {
        id: 'd',
        text: 'The one of 20 W best: its needle is never overloaded.',
        reply: 'Nor is it ever told anything. Take the smallest scale that the power fits on.',
      },
    ],
  };
}
