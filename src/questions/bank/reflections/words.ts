import { concept } from '../define.ts';
import type { BankQuestion } from '../types.ts';

const lesson = 'measuring/what-comes-back';
const pads = 'measuring/pads-into-a-meter';

/** Reflections in words. */
export const REFLECTION_WORDS: readonly BankQuestion[] = [
  concept('reflections', {
    id: 'is-it-lost',
    lesson,
    syllabus: ['6.3'],
    difficulty: 2,
    stem: 'A short line without loss, and a load that reflects a little. What becomes of the reflected power?',
    answer: [
      'it comes back to the source, and much of it may go forward again',
      'Lost is only what turns into heat.',
    ],
    wrong: [
      ['it is lost, so the radiated power is that much smaller', 'reflected-is-lost'],
      [
        'it is turned into heat in the line, which has to bear it',
        'reflected-is-lost',
        'A line without loss makes no heat, whatever runs along it.',
      ],
      [
        'it is radiated by the outer conductor of the line',
        'reflected-is-lost',
        'That is another matter, a current on the outside. Reflection does not bring it about.',
      ],
    ],
    worked:
      'Forward less reflected is what the load takes. What comes back meets the source, which may send a part of it forward again; only heat is a loss.',
  }),
  concept('reflections', {
    id: 'good-match-good-reading',
    lesson,
    syllabus: ['8.1'],
    difficulty: 2,
    stem: 'The meter shows a standing-wave ratio of one. What follows for the power that it shows?',
    answer: ['nothing about its accuracy: a match is no calibration', 'The scale may be off all the same.'],
    wrong: [
      ['it is right, since nothing comes back to disturb it', 'match-is-resistance'],
      [
        'it is right to within the class of the meter’s needle',
        'match-is-resistance',
        'What a class says has to be shown by a comparison, and is a share of full scale at that.',
      ],
      [
        'it is too high, as the reflected part is counted twice',
        'sum-for-net',
        'Nothing comes back here, so there is nothing to count.',
      ],
    ],
    worked:
      'A match says that little is reflected. Whether the forward scale is right, only a comparison tells.',
  }),
  concept('reflections', {
    id: 'mismatch-as-band',
    lesson: pads,
    difficulty: 3,
    stem: 'The reflections of a transmitter and of a meter are known in size, not in phase. What do you do about the mismatch?',
    answer: ['take it into the budget as limits, divided by √2', 'It stays near its ends most of the time.'],
    wrong: [
      ['correct the reading by the larger of the two limits', 'mismatch-known'],
      ['take it into the budget as limits, divided by √3', 'root-three-for-two'],
      [
        'leave it out, since on average it comes to nothing',
        'mismatch-known',
        'On average over all phases. Your set-up has one of them, and it stays.',
      ],
    ],
    worked:
      'A wave of unknown phase gives a U-shaped distribution between its limits: standard uncertainty a/√2.',
  }),
  concept('reflections', {
    id: 'pad-improves-match',
    lesson: pads,
    difficulty: 2,
    stem: 'Why does a pad in front of a meter make the mismatch smaller?',
    answer: [
      'what is reflected has to go through it twice',
      'Twice its decibels are added to the return loss.',
    ],
    wrong: [
      [
        'it makes the power smaller, and so its reflections',
        'pad-cures-all',
        'The share that is reflected counts, not its watts.',
      ],
      [
        'it turns the phase until the reflections cancel',
        'mismatch-known',
        'It turns no phase on purpose; it makes the waves smaller.',
      ],
      [
        'it is exactly fifty ohms, whatever is behind it',
        'pad-cures-all',
        'Nearly. It has reflections of its own, and they remain.',
      ],
    ],
    worked:
      'The wave passes the pad on its way there and back: the return loss of what lies behind rises by twice the attenuation. The pad’s own reflections stay.',
  }),
  concept('reflections', {
    id: 'what-tuner-does',
    lesson,
    syllabus: ['6.3'],
    difficulty: 2,
    stem: 'A tuner beside the transmitter is set so that the meter before it shows no reflection. What has changed on the cable to the antenna?',
    answer: [
      'its standing-wave ratio is still what it was',
      'The tuner has matched the transmitter, not the antenna.',
    ],
    wrong: [
      ['it is matched now, and has no more standing waves', 'match-everywhere'],
      [
        'its loss is that of a cable without standing waves',
        'reflected-is-lost',
        'The waves run to and fro on it as before, and are attenuated each time.',
      ],
      [
        'it carries only the power that the antenna takes',
        'forward-is-net',
        'It carries more forward than that, and some back.',
      ],
    ],
    worked:
      'A match holds at one place, towards one side. Beyond the tuner the antenna still decides what comes back.',
  }),
];
