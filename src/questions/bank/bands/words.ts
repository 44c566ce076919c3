import { concept } from '../define.ts';
import type { BankQuestion } from '../types.ts';

const stated = 'stacking/what-a-tolerance-says';
const angles = 'stacking/at-right-angles';

/** Tolerances and bands in words. */
export const BAND_WORDS: readonly BankQuestion[] = [
  concept('bands', {
    id: 'tolerance-error-uncertainty',
    lesson: stated,
    difficulty: 2,
    stem: 'A pad is sold as twenty decibels, plus or minus a half. What is that “plus or minus a half”?',
    answer: ['a tolerance of the pad’s attenuation', 'What a property of a thing may be.'],
    wrong: [
      [
        'the error of the pad’s attenuation',
        'tolerance-is-uncertainty',
        'An error is one difference, with a sign, and nobody has measured it here.',
      ],
      ['the accuracy of the pad’s attenuation', 'accuracy-is-number'],
      [
        'the standard uncertainty of the pad',
        'limit-as-u',
        'It becomes one when divided by √3, since these are limits.',
      ],
    ],
    worked:
      'A tolerance says within which limits a property of a thing is allowed to lie. From it you may work out an uncertainty.',
  }),
  concept('bands', {
    id: 'why-root-three',
    lesson: stated,
    difficulty: 2,
    stem: 'Why is a limit of which nothing else is known divided by √3?',
    answer: [
      'that is the standard deviation of a flat distribution',
      'Flat between the limits: half-width over √3.',
    ],
    wrong: [
      [
        'a limit is meant to be three standard deviations wide',
        'normal-always',
        'Then it would be divided by three, and the data sheet would have to say so.',
      ],
      [
        'three readings are taken to be usual at the bench',
        'another-question',
        'The readings have nothing to do with it: the √3 is the shape of the distribution.',
      ],
      [
        'it makes the result come out with about k = 2',
        'k-twice',
        'k is chosen at the end, for the whole sum.',
      ],
    ],
    worked: 'The mean square of something that lies anywhere between −a and a with equal chance is a²/3.',
  }),
  concept('bands', {
    id: 'worst-or-root',
    lesson: angles,
    difficulty: 2,
    stem: 'Two members argue: one adds the limits of the pads, the other takes the root of the sum of the squares. Who is right?',
    answer: [
      'both: one guarantees, the other says what to expect',
      'Two questions, two answers. Give both, and say which.',
    ],
    wrong: [
      [
        'the first: anything else makes the band look too good',
        'worst-for-rss',
        'For independent parts it is very unlikely that all are at their limits, on the same side.',
      ],
      [
        'the second: limits are never reached at the same time',
        'rss-for-worst',
        'Never is a strong word. For a guarantee it can happen.',
      ],
      [
        'neither: the mean of the two is the usual compromise',
        'uncertainties-averaged',
        'It would answer no question at all.',
      ],
    ],
    worked:
      'The sum of the limits is what can be guaranteed. The root of the sum of the squares of the standard uncertainties, times k, is what can be expected with a stated probability.',
  }),
  concept('bands', {
    id: 'what-is-k',
    lesson: 'stacking/writing-it-down',
    difficulty: 1,
    stem: 'A result ends in “U = …, k = 2”. What does the k say?',
    answer: ['U is twice the standard uncertainty', 'For a bell that holds about ninety-five in a hundred.'],
    wrong: [
      [
        'it was measured twice',
        'another-question',
        'The number of readings is another thing. k multiplies the standard uncertainty.',
      ],
      [
        'the value is right in two cases of three',
        'k-forgotten',
        'That is about what one standard uncertainty holds.',
      ],
      ['U has to be doubled before use', 'k-twice'],
    ],
    worked: 'U = k u. Without its k (or its coverage probability) nobody can use a U.',
  }),
  concept('bands', {
    id: 'does-sign-belong',
    lesson: stated,
    difficulty: 1,
    stem: 'Which of these can be negative?',
    answer: ['a measurement error', 'Measured less reference: it has a sign.'],
    wrong: [
      ['an uncertainty', 'tolerance-is-uncertainty', 'It is a width, and never below nought.'],
      ['a coverage factor', 'tolerance-is-uncertainty', 'It multiplies a width, and is positive.'],
      ['a standard deviation', 'tolerance-is-uncertainty', 'It is the root of a mean square.'],
    ],
    worked:
      'An error is a difference and has a sign. Uncertainties, standard deviations and coverage factors are never negative.',
  }),
  concept('bands', {
    id: 'type-a-and-b',
    lesson: stated,
    difficulty: 2,
    stem: 'What tells a Type A evaluation of uncertainty from a Type B?',
    answer: [
      'whether it comes from the scatter of repeated readings',
      'Type A does; everything else is Type B.',
    ],
    wrong: [
      [
        'whether the effect behind it is random or systematic',
        'word-mixed-up',
        'It is about how you came to know, not about what kind of effect it is.',
      ],
      [
        'whether the instrument was calibrated or was not',
        'calibrated-is-right',
        'A certificate is one of the sources of a Type B evaluation; that is not the difference.',
      ],
      [
        'whether it leads the budget or is of little account',
        'wrong-target',
        'Both kinds may lead. Once in the budget they are treated alike.',
      ],
    ],
    worked:
      'Type A: statistics of repeated readings. Type B: data sheets, certificates, experience. In the budget both are standard uncertainties.',
  }),
  concept('bands', {
    id: 'same-meter-twice',
    lesson: 'stacking/shared-causes',
    difficulty: 3,
    stem: 'The attenuation of a pad is the difference of two levels, both read with one meter whose scale is off by an unknown but constant amount. What becomes of that amount?',
    answer: ['it drops out of the difference', 'The same error, once plus and once minus.'],
    wrong: [
      [
        'it counts twice, once for each level',
        'independent-as-correlated',
        'It would in a sum. In a difference the same error cancels.',
      ],
      [
        'it counts by the root of two',
        'correlated-as-independent',
        'That is for two errors that know nothing of each other. This is one and the same.',
      ],
      [
        'it is halved, as in a mean of two',
        'shared-cancels-always',
        'In a mean it would stay whole. In a difference it is gone.',
      ],
    ],
    worked:
      'A shared error cancels in a difference of levels. What does not cancel is what changed between the two readings: scatter, drift, linearity, reconnection.',
  }),
  concept('bands', {
    id: 'more-trials',
    lesson: 'stacking/a-million-tries',
    difficulty: 2,
    stem: 'A budget is simulated, and then once more with a hundred times as many trials. What does that make better?',
    answer: [
      'how well the answer of the simulation repeats',
      'Its last digits become steady, by a factor of ten.',
    ],
    wrong: [
      [
        'the uncertainty of the result, by a factor of ten',
        'root-n-for-all',
        'The pads are as uncertain as before. Only the picture of it becomes sharper.',
      ],
      [
        'the uncertainty of the result, by a hundred',
        'n-for-root-n',
        'Trials are no readings: nothing new is learnt about the transmitter.',
      ],
      [
        'the limits that went into the budget',
        'tolerance-is-uncertainty',
        'They were stated, and stay as stated, true or not.',
      ],
    ],
    worked:
      'Trials replay what is known. More of them give steadier digits, with the root of their number; what is not known stays not known.',
  }),
];
