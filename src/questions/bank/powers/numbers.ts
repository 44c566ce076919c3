import {
  amplitudeModulated,
  antennaGainOver,
  dcPower,
  efficiency,
  eirp,
  erp,
  gainDb,
  levelDbm,
  levelToPower,
  meanOfPeakEnvelope,
  ohms,
  peakEnvelopeOfMean,
  powerOfPeakToPeak,
  powerOfVolts,
  powerToLevel,
  powerW,
  voltsPeakToPeak,
  voltsRms,
} from '#compute';
import { numeric } from '../define.ts';
import { oneOf, steps } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { asPrinted, change, digits, exactly, fixed, given, givenPower, power, sig } from '../write.ts';

const lesson = 'decibels/which-power';
const line = 'decibels/down-the-line';
const ofPeakToPeak = (height: number): number =>
  powerOfPeakToPeak({ peakToPeak: voltsPeakToPeak(height), resistance: ohms(50) });
const ofRms = (volts: number): number => powerOfVolts({ volts: voltsRms(volts), resistance: ohms(50) });
const tones = (pep: number): number =>
  meanOfPeakEnvelope({ peakEnvelope: powerW(pep), envelope: 'twoEqualTones' });
const isotropic = (
  level: number,
  loss: number,
  gain: number,
  over: 'isotropic' | 'halfWaveDipole' = 'isotropic',
): number => eirp({ level: levelDbm(level), feeder: gainDb(-loss), antenna: { gain: gainDb(gain), over } });
const toPower = (dbm: number): number => levelToPower(levelDbm(dbm));
const dbmOf = (watts: number): number => powerToLevel(powerW(watts));
/** Half-wave dipole over isotropic, in dB. */
const DIPOLE: number = antennaGainOver('isotropic', { gain: gainDb(0), over: 'halfWaveDipole' });

