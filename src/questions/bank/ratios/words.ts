import { concept } from '../define.ts';
import type { BankQuestion } from '../types.ts';

const levels = 'decibels/levels-and-gains';
const lesson = 'decibels/ratios-that-add';
const syllabus = ['1.9'];

/** Ratios and levels in words. */
export const RATIO_WORDS: readonly BankQuestion[] = [
  concept('ratios', {
    id: 'what-may-be-added',
    lesson: levels,
    syllabus,
    difficulty: 1,
    stem: 'Which of these sums makes sense as it stands?',
    answer: ['a level in dBm and a gain in dB', 'The result is a level in dBm again.'],
    wrong: [
      ['a level in dBm and another level in dBm', 'levels-added'],
      [
        'a power in watts and a gain in dB',
        'db-as-difference',
        'Watts are multiplied by the factor behind the decibels; nothing is added to them.',
      ],
      [
        'a level in dBm and a power in milliwatts',
        'levels-added',
        'One is a logarithm, the other is not: bring both to milliwatts first.',
      ],
    ],
    worked:
      'A level counts from one milliwatt; gains move it up and down. Level plus gain is a level, level minus level is a gain.',
  }),
  concept('ratios', {
    id: 'zero-dbm',
    lesson: levels,
    syllabus,
    difficulty: 1,
    stem: 'A power meter shows nought dBm. What is at its input?',
    answer: ['one milliwatt', 'Nought decibels above one milliwatt.'],
    wrong: [
      ['no power at all', 'zero-is-nothing'],
      ['one watt', 'milliwatts-for-watts'],
      [
        'too little to be measured',
        'zero-is-nothing',
        'Many meters go far below: they show negative levels there.',
      ],
    ],
    worked: 'dBm counts from one milliwatt: at nought the power is just that.',
  }),
  concept('ratios', {
    id: 'ten-or-twenty',
    lesson,
    syllabus,
    difficulty: 1,
    stem: 'When is it twenty times the logarithm?',
    answer: ['for a ratio of voltages across equal resistances', 'Because power goes as their square.'],
    wrong: [
      [
        'for a ratio of powers above one watt',
        'twenty-for-ten',
        'For powers it is ten times, large or small.',
      ],
      [
        'for any ratio of voltages, whatever they are across',
        'ten-for-twenty',
        'Only across equal resistances: decibels always compare powers.',
      ],
      [
        'for a loss, and ten times for a gain',
        'sign-of-loss',
        'Loss and gain differ by their sign, not by the factor before the logarithm.',
      ],
    ],
    worked:
      'Decibels compare powers: ten times the logarithm. If the resistances are equal, the powers are as the squares of the volts, and the square makes it twenty.',
  }),
  concept('ratios', {
    id: 'db-or-dbm',
    lesson: levels,
    syllabus,
    difficulty: 1,
    stem: 'Which of these sentences is right?',
    answer: ['“The amplifier raises the level by six dB.”', 'A change is a ratio, in dB.'],
    wrong: [
      ['“The amplifier raises the level by six dBm.”', 'dbm-for-ratio'],
      ['“The output of the transmitter is thirty dB.”', 'db-for-level'],
      [
        '“The pad has an attenuation of ten dBm.”',
        'dbm-for-ratio',
        'An attenuation is a ratio of two powers, in dB.',
      ],
    ],
    worked: 'dB compares two powers with each other; dBm compares one with a milliwatt.',
  }),
  concept('ratios', {
    id: 'negative-level',
    lesson: levels,
    syllabus,
    difficulty: 1,
    stem: 'A receiver is given a level with a minus in front of its dBm. What does the minus say?',
    answer: ['the power is less than one milliwatt', 'And never less than nothing.'],
    wrong: [
      ['the power flows out of the receiver', 'negative-power', 'The sign of a level is no direction.'],
      [
        'the signal has been attenuated on its way',
        'sign-of-loss',
        'Perhaps it has. But a weak source gives a negative level without any pad.',
      ],
      [
        'the power is less than the receiver can show',
        'zero-is-nothing',
        'Receivers show far less than a milliwatt. The minus says “less than a milliwatt”, nothing else.',
      ],
    ],
    worked: 'The logarithm of a number below one is negative: less than one milliwatt is a negative level.',
  }),
];
