import { meanOfPeakEnvelope, powerW } from '#compute';
import { clubHeat, type HeatUse, heatResult, offDb, reached } from '../sheet/dc-heat.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { powerText } from '../text/power-text.ts';
import { changeText, percentText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const watts = (power: number): string => powerText('shown', { powerW: power, digits: 3 });
const kelvin = (value: number): string => quantityText('shown', { value, decimals: 1, unit: 'K' });
const change = (value: number): string => changeText('shown', { value, decimals: 1, unit: 'dB' });

function band(use: HeatUse): string {
  const halfWidth = heatResult(use).propagation.expanded;
  return plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
}

/** The guess that opens the lesson: how many watts of RF? */
export function heatHow(): Question {
  const { volts, amperes, riseRfK, riseDcK } = clubHeat();
  const dc = volts * amperes;
  const [v, a] = [
    quantityText('shown', { value: volts, decimals: 0, unit: 'V' }),
    quantityText('shown', { value: 1000 * amperes, decimals: 0, unit: 'mA' }),
  ];
  return {
    id: 'heat-how',
    stem: `A load in an insulated box gets ${kelvin(riseRfK)} warmer than the room with the transmitter on it, and ${kelvin(riseDcK)} warmer with ${v} and ${a} of direct current. What does the transmitter give?`,
    wall: `A load in an insulated box gets ${kelvin(riseRfK)} warmer than the room with the transmitter on it, and ${kelvin(riseDcK)} warmer with ${watts(dc)} of direct current. What does the transmitter give?`,
    answer: 'a',
    worked: `As much heat, as much power. ${v} times ${a} are ${watts(dc)}, and the RF made it warmer by ${kelvin(riseRfK)} to ${kelvin(riseDcK)}: ${watts((dc * riseRfK) / riseDcK)}. No meter for RF was used.`,
    options: [
      {
        id: 'a',
        text: watts((dc * riseRfK) / riseDcK),
        reply: 'The volt and the ampere, and a thermometer that only compares.',
      },
      {
        id: 'b',
        text: watts((dc * riseDcK) / riseRfK),
        reply: 'Turned round: the RF made it warmer, so it is more than the DC.',
      },
      {
        id: 'c',
        text: watts((dc * riseRfK) / riseDcK / 2),
        reply: 'Half would be for a peak. Heat knows no peaks: it adds up what arrives.',
      },
      {
        id: 'd',
        text: 'That cannot be told: nobody knows how much heat the box loses.',
        reply: 'It loses the same both times. That is why one compares instead of computing the heat.',
      },
    ],
  };
}

/** What not waiting does. */
export function heatWaiting(): Question {
  const use = { ...clubHeat(), waitedRf: 8, waitedDc: 60 };
  const off = offDb(use);
  const share = reached({ ...use, minutes: use.waitedRf });
  const percent = percentText('shown', { percent: 100 * share, decimals: 0 });
  return {
    id: 'heat-waiting',
    stem: `The load takes ${use.timeConstant} minutes to ${percent} of its rise. Somebody reads the rise with RF after ${use.waitedRf} minutes, but lets the DC run for an hour. How far is the result off?`,
    answer: 'b',
    worked: `After ${use.waitedRf} minutes ${percent} of the rise is there, and the result is ${percent} of what it should be: ${change(off)}. Five times as long leaves less than a hundredth to come. Waiting alike in both runs would do as well, if nothing else changes.`,
    options: [
      {
        id: 'a',
        text: change(2 * off),
        reply:
          'That is 20 times the logarithm. A rise of temperature goes with the power, so it is 10 times.',
      },
      { id: 'b', text: change(off), reply: `${percent} of the power, and it looks like a good reading.` },
      {
        id: 'c',
        text: change(10 * Math.log10(1 - share)),
        reply: 'That counts what was still to come. What is read is what was reached.',
      },
      {
        id: 'd',
        text: 'Not at all: the thermometer showed what it showed.',
        reply: 'It did, of a load on its way. The DC run told of one that had arrived.',
      },
    ],
  };
}

/** Which part is worth the trouble? */
export function heatWorth(): Question {
  const club = clubHeat();
  const finer = { ...club, withinK: 0.03 };
  return {
    id: 'heat-worth',
    stem: `The club’s result is known to ${band(club)} (k = 2): voltmeter 0.5 %, ammeter 1 %, each rise ${plusMinusText('shown', { halfWidth: club.withinK, decimals: 1, unit: 'K' })}, unequal loss of heat 1 %. What makes it better most?`,
    answer: 'c',
    worked: `Two rises of nearly ten kelvin, each known to a tenth, bring a hundredth of the power each, and there are two of them. With a thermometer that compares to ${plusMinusText('shown', { halfWidth: 0.03, decimals: 2, unit: 'K' })} it is ${band(finer)}. It need not be right; it has to tell the same heat by the same number twice.`,
    options: [
      {
        id: 'a',
        text: 'A better voltmeter.',
        reply: 'It is the smallest part already. Volts enter once here, as they are multiplied by amperes.',
      },
      {
        id: 'b',
        text: 'A certificate for the load’s resistance at RF.',
        reply: 'The resistance drops out: volts and amperes are read on the same warm load.',
      },
      {
        id: 'c',
        text: 'A thermometer that compares better.',
        reply: 'Or more heat, if the transmitter has it.',
      },
      {
        id: 'd',
        text: 'Reading volts and amperes a hundred times.',
        reply: 'They stand still. What they are off by stands still with them.',
      },
    ],
  };
}

/** What heat sees of a keyed transmitter. */
export function heatKeyed(): Question {
  const peak = powerW(0.5);
  const dits = meanOfPeakEnvelope({ peakEnvelope: peak, envelope: 'stringOfDits' });
  const word = meanOfPeakEnvelope({ peakEnvelope: peak, envelope: 'parisWord' });
  return {
    id: 'heat-keyed',
    stem: `The transmitter has a peak envelope power of ${watts(peak)} and sends an endless string of dits into the load. What does the substitution find?`,
    answer: 'b',
    worked: `Heat adds up what arrives, over minutes. With the key down for half of the time it is ${watts(dits)}, the mean power. For the power with the key down, keep it down.`,
    options: [
      { id: 'a', text: watts(peak), reply: 'That is the power while a dit lasts. The gaps do not warm.' },
      { id: 'b', text: watts(dits), reply: 'The mean, of any wave, with all harmonics.' },
      {
        id: 'c',
        text: watts(peak * Math.SQRT1_2),
        reply: 'A root belongs to volts. Half the time is half the heat.',
      },
      {
        id: 'd',
        text: watts(word),
        reply: 'That is a word with its dahs and spaces: 22 of 50 units are on.',
      },
    ],
  };
}
