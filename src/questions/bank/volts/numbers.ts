import {
  averageMeterRatio,
  dbToPercentOfVolts,
  gainDb,
  levelDbm,
  levelToVolts,
  ohms,
  peakOfPeakToPeak,
  peakOfPower,
  peakOfRms,
  peakToPeakOfPower,
  percentOfVoltsToDb,
  powerOfPeak,
  powerOfPeakToPeak,
  powerOfVolts,
  powerToLevel,
  powerW,
  rectifiedAverageOfPeak,
  rmsOfPeak,
  voltsOfPower,
  voltsPeak,
  voltsPeakToPeak,
  voltsRms,
} from '#compute';
import { numeric } from '../define.ts';
import { oneOf, steps } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { change, digits, exactly, fixed, given, givenPower, power, sig } from '../write.ts';

const lesson = 'decibels/volts-and-watts';
const scope = 'measuring/oscilloscope-across-a-load';
const FIFTY = ohms(50);
const vpp = (value: number) => voltsPeakToPeak(value);
const ofPeakToPeak = (value: number, r = 50): number =>
  powerOfPeakToPeak({ peakToPeak: vpp(value), resistance: ohms(r) });
const ofRms = (value: number, r = 50): number =>
  powerOfVolts({ volts: voltsRms(value), resistance: ohms(r) });
const ofPeak = (value: number, r = 50): number =>
  powerOfPeak({ peak: voltsPeak(value), resistance: ohms(r) });
const rmsOf = (watts: number, r = 50): number => voltsOfPower({ power: powerW(watts), resistance: ohms(r) });

