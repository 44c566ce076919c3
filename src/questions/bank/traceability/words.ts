import { concept } from '../define.ts';
import type { BankQuestion } from '../types.ts';

const changes = 'traceability/calibration-changes-nothing';
const chain = 'traceability/the-chain-to-the-definition';
const borrow = 'measuring/borrowing-a-calibration';

/** Calibration and traceability in words. */
export const TRACE_WORDS: readonly BankQuestion[] = [
  concept('traceability', {
    id: 'what-calibration-does',
    lesson: changes,
    difficulty: 1,
    stem: 'What does a calibration change on the meter?',
    answer: ['nothing: it compares and writes down', 'The certificate is what is new.'],
    wrong: [
      ['its zero and its scale, until they are right', 'calibrated-is-adjusted'],
      [
        'its class, to a better one than before',
        'calibrated-is-right',
        'What it was built for stays. What is known about it has grown.',
      ],
      [
        'its tolerance, which becomes narrower',
        'tolerance-is-uncertainty',
        'A tolerance belongs to the design. A calibration says where in it this meter lies.',
      ],
    ],
    worked:
      'A calibration finds how indications and reference values belong together, with uncertainties. Turning a screw is an adjustment, with a calibration before and after.',
  }),
  concept('traceability', {
    id: 'what-is-traceable',
    lesson: chain,
    difficulty: 2,
    stem: 'What can be metrologically traceable?',
    answer: ['a measurement result', 'This value, taken in this way, with its chain.'],
    wrong: [
      ['a measuring instrument', 'instrument-traceable'],
      ['a calibration sticker', 'sticker-is-traceable'],
      [
        'a calibration laboratory',
        'instrument-traceable',
        'A laboratory may be competent, and say so with a document. Traceable are the results.',
      ],
    ],
    worked:
      'Traceability is a property of a result: a documented, unbroken chain of calibrations, each with its uncertainty, to a reference (VIM, 2012).',
  }),
  concept('traceability', {
    id: 'sticker',
    lesson: chain,
    difficulty: 1,
    stem: 'A friend’s meter has a fresh sticker, “calibrated”. What do you need from it for your own result?',
    answer: ['the certificate: values, uncertainties, conditions', 'With it the sticker is superfluous.'],
    wrong: [
      ['nothing more: the sticker shows that it is right', 'sticker-is-traceable'],
      [
        'the date, to see that it has not run out yet',
        'sticker-is-traceable',
        'A date says when it was compared. How it compared stands in the certificate.',
      ],
      [
        'the friend’s word that it reads well',
        'sticker-is-traceable',
        'A word has no uncertainty that could be put into a budget.',
      ],
    ],
    worked:
      'A sticker says that something was done. What you can count with are values with uncertainties, at stated frequencies, levels and temperatures.',
  }),
  concept('traceability', {
    id: 'verification-or-calibration',
    lesson: changes,
    difficulty: 2,
    stem: 'A report says nothing but “passed: within the limits of its data sheet”. What is that?',
    answer: ['a verification', 'Evidence that a requirement is met.'],
    wrong: [
      ['a calibration', 'verified-is-calibrated'],
      ['an adjustment', 'calibrated-is-adjusted', 'Nothing says that anything was turned.'],
      [
        'a traceability chain',
        'sticker-is-traceable',
        'A chain names what was compared with what, and how well.',
      ],
    ],
    worked:
      'Pass or fail against stated limits is a verification. For your budget it leaves you with the limits of the data sheet.',
  }),
  concept('traceability', {
    id: 'offset-after-correction',
    lesson: changes,
    difficulty: 2,
    stem: 'A meter was found to read half a decibel too high. You take that off every reading. What about the budget?',
    answer: [
      'the uncertainty of the correction goes in, not the offset',
      'What is known is corrected; what is not known is the band.',
    ],
    wrong: [
      ['the offset goes in as a limit, to be on the safe side', 'offset-kept'],
      ['nothing goes in, since the error has been corrected', 'correction-is-exact'],
      [
        'the offset goes in, divided by the root of three',
        'offset-kept',
        'It is no limit: it was a known error, and has been taken off.',
      ],
    ],
    worked: 'A correction replaces the offset. It comes from a comparison, whose uncertainty stays.',
  }),
  concept('traceability', {
    id: 'lender-uncertainty',
    lesson: borrow,
    difficulty: 2,
    stem: 'You carry a lent meter’s calibration over to your own, a hundred times, and average. How good can your meter’s correction get?',
    answer: ['never better than the lent meter is known', 'Averaging removes your scatter, not its error.'],
    wrong: [
      [
        'ten times better than the lent meter is known',
        'better-than-lender',
        'The lent meter’s error is the same in all of the hundred.',
      ],
      [
        'as good as the average of the two meters',
        'better-than-lender',
        'Yours had nothing to add to what is known about the reference.',
      ],
      [
        'perfect, if the source is stable enough',
        'better-than-lender',
        'A stable source removes the drift. The lent meter’s uncertainty stays.',
      ],
    ],
    worked: 'What the reference itself may be wrong by is common to all rounds, and no averaging removes it.',
  }),
  concept('traceability', {
    id: 'two-alike-agree',
    lesson: 'stacking/shared-causes',
    difficulty: 2,
    stem: 'Two meters of one design, calibrated by the same workshop against the same source, agree to a hundredth. What does that show?',
    answer: ['little: an error of the source would be in both', 'They are no independent witnesses.'],
    wrong: [
      ['that both are right to about a hundredth', 'chain-stops-at-shop'],
      [
        'that the source is right to about a hundredth',
        'chain-stops-at-shop',
        'Of the source they say nothing: both have repeated it.',
      ],
      [
        'that their mean is better than either of them',
        'chain-stops-at-shop',
        'A shared error stays in a mean as large as it was.',
      ],
    ],
    worked:
      'Agreement counts as far as the two have nothing in common. Compare with something that got its calibration by another way.',
  }),
  concept('traceability', {
    id: 'instruments-or-results',
    lesson: 'traceability/measuring-is-comparing',
    difficulty: 1,
    stem: 'What does every measurement come down to?',
    answer: ['a comparison with something known', 'And it is as good as what is known about that.'],
    wrong: [
      [
        'a reading of an exact scale',
        'digits-are-accuracy',
        'Scales are made by comparison, too, and none is exact.',
      ],
      [
        'the finding of a true value',
        'reading-decides',
        'What is true stays unknown. A comparison comes near it, as far as its uncertainty says.',
      ],
      ['a check that a limit is kept', 'another-question', 'That is what the result may be used for.'],
    ],
    worked:
      'Whatever the method, something unknown is set against something that was itself compared before.',
  }),
  concept('traceability', {
    id: 'where-it-ends',
    lesson: 'traceability/what-a-watt-is-made-of',
    difficulty: 2,
    stem: 'Where does the chain of comparisons end at the top?',
    answer: ['at constants of nature with exact values', 'What is uncertain is every way to realise them.'],
    wrong: [
      [
        'at the best meter of a national laboratory',
        'exact-definition',
        'Even that is compared with something: a realisation of the units.',
      ],
      [
        'at a prototype of the watt, kept in a vault',
        'exact-definition',
        'There is none, and there are no prototypes any more since 2019.',
      ],
      [
        'at the mean of all laboratories in the world',
        'exact-definition',
        'They compare with each other to see whether they agree. The units are defined otherwise.',
      ],
    ],
    worked:
      'Since 2019 all units of the SI rest on defining constants whose values are exact. From there on every realisation and every comparison adds uncertainty.',
  }),
];
