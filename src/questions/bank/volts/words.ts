import { concept } from '../define.ts';
import type { BankQuestion } from '../types.ts';

const lesson = 'decibels/volts-and-watts';

/** Volts and watts in words. */
export const VOLT_WORDS: readonly BankQuestion[] = [
  concept('volts', {
    id: 'what-is-rms',
    lesson,
    syllabus: ['1.6'],
    difficulty: 1,
    stem: 'What does the RMS value of an alternating voltage say?',
    answer: [
      'which direct voltage would heat a resistor as much',
      'And that is why its square over R is the power.',
    ],
    wrong: [
      [
        'which voltage the wave has on average over a cycle',
        'average-for-rms',
        'Over a whole cycle the mean of a sine is nought. RMS comes from the mean of its square.',
      ],
      [
        'which voltage the wave exceeds for half of the time',
        'average-for-rms',
        'That would be a median. RMS comes from the mean of the square.',
      ],
      [
        'which voltage the wave reaches at its crest, halved',
        'half-only',
        'For a sine RMS is the crest divided by √2, not by two.',
      ],
    ],
    worked:
      'Root of the mean of the square: the direct voltage that brings the same power into the same resistance.',
  }),
  concept('volts', {
    id: 'rms-power',
    lesson,
    syllabus: ['1.9'],
    difficulty: 2,
    stem: 'A data sheet speaks of “RMS watts”. What can be meant?',
    answer: ['mean power, worked out from RMS volts', 'RMS belongs to the volts. The power is a mean.'],
    wrong: [
      [
        'the root of the mean square of the power',
        'average-for-rms',
        'Nobody uses that quantity: it heats nothing.',
      ],
      [
        'the peak power divided by the root of two',
        'vp-as-rms',
        'Between the largest instantaneous power of a sine and its mean there is a factor of two, and no root.',
      ],
      [
        'peak envelope power during the loudest word',
        'mean-is-pep',
        'That is peak envelope power, which has a name of its own.',
      ],
    ],
    worked: 'RMS volts squared over the resistance is the mean power. “RMS power” is no quantity of its own.',
  }),
  concept('volts', {
    id: 'twice-the-volts-power',
    lesson,
    syllabus: ['1.9'],
    difficulty: 1,
    stem: 'The voltage across a load is doubled. What becomes of its power?',
    answer: ['it is four times as large', 'The volts are squared.'],
    wrong: [
      ['it is twice as large', 'not-squared'],
      [
        'it is eight times as large',
        'vpp-as-rms',
        'Eight is what separates peak to peak from RMS in power. Twice, squared, is four.',
      ],
      [
        'it stays, and the current halves',
        'load-inverted',
        'The load stays: with the volts the current doubles too.',
      ],
    ],
    worked: 'The current doubles with the voltage, and power is their product: four times, or six decibels.',
  }),
  concept('volts', {
    id: 'not-a-sine',
    lesson: 'measuring/the-meter-joins-the-circuit',
    syllabus: ['1.7', '8.1'],
    difficulty: 2,
    stem: 'The trace across the load is plainly no sine. What does V²pp/(8R) give then?',
    answer: ['a number that is not the power', 'The eight is made for sines.'],
    wrong: [
      [
        'the power of the whole wave, as for a sine',
        'wave-not-sine',
        'The eight is the square of 2√2, which holds between height and RMS of a sine alone.',
      ],
      [
        'the power of the fundamental wave alone',
        'detector-on-harmonics',
        'It would be so only by accident: harmonics bend the crests up or down.',
      ],
      [
        'the largest power that the wave may have',
        'detector-on-harmonics',
        'A square wave of the same height brings twice as much.',
      ],
    ],
    worked:
      'Height and RMS stand in the ratio 2√2 for sines only. Filter the harmonics, or measure with something that feels the heat.',
  }),
  concept('volts', {
    id: 'halve-before-squaring',
    lesson,
    syllabus: ['1.9'],
    difficulty: 1,
    stem: 'Why must the height from trough to crest be halved before it is squared?',
    answer: [
      'the power goes with volts from the middle, squared',
      'Forgotten, the power is four times too large.',
    ],
    wrong: [
      [
        'the two halves of a wave cancel in the load',
        'average-for-rms',
        'They do not: both halves heat it, whichever way the current flows.',
      ],
      ['only the upper half of a wave brings power', 'average-for-rms', 'Both halves heat the load.'],
      [
        'the oscilloscope shows twice the real voltage',
        'vpp-as-vp',
        'It shows it rightly: the crest stands one peak above the middle, the trough one below.',
      ],
    ],
    worked:
      'Peak counts from the middle line. Twice the peak, squared, is four times its square: six decibels too much.',
  }),
];