/** Volts and watts with drawn numbers. */
export const VOLT_NUMBERS: readonly BankQuestion[] = [
  numeric('volts', {
    id: 'peak-of-rms',
    lesson,
    syllabus: ['1.6'],
    difficulty: 1,
    given: { rms: steps(0.5, 12, 0.5) },
    stem: ({ rms }) => `A sine has ${given(rms, 'Vrms')}. How high is its peak?`,
    answer: ({ rms }) => peakOfRms(voltsRms(rms)),
    write: digits('Vp', 3),
    wrong: ({ rms }) => [
      [rms / Math.SQRT2, 'root-two-wrong-way'],
      [2 * rms, 'half-only', 'Twice the peak is peak to peak; RMS and peak differ by √2.'],
      [2 * Math.SQRT2 * rms, 'vpp-as-vp', 'That is the height from trough to crest. The peak is half of it.'],
    ],
    worked: ({ rms }) => [`The peak of a sine is √2 times its RMS: √2 × ${given(rms, 'Vrms')} =`],
    right: 'Times √2, from RMS to peak.',
  }),
  numeric('volts', {
    id: 'rms-of-peak-to-peak',
    lesson,
    syllabus: ['1.6', '8.2'],
    difficulty: 1,
    given: { height: steps(2, 40, 0.4) },
    stem: ({ height }) => `An oscilloscope shows a sine of ${given(height, 'Vpp')}. What is its RMS voltage?`,
    answer: ({ height }) => rmsOfPeak(peakOfPeakToPeak(vpp(height))),
    write: digits('Vrms', 3),
    typed: { quantity: 'voltsRms', unit: 'Vrms', tolerance: { of: 'share', size: 0.01 } },
    wrong: ({ height }) => [
      [height / 2, 'half-only'],
      [
        height / Math.SQRT2,
        'vpp-as-vp',
        'That divides by √2 without halving first: the trough-to-crest height was taken for the peak.',
      ],
      [rectifiedAverageOfPeak(peakOfPeakToPeak(vpp(height))), 'average-for-rms'],
    ],
    worked: ({ height }) => [
      `The peak is half the height: ${given(height, 'Vpp')}/2 = ${exactly(height / 2, 'Vp')}.`,
      `${exactly(height / 2, 'Vp')}/√2 =`,
    ],
    right: 'Halve, then divide by √2.',
  }),
  numeric('volts', {
    id: 'power-of-peak-to-peak',
    lesson,
    syllabus: ['1.6', '1.9', '8.2'],
    difficulty: 2,
    given: { height: steps(2, 44, 0.4) },
    stem: ({ height }) =>
      `Across a load of ${given(50, 'ohm')} an oscilloscope shows a sine of ${given(height, 'Vpp')}. How much power does the load take?`,
    answer: ({ height }) => ofPeakToPeak(height),
    write: power(),
    wrong: ({ height }) => [
      [ofPeak(height), 'vpp-as-vp'],
      [ofRms(height), 'vpp-as-rms'],
      [
        ofPeak(height / 2) * 2,
        'vp-as-rms',
        'That squares the peak and divides by R. For RMS there is a 2 below the line as well.',
      ],
      [
        ofPeakToPeak(height) / 2,
        'rms-as-vp',
        'That halves once too often: V²pp/(8R) has all of the halves in it.',
      ],
    ],
    worked: ({ height }) => [
      `The peak is ${given(height, 'Vpp')}/2 = ${exactly(height / 2, 'Vp')}, the RMS voltage ${exactly(height / 2, 'Vp')}/√2 = ${digits('Vrms', 4)(height / Math.sqrt(8))}.`,
      `RMS volts squared over the resistance: (${digits('Vrms', 4)(height / Math.sqrt(8))})²/${given(50, 'ohm')} =`,
    ],
    right: 'Halve, divide by √2, square, divide by the resistance.',
  }),
  numeric('volts', {
    id: 'power-of-peak-to-peak-typed',
    lesson: scope,
    syllabus: ['1.6', '1.9', '8.2'],
    difficulty: 2,
    given: { height: steps(3, 30, 0.2), load: steps(48, 52, 0.2) },
    suits: ({ load }) => Math.abs(load - 50) > 0.5,
    stem: ({ height, load }) =>
      `A dummy load measures ${given(load, 'ohm')} with a multimeter. Across it an oscilloscope shows a sine of ${given(height, 'Vpp')}. How much power does it take?`,
    answer: ({ height, load }) => ofPeakToPeak(height, load),
    write: power(4),
    typed: { quantity: 'power', unit: 'W', tolerance: { of: 'share', size: 0.004 } },
    wrong: ({ height, load }) => [
      [
        ofPeakToPeak(height),
        'load-assumed',
        'That is for 50 ohms exactly. This load was measured: use what it is.',
      ],
      [ofPeak(height, load), 'vpp-as-vp'],
      [ofRms(height, load), 'vpp-as-rms'],
      [2 * ofPeakToPeak(height, load), 'vp-as-rms'],
    ],
    worked: ({ height, load }) => [
      `V²pp/(8R), with the resistance that was measured: (${given(height, 'Vpp')})²/(8 × ${given(load, 'ohm')}) =`,
    ],
    right: 'V²pp over eight times the resistance that is really there.',
  }),
  numeric('volts', {
    id: 'power-of-rms',
    lesson,
    syllabus: ['1.9'],
    difficulty: 1,
    given: { rms: steps(1, 15, 0.5) },
    stem: ({ rms }) =>
      `A true-RMS radio-frequency voltmeter shows ${given(rms, 'Vrms')} across ${given(50, 'ohm')}. How much power is that?`,
    answer: ({ rms }) => ofRms(rms),
    write: power(),
    wrong: ({ rms }) => [
      [ofRms(rms) / 2, 'rms-as-vp'],
      [rms / 50, 'not-squared'],
      [2 * ofRms(rms), 'root-two-wrong-way', 'RMS is squared as it is. There is no peak to be found first.'],
    ],
    worked: ({ rms }) => [
      `RMS volts squared over the resistance: (${given(rms, 'Vrms')})²/${given(50, 'ohm')} =`,
    ],
    right: 'RMS volts squared over the resistance, nothing else.',
  }),
  numeric('volts', {
    id: 'rms-expected',
    lesson,
    syllabus: ['1.9', '8.1'],
    difficulty: 2,
    given: { watts: oneOf(0.1, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 15) },
    stem: ({ watts }) =>
      `You expect ${givenPower(watts)} into ${given(50, 'ohm')} and want to choose a meter’s range. What RMS voltage will there be?`,
    answer: ({ watts }) => rmsOf(watts),
    write: digits('Vrms', 3),
    typed: { quantity: 'voltsRms', unit: 'Vrms', tolerance: { of: 'share', size: 0.01 } },
    wrong: ({ watts }) => [
      [
        peakOfPower({ power: powerW(watts), resistance: FIFTY }),
        'root-two-wrong-way',
        'That is the peak. RMS is the root of power times resistance, no more.',
      ],
      [watts * 50, 'root-left-out'],
      [
        peakToPeakOfPower({ power: powerW(watts), resistance: FIFTY }),
        'vpp-as-rms',
        'That is from trough to crest. Asked is the RMS voltage.',
      ],
    ],
    worked: ({ watts }) => [
      `The root of power times resistance: √(${givenPower(watts)} × ${given(50, 'ohm')}) =`,
    ],
    right: 'The root of power times resistance.',
  }),
  numeric('volts', {
    id: 'peak-to-peak-expected',
    lesson: scope,
    syllabus: ['1.6', '1.9', '8.2'],
    difficulty: 2,
    given: {
      watts: oneOf(0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.5, 2, 2.5, 3, 4, 5),
    },
    stem: ({ watts }) =>
      `How high will ${givenPower(watts)} stand on the screen, from trough to crest, across ${given(50, 'ohm')}?`,
    answer: ({ watts }) => peakToPeakOfPower({ power: powerW(watts), resistance: FIFTY }),
    write: digits('Vpp', 3),
    wrong: ({ watts }) => [
      [
        peakOfPower({ power: powerW(watts), resistance: FIFTY }),
        'vp-as-vpp',
        'That is the peak. The trace reaches as far below the middle as above it.',
      ],
      [
        rmsOf(watts),
        'vpp-as-rms',
        'That is the RMS voltage. The screen shows the whole height, 2√2 times as much.',
      ],
      [2 * rmsOf(watts), 'rms-as-vp', 'That doubles the RMS voltage. First it has to become the peak.'],
    ],
    worked: ({ watts }) => [
      `The RMS voltage is √(${givenPower(watts)} × ${given(50, 'ohm')}) = ${digits('Vrms', 4)(rmsOf(watts))}.`,
      `The height is 2√2 times that: 2√2 × ${digits('Vrms', 4)(rmsOf(watts))} =`,
    ],
    right: 'The root of 8 P R, twenty volts for one watt in fifty ohms.',
  }),
  numeric('volts', {
    id: 'load-of-75',
    lesson,
    syllabus: ['1.9'],
    difficulty: 3,
    given: { load: oneOf(25, 30, 60, 68, 75, 82, 100, 120) },
    stem: ({ load }) =>
      `Somebody works out the power from the volts as if the load were ${given(50, 'ohm')}. It is ${given(load, 'ohm')}. By how much is the figure off, in decibels?`,
    answer: ({ load }) => 10 * Math.log10(load / 50),
    write: change('dB', 2),
    wrong: ({ load }) => [
      [
        10 * Math.log10(50 / load),
        'load-inverted',
        'The sign is turned round: think whether the real load takes more or less than a load of 50 ohms at these volts.',
      ],
      [20 * Math.log10(load / 50), 'load-squared'],
      [
        (load - 50) / 10,
        'difference-as-db',
        'Decibels come from the ratio of the resistances, not from their difference.',
      ],
    ],
    worked: ({ load }) => [
      `The figure is V²/50, the truth V²/${given(load)}: their ratio is ${given(load, 'ohm')}/${given(50, 'ohm')} = ${exactly(load / 50)}.`,
      `10 lg ${exactly(load / 50)} =`,
    ],
    right: 'The resistance enters once, so it is ten times the logarithm of the ratio.',
  }),
  numeric('volts', {
    id: 'load-true-power',
    lesson,
    syllabus: ['1.9'],
    difficulty: 2,
    given: { load: oneOf(25, 40, 60, 75, 100), shown: oneOf(1, 1.5, 2, 2.4, 3, 4, 5, 6, 10) },
    stem: ({ load, shown }) =>
      `From the volts, taken across ${given(50, 'ohm')}, somebody finds ${given(shown, 'W')}. The load turns out to be ${given(load, 'ohm')}. How much power does it take?`,
    answer: ({ load, shown }) => (shown * 50) / load,
    write: digits('W', 3),
    wrong: ({ load, shown }) => [
      [(shown * load) / 50, 'load-inverted'],
      [
        shown,
        'load-assumed',
        'The volts were measured; the resistance was assumed. With another resistance it is another power.',
      ],
      [shown * (50 / load) ** 2, 'load-squared'],
    ],
    worked: ({ load, shown }) => [
      `The volts stay; the power goes as one over the resistance: ${given(shown, 'W')} × ${given(50, 'ohm')}/${given(load, 'ohm')} =`,
    ],
    right: 'Same volts, other resistance: in inverse proportion.',
  }),
  numeric('volts', {
    id: 'percent-of-volts',
    lesson: scope,
    difficulty: 2,
    given: { percent: oneOf(1, 1.5, 2, 2.5, 3, 4, 5, 6, 8) },
    stem: ({ percent }) =>
      `An oscilloscope shows the volts ${given(percent, 'percent')} too high. By how much is the power worked out from them too high?`,
    answer: ({ percent }) => 100 * ((1 + percent / 100) ** 2 - 1),
    write: fixed('percent', 1),
    wrong: ({ percent }) => [
      [percent, 'percent-not-doubled'],
      [percent * percent, 'percent-squared'],
      [percent / 2, 'percent-halved'],
    ],
    suits: ({ percent }) => percent !== 2,
    worked: ({ percent }) => [
      `The volts shown are 1 + ${given(percent, 'percent')} = ${exactly(1 + percent / 100)} times the true ones, the power ${exactly(1 + percent / 100)}² = ${exactly((1 + percent / 100) ** 2)} times.`,
      `Too high by ${exactly((1 + percent / 100) ** 2)} − 1 =`,
    ],
    right: 'About twice the percentage, since the volts are squared.',
  }),
  numeric('volts', {
    id: 'percent-of-volts-in-db',
    lesson: scope,
    difficulty: 2,
    given: { percent: oneOf(2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 9, 10, 12, 15) },
    stem: ({ percent }) =>
      `An oscilloscope shows the volts ${given(percent, 'percent')} too high. By how many decibels is the level worked out from them too high?`,
    answer: ({ percent }) => percentOfVoltsToDb(percent),
    write: fixed('dB', 2),
    typed: { quantity: 'halfWidthDb', unit: 'dB', tolerance: { of: 'value', size: 0.011 } },
    wrong: ({ percent }) => [
      [percentOfVoltsToDb(percent) / 2, 'ten-for-twenty'],
      [
        percentOfVoltsToDb(percent) * 2,
        'percent-not-doubled',
        'That counts the square twice: 20 lg has it already.',
      ],
      [percent / 10, 'db-as-percent', 'Ten per cent of volts are not one decibel.'],
    ],
    worked: ({ percent }) => [
      `Volts take twenty times the logarithm: 20 lg (1 + ${given(percent, 'percent')}) =`,
    ],
    right: 'Volts: twenty times the logarithm.',
  }),
  numeric('volts', {
    id: 'volts-down-with-db',
    lesson: 'decibels/a-decibel-is-not-a-percentage',
    difficulty: 2,
    given: { drop: oneOf(0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.4, 1.5, 1.8, 2, 2.5) },
    stem: ({ drop }) =>
      `The level falls by ${given(drop, 'dB')}. By what share do the volts across the load fall?`,
    answer: ({ drop }) => -dbToPercentOfVolts(gainDb(-drop)),
    write: fixed('percent', 1),
    wrong: ({ drop }) => [
      [100 * (1 - 10 ** (-drop / 10)), 'power-percent'],
      [dbToPercentOfVolts(gainDb(drop)), 'gain-for-loss'],
      [10 * drop, 'db-as-percent'],
    ],
    worked: ({ drop }) => [
      `Ten to the power of −${given(drop)}/20 is ${sig(10 ** (-drop / 20), 4)}: that share is left.`,
      `The rest has gone: 1 − ${sig(10 ** (-drop / 20), 4)} =`,
    ],
    right: 'Twenty in the exponent for volts.',
  }),
  numeric('volts', {
    id: 'level-to-volts',
    lesson,
    syllabus: ['1.9'],
    difficulty: 3,
    given: { level: steps(-9, 20, 1) },
    stem: ({ level }) =>
      `A signal generator is set to ${given(level, 'dBm')} into ${given(50, 'ohm')}. What RMS voltage stands across the load?`,
    answer: ({ level }) => levelToVolts({ level: levelDbm(level), resistance: FIFTY }),
    write: digits('Vrms', 3),
    wrong: ({ level }) => [
      [
        levelToVolts({ level: levelDbm(level), resistance: FIFTY }) * Math.SQRT2,
        'root-two-wrong-way',
        'That is the peak: RMS squared over R gives the power as it is.',
      ],
      [
        2 * levelToVolts({ level: levelDbm(level), resistance: FIFTY }),
        'termination-forgotten',
        'That stands at the socket with nothing connected. With fifty ohms across it, half of that is left.',
      ],
      [50 * 10 ** ((level - 30) / 10), 'root-left-out'],
    ],
    suits: ({ level }) => Math.abs(level - 13) > 2 && Math.abs(level - 19) > 1 && Math.abs(level - 16) > 1,
    worked: ({ level }) => [
      `${given(level, 'dBm')} is ${power(4)(10 ** ((level - 30) / 10))}.`,
      `The root of power times resistance: √(${power(4)(10 ** ((level - 30) / 10))} × ${given(50, 'ohm')}) =`,
    ],
    right: 'To watts first, then the root of power times resistance.',
  }),
  numeric('volts', {
    id: 'volts-to-level',
    lesson,
    syllabus: ['1.6', '1.9'],
    difficulty: 3,
    given: { height: steps(1, 30, 0.5) },
    suits: ({ height }) => Math.abs(height - 2) > 0.6,
    stem: ({ height }) =>
      `A sine of ${given(height, 'Vpp')} stands across ${given(50, 'ohm')}. What level is that?`,
    answer: ({ height }) => powerToLevel(powerW(ofPeakToPeak(height))),
    write: fixed('dBm', 1),
    typed: { quantity: 'level', unit: 'dBm', tolerance: { of: 'value', size: 0.1 } },
    wrong: ({ height }) => [
      [powerToLevel(powerW(ofPeak(height))), 'vpp-as-vp'],
      [powerToLevel(powerW(ofRms(height))), 'vpp-as-rms'],
      [powerToLevel(powerW(2 * ofPeakToPeak(height))), 'vp-as-rms'],
      [powerToLevel(powerW(ofPeakToPeak(height))) - 30, 'milliwatts-for-watts'],
    ],
    worked: ({ height }) => [
      `V²pp/(8R): (${given(height, 'Vpp')})²/(8 × ${given(50, 'ohm')}) = ${power(4)(ofPeakToPeak(height))}.`,
      `As a level ${power(4)(ofPeakToPeak(height))} is`,
    ],
    right: 'To watts, then ten times the logarithm of the milliwatts.',
  }),
  numeric('volts', {
    id: 'average-meter-on-square',
    lesson: 'measuring/the-meter-joins-the-circuit',
    syllabus: ['8.1'],
    difficulty: 3,
    given: { volts: steps(1, 12, 0.5) },
    stem: ({ volts }) =>
      `A multimeter responds to the rectified mean, and its scale is made for sines. What does it show on a square wave that swings from −${given(volts, 'V')} to +${given(volts, 'V')}?`,
    answer: ({ volts }) => volts * averageMeterRatio('square'),
    write: digits('V', 3),
    wrong: ({ volts }) => [
      [
        volts,
        'average-meter',
        'That is the true RMS. The meter takes the mean, multiplies it by what a sine would need, and shows more.',
      ],
      [
        volts / Math.SQRT2,
        'wave-not-sine',
        'Dividing the peak by √2 is for sines. A square wave is at its peak all the time.',
      ],
      [
        (volts * 2) / Math.PI,
        'wave-not-sine',
        'That is the rectified mean of a sine of this height. A square wave’s is its full height.',
      ],
    ],
    worked: ({ volts }) => [
      `The rectified mean of this wave is ${given(volts, 'V')}.`,
      `The scale multiplies it by π/(2√2), which turns the mean of a sine into its RMS: ${given(volts, 'V')} × π/(2√2) =`,
    ],
    right: 'Eleven per cent too much: the scale believes that the wave is a sine.',
  }),
];
