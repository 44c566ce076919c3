import { concept } from '../define.ts';
import type { BankQuestion } from '../types.ts';

const lesson = 'decibels/which-power';

/** Kinds of power in words. */
export const POWER_WORDS: readonly BankQuestion[] = [
  concept('powers', {
    id: 'what-is-pep',
    lesson,
    syllabus: ['1.9'],
    difficulty: 1,
    stem: 'What is the peak envelope power?',
    answer: [
      'the mean over one radio-frequency cycle at the crest of the envelope',
      'A mean too, but over one cycle only, where the envelope is highest.',
    ],
    wrong: [
      ['the largest value that the power reaches at any instant of a cycle', 'pep-of-volts-peak'],
      ['the mean over the whole message, with the pauses between words', 'mean-is-pep'],
      [
        'the power of the highest tone in the speech that modulates it',
        'mean-is-pep',
        'The tones of the speech shape the envelope; the power asked for is where it is highest.',
      ],
    ],
    worked:
      'The ITU Radio Regulations define it so (No. 1.157): the average power during one radio-frequency cycle at the crest of the modulation envelope.',
  }),
  concept('powers', {
    id: 'name-the-measurand',
    lesson,
    difficulty: 2,
    stem: 'Which of these says most clearly what is to be measured?',
    answer: [
      'mean power into fifty ohms at the socket, key down, full supply',
      'Kind of power, place, load, and state: another person measures the same thing.',
    ],
    wrong: [
      ['the accurate output power of the transmitter, in watts and in dBm', 'one-power-only'],
      [
        'the maximum RMS power that the final stage can really produce',
        'one-power-only',
        'At which socket, into what, at which supply? And RMS belongs to volts.',
      ],
      [
        'the power on the data sheet, as the manufacturer has meant it',
        'one-power-only',
        'That only moves the question to somebody else.',
      ],
    ],
    worked: 'A measurand is named with its conditions. “The power” leaves open which, where, and when.',
  }),
  concept('powers', {
    id: 'which-meter-shows-pep',
    lesson,
    syllabus: ['8.1', '8.2'],
    difficulty: 2,
    stem: 'Somebody speaks into a single-sideband transmitter. Which instrument can show its peak envelope power?',
    answer: ['an oscilloscope across the load', 'It shows the envelope, and with it its crest.'],
    wrong: [
      ['a thermal power meter', 'mean-is-pep', 'It follows the heat, which is the mean.'],
      [
        'a needle that follows the average',
        'mean-is-pep',
        'Speech is over before such a needle has moved; it settles somewhere near the mean.',
      ],
      ['a multimeter set to direct current', 'another-question', 'It sees no radio frequency at all.'],
    ],
    worked: 'Something has to follow the envelope: an oscilloscope, or a detector that holds the peak.',
  }),
  concept('powers', {
    id: 'antenna-gain',
    lesson: 'decibels/down-the-line',
    syllabus: ['6.2'],
    difficulty: 1,
    stem: 'Where does the gain of an antenna come from?',
    answer: ['from the directions into which it radiates less', 'It bundles; it makes nothing.'],
    wrong: [
      [
        'from the resonance, which stores up power',
        'gain-makes-power',
        'What is stored comes and goes. On average an antenna radiates no more than it gets.',
      ],
      [
        'from the feeder, which is matched to it',
        'gain-makes-power',
        'A match lets the power in. Where it goes to is the antenna’s doing.',
      ],
      [
        'from the ground, which adds power of its own',
        'gain-makes-power',
        'The ground may reflect, and so bundle; it has no power to add.',
      ],
    ],
    worked:
      'An equivalent radiated power is what an isotropic antenna (EIRP) or a half-wave dipole (ERP) would need for the same field in the best direction. No power has been made.',
  }),
  concept('powers', {
    id: 'efficiency-of-what',
    lesson,
    syllabus: ['1.9', '5.4'],
    difficulty: 3,
    stem: 'Somebody divides the peak envelope power of a speech transmitter by the mean power that it takes from its supply. What does that give?',
    answer: [
      'no efficiency: the two are not means over the same time',
      'A number above one is possible that way.',
    ],
    wrong: [
      [
        'the efficiency at the loudest place of the speech',
        'efficiency-inverted',
        'For that the supply would have to be read at that same place.',
      ],
      [
        'the mean efficiency, since the peaks average out',
        'mean-is-pep',
        'The numerator is a peak; nothing has been averaged in it.',
      ],
      [
        'a lower limit for the efficiency of the last stage',
        'efficiency-inverted',
        'It comes out too high, even above one: no lower limit.',
      ],
    ],
    worked: 'Efficiency is output over input, both as means over the same time.',
  }),
];