/** Kinds of power with drawn numbers. */
export const POWER_NUMBERS: readonly BankQuestion[] = [
  numeric('powers', {
    id: 'pep-of-two-tones',
    lesson,
    syllabus: ['1.9', '8.1'],
    difficulty: 2,
    given: { height: steps(10, 60, 1) },
    stem: ({ height }) =>
      `A single-sideband transmitter is driven with two equal tones into ${given(50, 'ohm')}. At its highest the envelope measures ${given(height, 'Vpp')}. What is the peak envelope power?`,
    answer: ({ height }) => ofPeakToPeak(height),
    write: power(),
    wrong: ({ height }) => [
      [
        tones(ofPeakToPeak(height)),
        'mean-is-pep',
        'That is the mean power of the two tones. At the crest of the envelope it is twice as much.',
      ],
      [2 * ofPeakToPeak(height), 'pep-of-volts-peak'],
      [ofRms(height), 'vpp-as-rms'],
      [4 * ofPeakToPeak(height), 'vpp-as-vp'],
    ],
    worked: ({ height }) => [
      `At the crest of the envelope the radio frequency is a sine of ${given(height, 'Vpp')} for a few cycles, so V²pp/(8R) holds there.`,
      `(${given(height, 'Vpp')})²/(8 × ${given(50, 'ohm')}) =`,
    ],
    right: 'A mean over one radio-frequency cycle, at the crest of the envelope.',
  }),
  numeric('powers', {
    id: 'mean-of-two-tones',
    lesson,
    syllabus: ['1.9', '8.1'],
    difficulty: 2,
    given: { pep: oneOf(0.5, 0.8, 1, 1.6, 2, 2.4, 3, 4, 5, 6, 8, 10, 12, 15, 20, 50, 100) },
    stem: ({ pep }) =>
      `Two equal tones are adjusted to a peak envelope power of ${givenPower(pep)}. What mean power does a thermal meter show?`,
    answer: ({ pep }) => tones(pep),
    write: power(),
    wrong: ({ pep }) => [
      [pep, 'mean-is-pep', 'A thermal meter feels the heat, and that is the mean.'],
      [pep / 4, 'duty-twice', 'A quarter is one tone by itself. There are two of them.'],
      [pep * (2 / Math.PI), 'tones-three-quarters'],
      [pep / Math.SQRT2, 'vp-as-rms', 'The root of two separates volts. Power goes with their square.'],
    ],
    worked: ({ pep }) => [
      'The envelope goes as a sine, and the square of a sine has the mean 1/2.',
      `1/2 × ${givenPower(pep)} =`,
    ],
    right: 'Each tone brings a quarter of the peak envelope power, both together a half.',
  }),
  numeric('powers', {
    id: 'pep-of-steady-carrier',
    lesson,
    syllabus: ['1.9'],
    difficulty: 2,
    given: { watts: oneOf(0.5, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 8, 10, 12, 25, 50) },
    stem: ({ watts }) =>
      `A thermal meter shows ${givenPower(watts)} for a steady, unmodulated carrier. What is its peak envelope power?`,
    answer: ({ watts }) => peakEnvelopeOfMean({ mean: powerW(watts), envelope: 'steadyCarrier' }),
    write: power(),
    wrong: ({ watts }) => [
      [2 * watts, 'pep-of-volts-peak'],
      [Math.SQRT2 * watts, 'carrier-factor'],
      [
        4 * watts,
        'carrier-factor',
        'Four times is a carrier modulated fully in amplitude. This one is not modulated.',
      ],
    ],
    worked: () => [
      'The envelope is flat, so its crest is like every other place, and the power there is what the meter shows:',
    ],
    right: 'A flat envelope: no factor at all.',
  }),
  numeric('powers', {
    id: 'fm-mean',
    lesson,
    syllabus: ['1.9'],
    difficulty: 2,
    given: { watts: oneOf(0.5, 1, 1.5, 2, 2.5, 4, 5, 8, 10, 20, 25), swing: steps(2, 5, 0.5) },
    stem: ({ watts, swing }) =>
      `A frequency-modulated handheld gives ${givenPower(watts)} while nobody speaks. Speech then swings its frequency by ${given(swing, 'kHz')}. What mean power does it give during speech?`,
    answer: ({ watts }) => watts,
    write: power(),
    wrong: ({ watts }) => [
      [
        1.5 * watts,
        'carrier-factor',
        'Half as much again is amplitude modulation to the full. Here only the frequency moves.',
      ],
      [
        watts / 2,
        'mean-is-pep',
        'One half belongs to two tones on single sideband. A frequency-modulated carrier keeps its amplitude.',
      ],
      [
        2 * watts,
        'carrier-factor',
        'Frequency modulation moves the carrier to and fro; it does not make it larger.',
      ],
    ],
    worked: () => ['Frequency modulation leaves the amplitude alone, and with it the power. It is still'],
    right: 'The envelope stays flat, so the power stays.',
  }),
  numeric('powers', {
    id: 'keyed-mean',
    lesson,
    syllabus: ['1.9', '8.1'],
    difficulty: 2,
    given: { watts: oneOf(0.5, 1, 2, 2.5, 3, 4, 5, 6, 8, 10, 20, 25, 50, 100), share: steps(30, 60, 2) },
    stem: ({ watts, share }) =>
      `A transmitter gives ${givenPower(watts)} while its key is down. In this message the key is down for ${given(share, 'percent')} of the time. What mean power does a slow thermal meter show?`,
    answer: ({ watts, share }) => (watts * share) / 100,
    write: power(),
    typed: { quantity: 'power', unit: 'W', tolerance: { of: 'share', size: 0.01 } },
    suits: ({ share }) => share !== 50,
    wrong: ({ watts, share }) => [
      [
        watts,
        'mean-is-pep',
        'That is what it gives while the key is down. The meter averages over the pauses as well.',
      ],
      [watts * (share / 100) ** 2, 'duty-twice'],
      [watts * Math.sqrt(share / 100), 'duty-on-volts'],
      [(watts * 100) / share, 'duty-inverted'],
    ],
    worked: ({ watts, share }) => [`${given(share, 'percent')} of ${givenPower(watts)} is`],
    right: 'Power times the share of the time.',
  }),
  numeric('powers', {
    id: 'pep-from-keyed-mean',
    lesson,
    syllabus: ['1.9', '8.1'],
    difficulty: 2,
    given: { shown: steps(0.4, 4.4, 0.1) },
    stem: ({ shown }) =>
      `A thermal meter settles at ${given(shown, 'W')} while the word PARIS is sent over and over: ${given(22)} of its ${given(50)} units are key-down. What power does the transmitter give while its key is down?`,
    answer: ({ shown }) => peakEnvelopeOfMean({ mean: powerW(shown), envelope: 'parisWord' }),
    write: power(),
    wrong: ({ shown }) => [
      [
        shown * 0.44,
        'duty-inverted',
        'The mean over the pauses is the smaller one. Going back to the key-down power divides.',
      ],
      [2 * shown, 'mean-is-pep', 'Twice would be a string of dits, half on and half off.'],
      [shown / Math.sqrt(0.44), 'duty-on-volts'],
    ],
    worked: ({ shown }) => [`The mean is 22/50 of it, so it is ${given(shown, 'W')} × 50/22 =`],
    right: 'Divided by the share of the time.',
  }),
  numeric('powers', {
    id: 'keyed-in-db',
    lesson,
    syllabus: ['1.9'],
    difficulty: 3,
    given: { share: steps(25, 70, 1) },
    stem: ({ share }) =>
      `The key is down for ${given(share, 'percent')} of the time. How far does the mean power lie from the power while the key is down?`,
    answer: ({ share }) => dbmOf(share / 100) - dbmOf(1),
    write: change('dB', 2),
    wrong: ({ share }) => [
      [20 * Math.log10(share / 100), 'twenty-for-ten'],
      [10 * Math.log10(1 - share / 100), 'lost-for-left'],
      [-10 * Math.log10(share / 100), 'duty-inverted'],
    ],
    suits: ({ share }) => Math.abs(share - 50) > 3,
    worked: ({ share }) => [`Powers take ten times the logarithm: 10 lg ${given(share / 100)} =`],
    right: 'A ratio of powers: ten times its logarithm, below nought.',
  }),
  numeric('powers', {
    id: 'am-peak-envelope',
    lesson,
    syllabus: ['1.9'],
    difficulty: 3,
    given: { carrier: oneOf(0.5, 1, 1.5, 2, 4, 5, 10), depth: oneOf(30, 40, 50, 60, 70, 80, 90) },
    stem: ({ carrier, depth }) =>
      `A carrier of ${givenPower(carrier)} is amplitude-modulated by one tone, ${given(depth, 'percent')} deep. What is the peak envelope power?`,
    answer: ({ carrier, depth }) =>
      amplitudeModulated({ carrier: powerW(carrier), depth: depth / 100 }).peakEnvelope,
    write: power(),
    wrong: ({ carrier, depth }) => [
      [
        carrier * (1 + depth / 100),
        'not-squared',
        'The volts rise by that share. The power rises with their square.',
      ],
      [
        amplitudeModulated({ carrier: powerW(carrier), depth: depth / 100 }).mean,
        'mean-is-pep',
        'That is the mean power, carrier and both sidebands. Asked is the crest of the envelope.',
      ],
      [carrier * 4, 'carrier-factor', 'Four times is for a modulation to the full.'],
    ],
    worked: ({ carrier, depth }) => [
      `At the crest the volts are 1 + ${given(depth, 'percent')} = ${exactly(1 + depth / 100)} times those of the carrier, the power ${exactly(1 + depth / 100)}² = ${exactly((1 + depth / 100) ** 2)} times its own.`,
      `${exactly((1 + depth / 100) ** 2)} × ${givenPower(carrier)} =`,
    ],
    right: 'One plus the depth, squared, times the carrier.',
  }),
  numeric('powers', {
    id: 'efficiency',
    lesson,
    syllabus: ['1.9', '5.4'],
    difficulty: 1,
    given: { volts: oneOf(9, 12, 12.6, 13.8), amperes: steps(0.2, 2, 0.05), share: steps(35, 70, 5) },
    stem: ({ volts, amperes, share }) =>
      `A transmitter takes ${given(amperes, 'A')} at ${given(volts, 'V')} and gives ${digits('W', 3)((volts * amperes * share) / 100)}. What is its efficiency?`,
    answer: ({ volts, amperes, share }) => {
      const input = dcPower({ volts, amperes });
      const output = powerW(asPrinted((volts * amperes * share) / 100));
      return 100 * efficiency({ output, input });
    },
    write: fixed('percent', 0),
    typed: { quantity: 'percent', unit: 'percent', tolerance: { of: 'value', size: 1 } },
    suits: ({ share }) => Math.abs(share - 50) > 4,
    wrong: ({ volts, amperes, share }) => [
      [
        100 - share,
        'heat-is-output',
        'That share stays in the transmitter as heat. Efficiency is the share that comes out.',
      ],
      [10000 / share, 'efficiency-inverted'],
      [
        (volts * amperes * share) / 100,
        'another-question',
        'That is the output in watts. Efficiency is its share of the input.',
      ],
      [(volts * amperes * share) / (volts + amperes), 'volts-plus-amperes'],
    ],
    worked: ({ volts, amperes, share }) => [
      `The supply brings ${given(volts, 'V')} × ${given(amperes, 'A')} = ${digits('W', 4)(volts * amperes)}.`,
      `${digits('W', 3)((volts * amperes * share) / 100)}/${digits('W', 4)(volts * amperes)} =`,
    ],
    right: 'What comes out over what goes in.',
  }),
  numeric('powers', {
    id: 'heat-in-transmitter',
    lesson,
    syllabus: ['1.9', '5.4'],
    difficulty: 2,
    given: { volts: oneOf(9, 12, 12.6, 13.8), amperes: steps(0.3, 2.5, 0.1), share: steps(30, 70, 5) },
    suits: ({ share }) => Math.abs(share - 50) > 4,
    stem: ({ volts, amperes, share }) =>
      `A transmitter takes ${given(amperes, 'A')} at ${given(volts, 'V')} with the key down and gives ${digits('W', 3)((volts * amperes * share) / 100)}. How much heat must its case get rid of?`,
    answer: ({ volts, amperes, share }) =>
      dcPower({ volts, amperes }) - asPrinted((volts * amperes * share) / 100),
    write: digits('W', 3),
    wrong: ({ volts, amperes, share }) => [
      [(volts * amperes * share) / 100, 'heat-is-output'],
      [volts * amperes, 'heat-is-input'],
      [
        volts * amperes * (1 + share / 100),
        'added-for-subtracted',
        'The output leaves by the socket: it is taken off, not added.',
      ],
    ],
    worked: ({ volts, amperes, share }) => [
      `The supply brings ${given(volts, 'V')} × ${given(amperes, 'A')} = ${digits('W', 4)(volts * amperes)}.`,
      `What does not leave as a signal is heat: ${digits('W', 4)(volts * amperes)} − ${digits('W', 3)((volts * amperes * share) / 100)} =`,
    ],
    right: 'Input less output.',
  }),
  numeric('powers', {
    id: 'eirp-level',
    lesson: line,
    syllabus: ['6.2', '6.3'],
    difficulty: 2,
    given: { level: steps(27, 40, 1), loss: steps(0.4, 3, 0.2), gain: steps(3, 12, 1) },
    stem: ({ level, loss, gain }) =>
      `A transmitter gives ${given(level, 'dBm')}, its cable loses ${given(loss, 'dB')}, and the antenna has ${given(gain, 'dBi')}. What is the EIRP?`,
    answer: ({ level, loss, gain }) => isotropic(level, loss, gain),
    write: fixed('dBm', 1),
    typed: { quantity: 'level', unit: 'dBm', tolerance: { of: 'value', size: 0.1 } },
    wrong: ({ level, loss, gain }) => [
      [level + loss + gain, 'sign-of-loss'],
      [
        isotropic(level, loss, gain) + DIPOLE,
        'dipole-wrong-way',
        'The gain is over the isotropic antenna already, and so is an EIRP.',
      ],
      [
        isotropic(level, loss, gain) - DIPOLE,
        'dipole-for-isotropic',
        'That is the ERP. An EIRP is counted from the isotropic antenna, as this gain is.',
      ],
      [level - loss, 'link-left-out', 'The gain of the antenna is missing.'],
    ],
    worked: ({ level, loss, gain }) => [
      `The cable takes off, the antenna adds: ${given(level, 'dBm')} − ${given(loss, 'dB')} + ${given(gain, 'dBi')} =`,
    ],
    right: 'Level, less the cable, plus the gain over isotropic.',
  }),
  numeric('powers', {
    id: 'eirp-with-dipole-gain',
    lesson: line,
    syllabus: ['6.2'],
    difficulty: 3,
    given: { watts: oneOf(0.5, 1, 2, 2.5, 4, 5, 8, 10), gain: steps(1, 9, 1), loss: steps(0.5, 2, 0.1) },
    stem: ({ watts, gain, loss }) =>
      `A power of ${givenPower(watts)} goes into a cable that loses ${given(loss, 'dB')}, and then into an antenna of ${given(gain, 'dBd')}. What is the EIRP?`,
    answer: ({ watts, gain, loss }) => toPower(isotropic(dbmOf(watts), loss, gain, 'halfWaveDipole')),
    write: power(),
    wrong: ({ watts, gain, loss }) => [
      [toPower(isotropic(dbmOf(watts), loss, gain)), 'dipole-for-isotropic'],
      [toPower(isotropic(dbmOf(watts), loss, gain - DIPOLE)), 'dipole-wrong-way'],
      [toPower(isotropic(dbmOf(watts), -loss, gain, 'halfWaveDipole')), 'sign-of-loss'],
    ],
    worked: ({ watts, gain, loss }) => {
      const sum = isotropic(dbmOf(watts), loss, gain, 'halfWaveDipole');
      return [
        `${givenPower(watts)} is ${fixed('dBm', 2)(dbmOf(watts))}. With ${given(2.15, 'dB')} for the dipole ${fixed('dBm', 2)(dbmOf(watts))} − ${given(loss, 'dB')} + ${given(gain, 'dBd')} + ${given(2.15, 'dB')} = ${fixed('dBm', 2)(sum)}.`,
        `As a power ${fixed('dBm', 2)(sum)} is`,
      ];
    },
    right: 'dBd plus 2.15 is dBi.',
  }),
  numeric('powers', {
    id: 'erp-of-eirp',
    lesson: line,
    syllabus: ['6.2'],
    difficulty: 2,
    given: { watts: oneOf(1, 2, 4, 5, 8, 10, 12, 15, 20, 25, 50, 100) },
    stem: ({ watts }) => `A rule is written for ${given(watts, 'W')} EIRP. To how much ERP does that come?`,
    answer: ({ watts }) =>
      toPower(
        erp({
          level: levelDbm(dbmOf(watts)),
          feeder: gainDb(0),
          antenna: { gain: gainDb(0), over: 'isotropic' },
        }),
      ),
    write: digits('W', 3),
    wrong: ({ watts }) => [
      [
        toPower(dbmOf(watts) + DIPOLE),
        'dipole-wrong-way',
        'The dipole has gain of its own, so fewer watts of ERP stand for the same field.',
      ],
      [watts - DIPOLE, 'db-as-difference', 'Decibels are a ratio; they are not taken off watts.'],
      [watts * 10 ** (-DIPOLE / 20), 'twenty-for-ten'],
    ],
    suits: ({ watts }) => watts > 2.5,
    worked: ({ watts }) => [
      `ERP counts from a dipole, ${given(2.15, 'dB')} above an isotropic radiator: ten to the power of −${given(2.15)}/10 is ${sig(10 ** (-DIPOLE / 10), 4)}.`,
      `${sig(10 ** (-DIPOLE / 10), 4)} × ${given(watts, 'W')} =`,
    ],
    right: 'ERP is counted from the dipole: 2.15 decibels less.',
  }),
];
