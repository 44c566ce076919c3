import { dbToPowerRatio, gainDb, percentOfPowerToDb, percentOfVoltsToDb } from '#compute';
import { deviationsText } from '../../../text/deviation-text.ts';
import { choices, numeric, other } from '../define.ts';
import { oneOf, steps } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { band, exactly, fixed, given, givenBand, power, sig } from '../write.ts';
import { expanded, limits, standard, swinging, uncertaintyOf, worstOf } from './sum.ts';

const stated = 'stacking/what-a-tolerance-says';
const worst = 'stacking/worst-case';
const angles = 'stacking/at-right-angles';
const percent = 'decibels/a-decibel-is-not-a-percentage';
const shared = 'stacking/shared-causes';
const spend = 'measuring/where-to-spend';
const band2 = band('dB', 2);
const db3 = fixed('dB', 3);
const ROOT3 = Math.sqrt(3);
const within = (size: number) =>
  ({ quantity: 'halfWidthDb', unit: 'dB', tolerance: { of: 'value', size } }) as const;

/** Tolerances and bands with drawn numbers. */
export const BAND_NUMBERS: readonly BankQuestion[] = [
  numeric('bands', {
    id: 'limit-to-u',
    lesson: stated,
    difficulty: 1,
    given: { half: steps(0.3, 2, 0.1) },
    stem: ({ half }) =>
      `A pad’s data sheet says ${givenBand(half, 'dB')} and nothing else. What standard uncertainty is that?`,
    answer: ({ half }) => uncertaintyOf([limits(half)]),
    write: db3,
    wrong: ({ half }) => [
      [half, 'limit-as-u'],
      [half / 2, 'limit-halved'],
      [half / Math.SQRT2, 'root-two-for-three'],
      [
        (2 * half) / ROOT3,
        'full-width',
        'The limit is the half-width already. Do not double it before dividing by √3.',
      ],
    ],
    worked: ({ half }) => [`Anywhere between the limits is as likely: ${given(half, 'dB')}/√3 =`],
    right: 'Limits, nothing else known: divided by √3.',
  }),
  numeric('bands', {
    id: 'mismatch-to-u',
    lesson: stated,
    difficulty: 2,
    given: { half: steps(0.1, 0.9, 0.05) },
    stem: ({ half }) =>
      `Mismatch moves a reading by ${givenBand(half, 'dB')} at most, at a phase that nobody knows. What standard uncertainty is that?`,
    answer: ({ half }) => uncertaintyOf([swinging(half)]),
    write: db3,
    wrong: ({ half }) => [
      [half / ROOT3, 'root-three-for-two'],
      [half / 2, 'limit-halved', 'Dividing by two is for an expanded uncertainty with k = 2.'],
      [half, 'limit-as-u'],
    ],
    worked: ({ half }) => [
      `It swings like a sine and stays longest near its ends: ${given(half, 'dB')}/√2 =`,
    ],
    right: 'A sine of unknown phase: divided by √2.',
  }),
  numeric('bands', {
    id: 'certificate-to-u',
    lesson: stated,
    difficulty: 1,
    given: { wide: steps(0.1, 0.9, 0.05) },
    stem: ({ wide }) =>
      `A certificate says U = ${given(wide, 'dB')}, k = 2. What standard uncertainty goes into the budget?`,
    answer: ({ wide }) => uncertaintyOf([expanded(wide)]),
    write: db3,
    wrong: ({ wide }) => [
      [wide, 'k-left-out'],
      [wide / ROOT3, 'limit-as-u', 'Dividing by √3 is for limits. U has its k: divide by that.'],
      [2 * wide, 'k-twice'],
    ],
    worked: ({ wide }) => [`U divided by its k: ${given(wide, 'dB')}/2 =`],
    right: 'U over k.',
  }),
  numeric('bands', {
    id: 'display-step',
    lesson: stated,
    syllabus: [],
    difficulty: 2,
    given: { step: oneOf(0.01, 0.02, 0.05, 0.1, 0.2, 0.25, 0.5), level: steps(3, 17, 1) },
    stem: ({ step, level }) =>
      `A level near ${given(level, 'dBm')} is read on a display that goes in steps of ${given(step, 'dB')}. What standard uncertainty does the step alone bring?`,
    answer: ({ step }) => uncertaintyOf([{ form: 'displayStep', step }]),
    write: fixed('dB', 4),
    wrong: ({ step }) => [
      [
        step,
        'digits-are-accuracy',
        'The value is rounded to the nearest step, so it is half a step off at most, and seldom that.',
      ],
      [
        step / ROOT3,
        'full-width',
        'That takes the whole step for the half-width: rounding errs by half a step at most.',
      ],
      [step / 2, 'limit-as-u'],
    ],
    worked: ({ step }) => [
      `Rounded to the nearest, it may be off by half a step: ${given(step, 'dB')}/2 = ${exactly(step / 2, 'dB')}.`,
      `${exactly(step / 2, 'dB')}/√3 =`,
    ],
    right: 'Half a step over √3.',
  }),
  numeric('bands', {
    id: 'worst-of-row',
    lesson: worst,
    difficulty: 1,
    given: { one: steps(0.2, 1, 0.1), two: steps(0.2, 1, 0.1), meter: oneOf(0.5, 1, 1.5, 2, 2.5) },
    suits: ({ one, two }) => one !== two,
    stem: ({ one, two, meter }) =>
      `Two pads of ${givenBand(one, 'dB')} and ${givenBand(two, 'dB')} and a meter of ${givenBand(meter, 'dB')}. By how much can the three be wrong together, guaranteed?`,
    answer: ({ one, two, meter }) => worstOf([limits(one), limits(two), limits(meter)]),
    write: band2,
    wrong: ({ one, two, meter }) => [
      [Math.hypot(one, two, meter), 'rss-for-worst'],
      [meter, 'largest-uncertainty'],
      [(one + two + meter) / 3, 'uncertainties-averaged'],
      [
        (2 * Math.hypot(one, two, meter)) / ROOT3,
        'rss-for-worst',
        'That is the expanded uncertainty, which leaves a few per cent out. Guaranteed means all of it.',
      ],
    ],
    worked: ({ one, two, meter }) => [
      `All at their ends together: ${given(one, 'dB')} + ${given(two, 'dB')} + ${given(meter, 'dB')} =`,
    ],
    right: 'Guaranteed is the sum of the limits.',
  }),
  numeric('bands', {
    id: 'expanded-of-row',
    lesson: angles,
    difficulty: 2,
    given: { one: steps(0.2, 1, 0.1), two: steps(0.2, 1, 0.1), meter: oneOf(0.3, 0.5, 0.8, 1) },
    stem: ({ one, two, meter }) =>
      `Independent, and nothing known but the limits: pads of ${givenBand(one, 'dB')} and ${givenBand(two, 'dB')}, a meter of ${givenBand(meter, 'dB')}. What is the expanded uncertainty (k = 2)?`,
    answer: ({ one, two, meter }) => 2 * uncertaintyOf([limits(one), limits(two), limits(meter)]),
    write: fixed('dB', 2),
    typed: within(0.02),
    suits: ({ one, two, meter }) =>
      (2 * Math.hypot(one, two, meter)) / ROOT3 - Math.hypot(one, two, meter) > 0.06 &&
      one + two + meter - (2 * Math.hypot(one, two, meter)) / ROOT3 > 0.06,
    wrong: ({ one, two, meter }) => [
      [one + two + meter, 'worst-for-rss'],
      [Math.hypot(one, two, meter), 'rss-of-limits-is-u'],
      [Math.hypot(one, two, meter) / ROOT3, 'k-forgotten'],
    ],
    worked: ({ one, two, meter }) => {
      const root = fixed('dB', 4)(Math.hypot(one, two, meter));
      const u = fixed('dB', 4)(Math.hypot(one, two, meter) / ROOT3);
      return [
        `The root of the sum of the squares of the limits is √(${given(one)}² + ${given(two)}² + ${given(meter)}²) = ${root}; the standard uncertainty is ${root}/√3 = ${u}.`,
        `Expanded, two times that: 2 × ${u} =`,
      ];
    },
    right: 'Each limit over √3, the squares added, the root, times k.',
  }),
  numeric('bands', {
    id: 'mixed-budget',
    lesson: angles,
    difficulty: 3,
    given: { wide: steps(0.2, 0.6, 0.1), half: steps(0.3, 1, 0.1), scatter: oneOf(0.05, 0.1, 0.15, 0.2) },
    stem: ({ wide, half, scatter }) =>
      `A meter with U = ${given(wide, 'dB')} (k = 2), a pad with limits of ${givenBand(half, 'dB')}, a scatter of the mean of ${given(scatter, 'dB')}. What is the combined standard uncertainty?`,
    answer: ({ wide, half, scatter }) => uncertaintyOf([expanded(wide), limits(half), standard(scatter)]),
    write: db3,
    wrong: ({ wide, half, scatter }) => [
      [
        Math.hypot(wide, half, scatter),
        'k-left-out',
        'Three statements of three kinds: U has to be divided by its k, the limit by √3, before their squares may be added.',
      ],
      [wide / 2 + half / ROOT3 + scatter, 'independent-as-correlated'],
      [
        Math.hypot(wide / 2, half / 2, scatter / 2),
        'limit-halved',
        'Only U is divided by two. The limit takes √3, and the scatter is a standard uncertainty already.',
      ],
    ],
    worked: ({ wide, half, scatter }) => {
      const [one, two] = [fixed('dB', 4)(wide / 2), fixed('dB', 4)(half / ROOT3)];
      return [
        `As standard uncertainties: ${given(wide, 'dB')}/2 = ${one}, ${given(half, 'dB')}/√3 = ${two}, and ${given(scatter, 'dB')}.`,
        `The root of the sum of their squares: √((${one})² + (${two})² + (${given(scatter, 'dB')})²) =`,
      ];
    },
    right: 'Each brought to one standard deviation first, then at right angles.',
  }),
  numeric('bands', {
    id: 'share-of-budget',
    lesson: angles,
    difficulty: 3,
    given: { large: steps(0.4, 1, 0.1), small: steps(0.1, 0.5, 0.1) },
    suits: ({ large, small }) => small / large < 0.7 && small / large > 0.15,
    stem: ({ large, small }) =>
      `Two independent parts of a budget have standard uncertainties of ${given(large, 'dB')} and ${given(small, 'dB')}. How much of the squared uncertainty of their sum comes from the larger?`,
    answer: ({ large, small }) =>
      (100 * uncertaintyOf([standard(large)]) ** 2) / uncertaintyOf([standard(large), standard(small)]) ** 2,
    write: fixed('percent', 1),
    wrong: ({ large, small }) => [
      [
        (100 * large) / (large + small),
        'independent-as-correlated',
        'That is its share of the plain sum. Independent parts add as squares.',
      ],
      [
        (100 * large) / Math.hypot(large, small),
        'root-of-count-only',
        'That compares the uncertainties themselves. The shares that add up to the whole are those of the squares.',
      ],
      [
        100 - (100 * small) / large,
        'another-question',
        'That compares the parts with each other, not with the whole.',
      ],
    ],
    worked: ({ large, small }) => [`Squares count: ${given(large)}²/(${given(large)}² + ${given(small)}²) =`],
    right: 'By squares; that is why the largest part leads so clearly.',
  }),
  numeric('bands', {
    id: 'after-improving',
    lesson: spend,
    difficulty: 3,
    given: { large: oneOf(0.6, 0.8, 1, 1.2), small: oneOf(0.2, 0.3, 0.4), better: oneOf(0.2, 0.3, 0.4) },
    suits: ({ large, better }) => better <= large / 2,
    stem: ({ large, small, better }) =>
      `Two independent parts have U = ${given(large, 'dB')} and U = ${given(small, 'dB')}, both with k = 2. The larger is brought down to ${given(better, 'dB')}. What is U of both together then?`,
    answer: ({ small, better }) => 2 * uncertaintyOf([expanded(small), expanded(better)]),
    write: fixed('dB', 2),
    wrong: ({ large, small, better }) => [
      [Math.hypot(large, small) * (better / large), 'halved-part-halves'],
      [small + better, 'worst-for-rss', 'Independent parts combine as the root of the sum of the squares.'],
      [2 * Math.hypot(small, better), 'k-twice'],
      [Math.hypot(large, small), 'another-question', 'That was before the improvement.'],
    ],
    worked: ({ small, better }) => [
      `Both have the same k, so U combines like u: √(${given(small)}² + ${given(better)}²) =`,
    ],
    right: 'Only the improved part’s square has shrunk.',
  }),
  other('bands', 'choice', {
    id: 'db-band-in-watts',
    lesson: percent,
    difficulty: 2,
    given: { watts: oneOf(0.2, 0.25, 0.4, 0.5, 1, 2, 2.5, 4, 5, 10), half: steps(0.6, 2.4, 0.1) },
    make: ({ watts, half }) => {
      const ends = (low: number, high: number): string => `${power()(low)} to ${power()(high)}`;
      const [low, high] = [watts * dbToPowerRatio(gainDb(-half)), watts * dbToPowerRatio(gainDb(half))];
      const answer = ends(low, high);
      const written = power(watts < 1 ? 3 : 2)(watts);
      return {
        stem: `${written}, ${givenBand(half, 'dB')}. Between which powers is that?`,
        payload: choices({ text: answer, reply: 'Longer upwards than downwards.' }, [
          [ends(2 * watts - high, high), 'symmetric-watts'],
          [
            ends(watts * Math.sqrt(low / watts), watts * Math.sqrt(high / watts)),
            'volts-percent',
            'That turns the decibels into a factor of volts. Power takes ten in the exponent.',
          ],
          [ends(watts * (1 - half / 10), watts * (1 + half / 10)), 'db-as-percent'],
        ]),
        worked: [
          `Ten to the power of −${given(half)}/10 is ${sig(low / watts, 4)}, ten to the power of ${given(half)}/10 is ${sig(high / watts, 4)}.`,
          `${sig(low / watts, 4)} × ${written} = ${power()(low)} and ${sig(high / watts, 4)} × ${written} = ${power()(high)}, so ${answer}.`,
        ],
        right: 'Longer upwards than downwards.',
      };
    },
  }),
  other('bands', 'choice', {
    id: 'percent-band-in-db',
    lesson: percent,
    difficulty: 3,
    given: { percent: oneOf(5, 8, 10, 12, 15, 20, 25) },
    make: ({ percent: limit }) => {
      const write = (lower: number, upper: number): string =>
        deviationsText('shown', { lower, upper, decimals: 2, unit: 'dB' });
      const answer = write(percentOfVoltsToDb(-limit), percentOfVoltsToDb(limit));
      return {
        stem: `The volts across a load may be ${givenBand(limit, 'percent')} of the reading off. What is that for the level, in decibels?`,
        payload: choices({ text: answer, reply: 'Twenty times the logarithm, once up and once down.' }, [
          [write(percentOfPowerToDb(-limit), percentOfPowerToDb(limit)), 'ten-for-twenty'],
          [
            write(-percentOfVoltsToDb(limit), -percentOfVoltsToDb(-limit)),
            'ends-exchanged',
            'The ends have changed places: down is the longer one in decibels.',
          ],
          [
            write(-limit / 10, limit / 10),
            'db-as-percent',
            'Ten per cent are no decibel, neither of volts nor of power.',
          ],
        ]),
        worked: [`20 lg (1 ± ${given(limit, 'percent')}) = ${answer}.`],
        right: 'Twenty times the logarithm, once up and once down.',
      };
    },
  }),
  numeric('bands', {
    id: 'shared-cause',
    lesson: shared,
    difficulty: 3,
    given: { count: steps(2, 5, 1), each: oneOf(0.05, 0.08, 0.1, 0.12, 0.15, 0.2) },
    suits: ({ count }) => count > 2,
    stem: ({ count, each }) =>
      `${given(count)} pads in a row were all measured with the same meter, whose error is unknown and the same each time: ${given(each, 'dB')} of standard uncertainty in each pad, and nothing else. What is the standard uncertainty of the whole row?`,
    answer: ({ count, each }) =>
      uncertaintyOf(
        Array.from({ length: count }, () => standard(each)),
        'meter',
      ),
    write: fixed('dB', 3),
    typed: within(0.004),
    wrong: ({ count, each }) => [
      [each * Math.sqrt(count), 'correlated-as-independent'],
      [each, 'shared-cancels-always'],
      [
        each / Math.sqrt(count),
        'root-n-for-all',
        'That would be a mean of independent values. This is a sum, and they err together.',
      ],
    ],
    worked: ({ count, each }) => [
      `What errs for one reason errs together, so it adds as numbers: ${given(count)} × ${given(each, 'dB')} =`,
    ],
    right: 'One cause: added as numbers.',
  }),
  numeric('bands', {
    id: 'dominant-flat-part',
    lesson: 'stacking/the-whole-shape',
    difficulty: 3,
    given: { half: steps(0.8, 3, 0.1) },
    stem: ({ half }) =>
      `One part alone matters: limits of ${givenBand(half, 'dB')}, anywhere between as likely. How far to either side of its middle does it reach with a probability of ${given(95, 'percent')}?`,
    answer: ({ half }) => 0.95 * half,
    write: band2,
    wrong: ({ half }) => [
      [
        (2 * half) / ROOT3,
        'normal-always',
        'Two standard uncertainties: that is for a bell, and reaches beyond the limits.',
      ],
      [
        half / ROOT3,
        'k-forgotten',
        'That is one standard uncertainty: of a flat part it holds 58 in a hundred.',
      ],
      [half, 'limit-as-u', 'Between the limits it lies always.'],
    ],
    worked: ({ half }) => [
      `Flat means that the share of the width is the probability: 0.95 × ${given(half, 'dB')} =`,
    ],
    right: 'The share of the width is the probability.',
  }),
];
