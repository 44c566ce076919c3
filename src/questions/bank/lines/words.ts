import { concept } from '../define.ts';
import type { BankQuestion } from '../types.ts';

const lesson = 'decibels/down-the-line';
const pads = 'measuring/pads-into-a-meter';

/** Pads and lines in words. */
export const LINE_WORDS: readonly BankQuestion[] = [
  concept('lines', {
    id: 'which-pad-first',
    lesson: pads,
    syllabus: ['1.9'],
    difficulty: 1,
    stem: 'One pad bears ten watts, the other a quarter of a watt. The transmitter gives five watts. Which comes first?',
    answer: ['the large one, next to the transmitter', 'It gets nearly all of the power.'],
    wrong: [
      ['the small one, since it is the more precise', 'pad-order'],
      [
        'either: their decibels add up all the same',
        'pad-order',
        'The decibels do not mind the order. The heat does.',
      ],
      [
        'the small one, as it shields the large one',
        'pad-order',
        'It would have to bear the power itself, and it cannot.',
      ],
    ],
    worked:
      'The sum of the decibels is the same either way; the heat is made mostly in the pad that comes first.',
  }),
  concept('lines', {
    id: 'add-back',
    lesson: pads,
    syllabus: ['1.9'],
    difficulty: 1,
    stem: 'A meter behind a pad shows a level. How do you get the level before the pad?',
    answer: ['add the pad’s decibels to the reading', 'What was taken away is given back.'],
    wrong: [
      [
        'take the pad’s decibels off the reading',
        'sign-of-loss',
        'That goes further down the line. Before the pad there was more.',
      ],
      [
        'multiply the reading by the pad’s decibels',
        'db-as-factor',
        'Levels and decibels are logarithms: they add.',
      ],
      [
        'read on: the meter has allowed for the pad',
        'link-left-out',
        'Only if somebody has told it so. Look, before you count the pad twice or not at all.',
      ],
    ],
    worked: 'Down the line losses are subtracted; from the reading back to the transmitter they are added.',
  }),
  concept('lines', {
    id: 'offset-in-meter',
    lesson: pads,
    difficulty: 2,
    stem: 'A power meter has had the loss of the pads entered as an offset, and shows the result. What do you do with the pads?',
    answer: [
      'nothing more: they are in the reading already',
      'And note that they are, for whoever reads it later.',
    ],
    wrong: [
      ['add them to what is shown, as always', 'link-twice'],
      [
        'take them off, and then add them again',
        'link-twice',
        'That leaves the number where it was, with more chances for a slip.',
      ],
      [
        'leave them out of the list of doubts too',
        'pad-cures-all',
        'Their value is in the reading; what they may be wrong by still belongs in the band.',
      ],
    ],
    worked:
      'An offset is a correction that the meter makes itself. Make it once. Its uncertainty stays with you.',
  }),
  concept('lines', {
    id: 'loss-and-frequency',
    lesson,
    syllabus: ['6.3'],
    difficulty: 1,
    stem: 'Why does the same cable lose more at the higher frequency?',
    answer: [
      'the current keeps to a thinner skin of the conductor',
      'Less copper carries it, so more is lost.',
    ],
    wrong: [
      [
        'the cable holds more wavelengths, each with its own loss',
        'another-question',
        'Wavelengths lose nothing by being many. It is the copper and the insulation that do.',
      ],
      [
        'the speed of the wave in the cable becomes lower',
        'another-question',
        'The speed hardly changes with the frequency.',
      ],
      [
        'the characteristic impedance of the cable falls',
        'another-question',
        'It stays practically the same from the short waves up.',
      ],
    ],
    worked:
      'The skin gets thinner with the root of the frequency, and the insulation adds a part that goes with the frequency itself.',
  }),
  concept('lines', {
    id: 'dc-for-pad',
    lesson: pads,
    difficulty: 2,
    stem: 'A pad has been measured with direct voltage and a good multimeter. Where can that value be relied on?',
    answer: [
      'at the lower frequencies; higher up it is an assumption',
      'At short waves it is good, at a hundred megahertz somebody has to look.',
    ],
    wrong: [
      [
        'at direct voltage alone, and nowhere else',
        'pad-cures-all',
        'Resistors of a small pad change little up to the short waves.',
      ],
      [
        'at every frequency, since resistors have none',
        'probe-as-wire',
        'They have: leads are inductances, and pads have capacitances between their parts.',
      ],
      [
        'up to the highest frequency on its data sheet',
        'tolerance-is-uncertainty',
        'Up to there it keeps the limits of its data sheet. That it keeps this value nobody has measured.',
      ],
    ],
    worked:
      'It ties the pad to the volt, at direct voltage. That it is the same at radio frequency is an assumption: fair at short waves, doubtful at very high frequencies.',
  }),
  concept('lines', {
    id: 'hot-pad',
    lesson: pads,
    difficulty: 2,
    stem: 'While you read, the reading creeps down slowly, and the pad has become too hot to touch. What do you write down?',
    answer: [
      'none of these: let it cool, and key for shorter',
      'A hot pad is another pad, and soon perhaps none.',
    ],
    wrong: [
      [
        'the last reading, since the pad has settled by then',
        'heat-too-early',
        'It has settled at a value that nobody has calibrated, perhaps on its way to failing.',
      ],
      [
        'the mean of the first reading and the last one',
        'drift-ignored',
        'A drift is no scatter: its mean stands for neither the cool pad nor the hot one.',
      ],
      [
        'the first reading, and the pad goes on in use',
        'pad-cannot-fail',
        'A pad that has been too hot may have changed for good: check it before you use it again.',
      ],
    ],
    worked:
      'Key off, let it cool, reckon its heat against its rating, and use a larger pad in front. Then check the hot one by direct voltage.',
  }),
];
