import {
  averageMeterRatio,
  crestFactor,
  levelDbm,
  levelToPower,
  ohms,
  powerW,
  rmsOfPeak,
  voltsOfPower,
  voltsPeak,
} from '#compute';
import { dividedPercent, METER_KOHM } from '../sheet/joined.ts';
import { powerText } from '../text/power-text.ts';
import { quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const volts = (value: number, decimals = 2): string => quantityText('shown', { value, decimals, unit: 'V' });
const kohm = (value: number): string => quantityText('shown', { value, decimals: 0, unit: 'kohm' });

/** Two equal resistors across a battery: what a meter shows at the middle. */
const MIDDLE_V = 5;
const EACH_KOHM = 100;
const shown = (sourceKohm: number, meterKohm: number): number =>
  MIDDLE_V * (1 + dividedPercent(sourceKohm, meterKohm) / 100);

/** The guess that opens the lesson: a needle meter at the middle of a divider. */
export function joinsNeedle(): Question {
  const source = EACH_KOHM / 2;
  return {
    id: 'joins-needle',
    stem: `Two resistors of ${kohm(EACH_KOHM)} divide ${volts(2 * MIDDLE_V, 0)} in half. A needle meter with ${kohm(METER_KOHM.needle)} is put to the middle. What does it show?`,
    answer: 'b',
    worked: `Seen from the meter the two resistors lie side by side: the voltage comes from ${kohm(source)}. Meter and source divide it once more: ${volts(MIDDLE_V, 0)} × ${METER_KOHM.needle} / (${METER_KOHM.needle} + ${source}) = ${volts(shown(source, METER_KOHM.needle), 1)}. That voltage is really there, as long as the meter is.`,
    options: [
      {
        id: 'a',
        text: volts(MIDDLE_V, 1),
        reply: 'That was there before. A meter that takes a current is a part of the circuit.',
      },
      {
        id: 'b',
        text: volts(shown(source, METER_KOHM.needle), 1),
        reply: 'The needle is right; it shows what is there now.',
      },
      {
        id: 'c',
        text: volts(shown(EACH_KOHM, METER_KOHM.needle), 1),
        reply: 'One resistor taken for the source. Both lead to the middle, side by side: half of it.',
      },
      {
        id: 'd',
        text: volts(shown(source, METER_KOHM.digital), 3),
        reply: `A digital meter of ${kohm(METER_KOHM.digital)} would show that: its resistance is fifty times as large.`,
      },
    ],
  };
}

/** An average-responding meter on a square wave. */
export function joinsSquare(): Question {
  const peak = 5;
  const rms = peak / crestFactor('square');
  const ratio = averageMeterRatio('square');
  const triangle = peak / crestFactor('triangle');
  return {
    id: 'joins-square',
    stem: `A multimeter that responds to the mean, with a scale made for sines, is put to a square wave that goes from +${volts(peak, 0)} to \u2212${volts(peak, 0)}. What does it show?`,
    answer: 'c',
    worked: `It takes the mean of the rectified wave, here ${volts(peak, 0)}, and its scale multiplies by the form factor of a sine: ${volts(rms * ratio)}. The RMS value of this wave is ${volts(rms)}: it shows ${quantityText('shown', { value: 100 * (ratio - 1), decimals: 1, unit: 'percent' })} too much.`,
    options: [
      {
        id: 'a',
        text: volts(rms),
        reply: 'That is the RMS value. A meter that responds to the mean does not know it.',
      },
      {
        id: 'b',
        text: volts(rmsOfPeak(voltsPeak(peak))),
        reply: 'Peak over the root of two is the RMS value of a sine. The wave is a square.',
      },
      { id: 'c', text: volts(rms * ratio), reply: 'The mean, by the scale of a sine.' },
      {
        id: 'd',
        text: volts(triangle * averageMeterRatio('triangle')),
        reply: 'That is shown for a triangle of the same peak.',
      },
    ],
  };
}

/** A probe at 10x on an oscilloscope that is set to 1x. */
export function joinsProbe(): Question {
  const power = levelToPower(levelDbm(27));
  const load = ohms(50);
  const there = voltsOfPower({ power, resistance: load });
  const text = (watts: number): string => powerText('shown', { powerW: powerW(watts), digits: 3 });
  return {
    id: 'joins-probe',
    stem: `The hidden transmitter gives ${text(power)} into its load. The probe’s switch is at 10×, the oscilloscope is still set to 1×. What power do you work out?`,
    answer: 'd',
    worked: `Of ${quantityText('shown', { value: there, decimals: 1, unit: 'Vrms' })} a tenth is shown. A tenth of the volts is a hundredth of the power: ${text(power / 100)}. It is a mistake of 20 dB, and it looks like a bad transmitter.`,
    options: [
      {
        id: 'a',
        text: text(power),
        reply: 'The switch makes a tenth of it; somebody has to multiply by ten.',
      },
      { id: 'b', text: text(power / 10), reply: 'A tenth of the volts. Power goes with the square.' },
      {
        id: 'c',
        text: text(power * 100),
        reply: 'The other way round: that comes of a probe at 1× with the oscilloscope set to 10×.',
      },
      { id: 'd', text: text(power / 100), reply: 'A tenth of the volts, a hundredth of the watts.' },
    ],
  };
}

/** Which instrument shows what: a harmonic beside a carrier. */
export function joinsWhich(): Question {
  const carrier = levelToPower(levelDbm(27));
  const harmonic = carrier * 10 ** -4;
  return {
    id: 'joins-which',
    stem: `Is the second harmonic of the transmitter ${quantityText('shown', { value: 40, decimals: 0, unit: 'dB' })} below its carrier, or not? Which instrument, behind a pad, answers that?`,
    answer: 'a',
    worked: `Beside ${powerText('shown', { powerW: carrier, digits: 3 })} the harmonic would be ${powerText('shown', { powerW: powerW(harmonic), digits: 2 })}. Only an instrument that shows level over frequency keeps the two apart.`,
    options: [
      {
        id: 'a',
        text: 'A spectrum analyser',
        reply: 'Level over frequency: carrier and harmonic each have their place.',
      },
      {
        id: 'b',
        text: 'A power meter',
        reply:
          'It shows the sum of everything: the harmonic is a part in ten thousand of it, and has no place of its own.',
      },
      {
        id: 'c',
        text: 'A frequency counter',
        reply: 'It counts the strongest of what arrives, and shows no level.',
      },
      {
        id: 'd',
        text: 'A multimeter on its AC range',
        reply: 'Out of range by far, at either frequency; and it would show one number for all.',
      },
    ],
  };
}
