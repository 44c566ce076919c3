import { concept } from '../define.ts';
import type { BankQuestion } from '../types.ts';

const verdict = 'measuring/inside-outside-cant-tell';
const readings = 'stacking/a-few-readings';

/** Readings and verdicts in words. */
export const VERDICT_WORDS: readonly BankQuestion[] = [
  concept('verdicts', {
    id: 'when-to-agree',
    lesson: verdict,
    difficulty: 1,
    stem: 'When is the decision rule agreed on?',
    answer: ['before the first reading is taken', 'Afterwards everybody knows which rule would suit.'],
    wrong: [
      ['when the reading turns out to lie near a limit', 'rule-afterwards'],
      [
        'after the uncertainty has been worked out',
        'rule-afterwards',
        'Then value and uncertainty are known, and with them which rule gives which verdict.',
      ],
      [
        'never: the limits themselves are the rule',
        'reading-decides',
        'Limits say what is demanded. How the uncertainty is taken into account is the rule.',
      ],
    ],
    worked:
      'A rule that is chosen with the result in sight decides nothing. It is agreed on beforehand, and written down.',
  }),
  concept('verdicts', {
    id: 'cant-tell-means',
    lesson: verdict,
    difficulty: 1,
    stem: 'What does “can’t tell” say?',
    answer: [
      'this measurement shows neither inside nor outside',
      'It is about the measurement, not about the transmitter.',
    ],
    wrong: [
      ['the transmitter is just about good enough', 'straddle-is-inside'],
      ['the transmitter has failed, though not by much', 'straddle-is-outside'],
      [
        'the measurement was carried out wrongly',
        'reading-decides',
        'It may have been done as well as it can be. It is not good enough for this question.',
      ],
    ],
    worked: 'The band reaches over a limit. A better measurement may settle it; another word for it may not.',
  }),
  concept('verdicts', {
    id: 'risk-at-limit',
    lesson: verdict,
    difficulty: 2,
    stem: 'By simple acceptance a reading exactly on the limit is passed. How likely is it that the power is beyond the limit all the same?',
    answer: ['one half, however good the measurement', 'The bell stands with its middle on the limit.'],
    wrong: [
      [
        'one in twenty, as U holds ninety-five in a hundred',
        'another-question',
        'The strip is about the reading, and the limit lies in its middle.',
      ],
      [
        'the smaller, the better the measurement is',
        'reading-decides',
        'A narrower bell still has half of itself on either side of its middle.',
      ],
      [
        'none: what is passed keeps to its limit',
        'reading-decides',
        'It has been passed. That has not moved the power.',
      ],
    ],
    worked:
      'With no other knowledge the value is as likely above as below the reading. On the limit that makes one half; a guard band is there to lower it.',
  }),
  concept('verdicts', {
    id: 'who-pays-guard-band',
    lesson: verdict,
    difficulty: 2,
    stem: 'A club widens its guard band, with everything else as it was. What happens?',
    answer: [
      'fewer bad ones pass, and more good ones are sent back',
      'A rule shares the risk out; it does not remove it.',
    ],
    wrong: [
      [
        'fewer bad ones pass, and fewer good ones are sent back',
        'guard-wrong-side',
        'That takes a better measurement. A rule alone cannot do both.',
      ],
      [
        'more bad ones pass, and more good ones are sent back',
        'guard-wrong-side',
        'Fewer bad ones pass: there is less room to be accepted in.',
      ],
      [
        'nothing: the transmitters stay the same as before',
        'reading-decides',
        'They do. The line between accepted and not has moved.',
      ],
    ],
    worked:
      'A wider guard band protects whoever relies on the verdict, at the cost of whoever built the transmitter. Only a better measurement helps both.',
  }),
  concept('verdicts', {
    id: 'two-meters-differ',
    lesson: 'measuring/borrowing-a-calibration',
    difficulty: 2,
    stem: 'Two independent meters differ by less than their uncertainties together explain. What follows?',
    answer: ['they agree as far as anybody can tell', 'Agreeing is not the same as being right.'],
    wrong: [
      ['one of them is wrong, since they differ', 'any-difference'],
      [
        'both of them show the true value',
        'any-difference',
        'They agree. An error that both share would not show.',
      ],
      [
        'their mean has no uncertainty any more',
        'better-than-lender',
        'It has one, somewhat smaller than each, if they have nothing in common.',
      ],
    ],
    worked:
      'Compatible results differ by no more than the expanded uncertainty of their difference. That gives no reason to doubt either of them, and proves neither.',
  }),
  concept('verdicts', {
    id: 'odd-reading',
    lesson: readings,
    difficulty: 2,
    stem: 'Four readings agree, a fifth lies far off. What do you do with it?',
    answer: ['look for a reason; without one it stays', 'And say what was done with it.'],
    wrong: [
      ['leave it out: four against one', 'drop-odd-reading'],
      [
        'leave it out if the mean looks better then',
        'drop-odd-reading',
        'That is choosing the result. A reading goes for a reason that would hold whatever it says.',
      ],
      [
        'put the mean of the other four in its place',
        'drop-odd-reading',
        'That invents a reading, and makes the scatter look smaller than it was.',
      ],
    ],
    worked:
      'A loose connector or a wrong range is a reason. “It does not fit” is none: perhaps the other four are what has gone wrong.',
  }),
  concept('verdicts', {
    id: 'repeat-or-reproduce',
    lesson: readings,
    difficulty: 2,
    stem: 'Ten readings in a row, with nothing touched, agree very well. What have they shown?',
    answer: [
      'repeatability, with everything kept the same',
      'Undo the connectors, come back tomorrow, and it may look different.',
    ],
    wrong: [
      [
        'reproducibility, over days and operators',
        'word-mixed-up',
        'For that something has to change between the readings: the day, the set-up, the person.',
      ],
      [
        'trueness: their mean is near the true value',
        'digits-are-accuracy',
        'They may agree and all be off by the same amount.',
      ],
      [
        'traceability to a national standard',
        'instrument-traceable',
        'They have not been compared with anything.',
      ],
    ],
    worked:
      'Precision under the same conditions is repeatability. It says nothing about what all of the readings have in common.',
  }),
];
