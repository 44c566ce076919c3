import {
  levelDbm,
  levelToPower,
  mean,
  normalisedError,
  powerToLevel,
  powerW,
  standardDeviation,
  targetForVerdict,
} from '#compute';
import { judgedBy } from '../../../sheet/conformity.ts';
import { expanded, standard, uncertaintyOf } from '../bands/sum.ts';
import { choices, numeric, other } from '../define.ts';
import { oneOf, steps } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { band, digits, fixed, given, givenBand, sig } from '../write.ts';

const readings = 'stacking/a-few-readings';
const verdict = 'measuring/inside-outside-cant-tell';
const writing = 'stacking/writing-it-down';
const db3 = fixed('dB', 3);
const dbm2 = fixed('dBm', 2);
const two = (value: number): number => Number(value.toPrecision(8));
const series = (start: number, up: number, down: number): readonly number[] =>
  [start, start + up / 100, start - down / 100].map(two);
const chance = ({ estimate, u, upper }: { estimate: number; u: number; upper: number }): number =>
  judgedBy({ estimate, standardUncertainty: u, specification: { upper }, rule: { kind: 'simple' } })
    .probabilityOfConformity ?? Number.NaN;
const accepted = (wide: number, specification: { upper: number } | { lower: number }) => {
  const { acceptance } = judgedBy({
    estimate: 0,
    standardUncertainty: wide / 2,
    specification,
    rule: { kind: 'guardBand', multiplier: 1 },
  });
  if (acceptance === undefined)
    throw new RangeError('accepted: one limit must leave an acceptance limit, got none');
  return acceptance;
};

/** Readings and verdicts with drawn numbers. */
export const VERDICT_NUMBERS: readonly BankQuestion[] = [
  numeric('verdicts', {
    id: 'scatter-of-three',
    lesson: readings,
    difficulty: 3,
    given: { start: steps(24, 28, 0.1), up: steps(8, 40, 2), down: steps(8, 40, 2) },
    suits: ({ up, down }) => Math.abs(up - down) > 4,
    stem: ({ start, up, down }) =>
      `Three readings: ${series(start, up, down)
        .map((value) => fixed('none', 2)(value))
        .join(', ')}${'\u00a0'}dBm. What is the standard deviation of a single reading?`,
    answer: ({ start, up, down }) => standardDeviation(series(start, up, down)),
    write: db3,
    wrong: ({ start, up, down }) => {
      const s = standardDeviation(series(start, up, down));
      return [
        [s * Math.sqrt(2 / 3), 'population-sd'],
        [(up + down) / 100, 'range-as-sd'],
        [
          s / Math.sqrt(3),
          'root-n-for-all',
          'That is the standard deviation of the mean. Asked is that of a single reading.',
        ],
      ];
    },
    worked: ({ start, up, down }) => {
      const values = series(start, up, down);
      const middle = fixed('none', 3)(mean(values));
      const squares = values.reduce((sum, value) => sum + (value - mean(values)) ** 2, 0);
      const shown = values.map(fixed('none', 2));
      return [
        `The mean is (${shown.join(' + ')})/3 = ${middle}.`,
        `The squares of the deviations: ${shown.map((value) => `(${value} − ${middle})²`).join(' + ')} = ${sig(squares, 4)}.`,
        `Divided by n − 1, which is 2, and the root of it: √(${sig(squares, 4)}/2) =`,
      ];
    },
    right: 'Squares about the mean, over n − 1, and the root.',
  }),
  numeric('verdicts', {
    id: 'scatter-of-mean',
    lesson: readings,
    difficulty: 2,
    given: { s: steps(0.05, 0.4, 0.05), n: oneOf(3, 4, 5, 6, 8, 9, 10) },
    stem: ({ s, n }) =>
      `Single readings scatter with a standard deviation of ${given(s, 'dB')}. What is the standard deviation of the mean of ${given(n)}?`,
    answer: ({ s, n }) => s / Math.sqrt(n),
    write: db3,
    wrong: ({ s, n }) => [
      [s / n, 'n-for-root-n'],
      [s, 'no-root-n'],
      [
        s / Math.sqrt(n - 1),
        'population-sd',
        'The n − 1 belongs in the standard deviation of a single reading. The mean of n readings takes √n.',
      ],
      [s * Math.sqrt(n), 'upside-down', 'A mean scatters less than a single reading, not more.'],
    ],
    worked: ({ s, n }) => [`One over the root of their number: ${given(s, 'dB')}/√${given(n)} =`],
    right: 'By the root of the number.',
  }),
  numeric('verdicts', {
    id: 'how-many-readings',
    lesson: readings,
    difficulty: 2,
    given: { factor: oneOf(2, 3, 4, 5), s: oneOf(0.12, 0.18, 0.24, 0.3, 0.36, 0.6) },
    stem: ({ factor, s }) =>
      `Single readings scatter with ${given(s, 'dB')}. How many does it take until their mean scatters with ${given(two(s / factor), 'dB')}?`,
    answer: ({ factor }) => factor ** 2,
    write: fixed('none', 0),
    wrong: ({ factor }) => [
      [factor, 'n-for-root-n'],
      [
        factor ** 2 + 1,
        'population-sd',
        'The n − 1 is in the standard deviation already. For the mean it is √n.',
      ],
      [2 * factor, 'n-for-root-n', 'Not twice the factor: its square.'],
    ],
    suits: ({ factor }) => factor !== 2,
    worked: ({ factor, s }) => [
      `The scatter is to become ${given(s, 'dB')}/${given(two(s / factor), 'dB')} = ${given(factor)} times smaller, which takes the square of that: ${given(factor)}² =`,
    ],
    right: 'The square of the factor; that is why it soon stops being worth it.',
  }),
  numeric('verdicts', {
    id: 'what-readings-leave',
    lesson: readings,
    difficulty: 3,
    given: {
      s: oneOf(0.2, 0.3, 0.4, 0.5),
      n: oneOf(4, 9, 16, 25),
      fixedPart: oneOf(0.1, 0.15, 0.2, 0.25, 0.3),
    },
    stem: ({ s, n, fixedPart }) =>
      `Readings scatter with ${given(s, 'dB')}; the meter itself has a standard uncertainty of ${given(fixedPart, 'dB')}, the same in each reading. What is the standard uncertainty of the mean of ${given(n)} readings?`,
    answer: ({ s, n, fixedPart }) =>
      uncertaintyOf([{ form: 'readings', standardDeviation: s, count: n }, standard(fixedPart)]),
    write: db3,
    wrong: ({ s, n, fixedPart }) => [
      [Math.hypot(s, fixedPart) / Math.sqrt(n), 'root-n-for-all'],
      [s / Math.sqrt(n) + fixedPart, 'independent-as-correlated'],
      [Math.hypot(s / n, fixedPart), 'n-for-root-n'],
      [Math.hypot(s, fixedPart), 'no-root-n'],
    ],
    worked: ({ s, n, fixedPart }) => {
      const scatter = fixed('dB', 4)(s / Math.sqrt(n));
      return [
        `The scatter becomes ${given(s, 'dB')}/√${given(n)} = ${scatter}, the meter keeps ${given(fixedPart, 'dB')}.`,
        `The root of the sum of their squares: √((${scatter})² + (${given(fixedPart, 'dB')})²) =`,
      ];
    },
    right: 'Only the scatter has shrunk.',
  }),
  numeric('verdicts', {
    id: 'agree-limit',
    lesson: 'measuring/borrowing-a-calibration',
    difficulty: 2,
    given: {
      one: steps(0.2, 0.9, 0.1),
      other: steps(0.2, 0.9, 0.1),
      first: steps(25, 27, 0.1),
      apart: steps(0.1, 1.2, 0.1),
    },
    suits: ({ one, other: second }) => one !== second,
    stem: ({ one, other: second, first, apart }) =>
      `Two independent results for one transmitter: ${given(first, 'dBm')} with U = ${given(one, 'dB')}, and ${given(two(first + apart), 'dBm')} with U = ${given(second, 'dB')}, k = 2 both. Up to which difference would the two still agree?`,
    answer: ({ one, other: second, first, apart }) =>
      normalisedError({
        result: { value: first, expanded: one },
        reference: { value: first + apart, expanded: second },
      }).expanded,
    write: fixed('dB', 2),
    wrong: ({ one, other: second }) => [
      [one + second, 'bands-must-touch'],
      [Math.max(one, second), 'larger-only'],
      [(one + second) / 2, 'uncertainties-averaged', 'A difference is less certain than either of the two.'],
    ],
    worked: ({ one, other: second }) => [
      `The difference has the expanded uncertainty √(${given(one)}² + ${given(second)}²) =`,
    ],
    right: 'Both are uncertain, and both count, at right angles.',
  }),
  numeric('verdicts', {
    id: 'acceptance-limit',
    lesson: verdict,
    difficulty: 2,
    given: { limit: oneOf(27, 28.5, 30, 33, 37), wide: steps(0.3, 1.5, 0.1) },
    stem: ({ limit, wide }) =>
      `A transmitter may give ${given(limit, 'dBm')} at most; the measurement has U = ${given(wide, 'dB')} (k = 2). The rule keeps a guard band of U. What is the highest reading that is inside?`,
    answer: ({ limit, wide }) => accepted(wide, { upper: limit }).upper,
    write: dbm2,
    typed: { quantity: 'level', unit: 'dBm', tolerance: { of: 'value', size: 0.02 } },
    wrong: ({ limit, wide }) => [
      [limit + wide, 'guard-wrong-side'],
      [limit, 'reading-decides', 'That is simple acceptance: no guard band at all.'],
      [limit - wide / 2, 'guard-half'],
      [limit - 2 * wide, 'guard-double'],
    ],
    worked: ({ limit, wide }) => [
      `The acceptance limit lies one U inside the limit: ${given(limit, 'dBm')} − ${given(wide, 'dB')} =`,
    ],
    right: 'One U inside the limit.',
  }),
  numeric('verdicts', {
    id: 'surely-outside',
    lesson: verdict,
    difficulty: 2,
    given: { limit: oneOf(20, 23, 25.5, 27), wide: steps(0.3, 1.5, 0.1) },
    stem: ({ limit, wide }) =>
      `A transmitter must give at least ${given(limit, 'dBm')}; U = ${given(wide, 'dB')} (k = 2), guard band U on both sides of the limit. Below which reading is it called outside?`,
    answer: ({ limit, wide }) => {
      const held = {
        estimate: 0,
        standardUncertainty: wide / 2,
        specification: { lower: limit },
        rule: { kind: 'guardBand', multiplier: 1 },
      } as const;
      return judgedBy(held).rejection.lower;
    },
    write: dbm2,
    wrong: ({ limit, wide }) => [
      [
        limit + wide,
        'guard-wrong-side',
        'From there upwards it is inside. Outside lies on the other side of the limit.',
      ],
      [limit, 'straddle-is-outside', 'Just below the limit the band reaches over it: can’t tell.'],
      [limit - wide / 2, 'guard-half', 'For outside the whole band has to lie below the limit: one whole U.'],
    ],
    worked: ({ limit, wide }) => [
      `All of the band lies outside where the reading is one U below the limit: ${given(limit, 'dBm')} − ${given(wide, 'dB')} =`,
    ],
    right: 'When all of the band lies beyond.',
  }),
  numeric('verdicts', {
    id: 'chance-of-conformity',
    lesson: verdict,
    difficulty: 3,
    given: { limit: oneOf(27, 28.5, 30), below: steps(0.1, 0.6, 0.1), wide: steps(0.5, 1.2, 0.1) },
    suits: ({ below, wide }) => below / wide > 0.15 && below / wide < 0.8,
    stem: ({ limit, below, wide }) =>
      `Upper limit ${given(limit, 'dBm')}, reading ${given(two(limit - below), 'dBm')}, U = ${given(wide, 'dB')} (k = 2, a bell). What is the chance that the power keeps to its limit?`,
    answer: ({ limit, below, wide }) => 100 * chance({ estimate: limit - below, u: wide / 2, upper: limit }),
    write: fixed('percent', 0),
    wrong: ({ limit, below, wide }) => [
      [
        100 * chance({ estimate: limit - below, u: wide, upper: limit }),
        'k-left-out',
        'That takes U for the standard uncertainty. Divide it by k first.',
      ],
      [
        100 - 100 * chance({ estimate: limit - below, u: wide / 2, upper: limit }),
        'lost-for-left',
        'That is the chance that the limit is exceeded.',
      ],
      [
        95,
        'another-question',
        'The strip holds 95 %. How much of the bell lies below the limit is another number.',
      ],
    ],
    worked: ({ limit, below, wide }) => {
      const far = sig((2 * below) / wide);
      return [
        `The standard uncertainty is ${given(wide, 'dB')}/2 = ${given(two(wide / 2), 'dB')}; the limit lies (${given(limit, 'dBm')} − ${given(two(limit - below), 'dBm')})/${given(two(wide / 2), 'dB')} = ${far} of them above the reading.`,
        `From a table, the share of a bell below ${far} is`,
      ];
    },
    right: 'The share of the bell that lies below the limit.',
  }),
  numeric('verdicts', {
    id: 'uncertainty-needed',
    lesson: verdict,
    difficulty: 2,
    given: {
      nominal: oneOf(24, 27, 30),
      tolerance: oneOf(1, 1.5, 2),
      above: steps(0.2, 1.2, 0.1),
      wide: steps(0.6, 1.8, 0.1),
    },
    suits: ({ tolerance, above, wide }) =>
      tolerance - above > 0.2 && wide > tolerance - above + 0.05 && Math.abs(2 * above - tolerance) > 0.05,
    stem: ({ nominal, tolerance, above, wide }) =>
      `Specified ${given(nominal, 'dBm')} ${givenBand(tolerance, 'dB')}, guard band U. The reading is ${given(two(nominal + above), 'dBm')}, U = ${given(wide, 'dB')}: can’t tell. How small would U have to be for “inside” at this reading?`,
    answer: ({ nominal, tolerance, above }) =>
      targetForVerdict({
        specification: { lower: nominal - tolerance, upper: nominal + tolerance },
        estimate: nominal + above,
      }).expanded,
    write: fixed('dB', 2),
    wrong: ({ tolerance, above }) => [
      [
        (tolerance - above) / 2,
        'guard-double',
        'U is expanded already: the whole room up to the limit is there for it.',
      ],
      [tolerance, 'one-side-only', 'That is the room from the middle. The reading lies nearer to one limit.'],
      [tolerance + above, 'one-side-only', 'That is the distance to the farther limit.'],
      [
        above,
        'one-side-only',
        'That is how far the reading lies from the middle. What counts is its distance to the limit.',
      ],
    ],
    worked: ({ nominal, tolerance, above }) => [
      `The limit is ${given(nominal, 'dBm')} + ${given(tolerance, 'dB')} = ${given(two(nominal + tolerance), 'dBm')}.`,
      `From the reading to it there are ${given(two(nominal + tolerance), 'dBm')} − ${given(two(nominal + above), 'dBm')} =`,
    ],
    right: 'No more than the room to the nearer limit.',
  }),
  numeric('verdicts', {
    id: 'upper-limit-in-watts',
    lesson: verdict,
    syllabus: ['1.9'],
    difficulty: 2,
    given: { watts: oneOf(0.2, 0.25, 0.5, 1, 2, 5, 10), tolerance: oneOf(0.5, 0.8, 1, 1.2, 1.5, 2) },
    stem: ({ watts, tolerance }) =>
      `A transmitter is specified ${digits('W', watts < 1 && watts !== 0.5 && watts !== 0.2 ? 2 : 1)(watts)} ${givenBand(tolerance, 'dB')}. What power is its upper limit?`,
    answer: ({ watts, tolerance }) => levelToPower(levelDbm(powerToLevel(powerW(watts)) + tolerance)),
    write: digits('W', 3),
    wrong: ({ watts, tolerance }) => [
      [watts * (1 + tolerance / 10), 'db-as-percent'],
      [
        watts * 10 ** (tolerance / 20),
        'twenty-for-ten',
        'Twenty in the exponent is for volts. The limit is of power.',
      ],
      [
        watts * (2 - 10 ** (-tolerance / 10)),
        'symmetric-watts',
        'That goes as far up as the lower limit lies down. In watts the upper side is longer.',
      ],
    ],
    worked: ({ watts, tolerance }) => [
      `Ten to the power of ${given(tolerance)}/10 is ${sig(10 ** (tolerance / 10), 4)}.`,
      `That many times the power: ${sig(10 ** (tolerance / 10), 4)} × ${given(watts, 'W')} =`,
    ],
    right: 'The factor of the upper side.',
  }),
  numeric('verdicts', {
    id: 'safe-setting',
    lesson: verdict,
    difficulty: 2,
    given: { watts: oneOf(1, 2, 5, 10, 20, 25, 50, 100), wide: steps(0.4, 1.6, 0.1) },
    suits: ({ watts, wide }) => watts > 1.5 * wide,
    stem: ({ watts, wide }) =>
      `A licence allows ${given(watts, 'W')}. Your measurement has U = ${given(wide, 'dB')} (k = 2). How far may the reading go, if you keep one U below the limit?`,
    answer: ({ watts, wide }) =>
      levelToPower(levelDbm(accepted(wide, { upper: powerToLevel(powerW(watts)) }).upper)),
    write: digits('W', 3),
    wrong: ({ watts, wide }) => [
      [
        watts * 10 ** (wide / 10),
        'guard-wrong-side',
        'That goes over the limit. The real power counts, and it may lie above the reading.',
      ],
      [
        watts,
        'reading-decides',
        'A reading on the limit leaves a chance of one half that the power is beyond it.',
      ],
      [
        watts * 10 ** (-wide / 20),
        'guard-half',
        'That is half of U, or twenty in the exponent. Keep the whole of it.',
      ],
      [watts - wide, 'db-as-difference'],
    ],
    worked: ({ watts, wide }) => [
      `Ten to the power of −${given(wide)}/10 is ${sig(10 ** (-wide / 10), 4)}.`,
      `That share of what is allowed: ${sig(10 ** (-wide / 10), 4)} × ${given(watts, 'W')} =`,
    ],
    right: 'The limit is on the real power: stay below it by U.',
  }),
  other('verdicts', 'choice', {
    id: 'write-down',
    lesson: writing,
    difficulty: 2,
    given: { level: steps(20.1037, 29.0037, 0.3127), wide: steps(0.3138, 0.8938, 0.0472) },
    suits: ({ level }) => Math.abs(level - Math.round(level)) > 0.2,
    make: ({ level, wide }) => {
      const write = (decimals: number, of: number): string =>
        `${fixed('dBm', decimals)(level)} ${band('dB', of)(wide)}`;
      const answer = write(2, 2);
      return {
        stem: `A calculation ends in ${fixed('dBm', 4)(level)} with U = ${fixed('dB', 4)(wide)} (k = 2). To which digits are the two written down?`,
        payload: choices({ text: answer, reply: 'Two digits of U, and the value to the same place.' }, [
          [write(4, 4), 'too-many-digits'],
          [write(0, 1), 'too-few-digits'],
          [
            write(4, 2),
            'too-many-digits',
            'U is rounded as it should be; the value is to end at the same place.',
          ],
          [write(1, 2), 'too-few-digits', 'Value and uncertainty end at the same place.'],
        ]),
        worked: [
          `To two significant digits ${fixed('dB', 4)(wide)} is ${band('dB', 2)(wide)}; to the second decimal as well ${fixed('dBm', 4)(level)} is ${dbm2(level)}. So: ${answer}.`,
        ],
        right: 'Two digits of U, and the value to the same place; and k is stated with them.',
      };
    },
  }),
  numeric('verdicts', {
    id: 'compared-over-k',
    lesson: 'measuring/borrowing-a-calibration',
    difficulty: 3,
    given: { one: steps(0.2, 0.8, 0.1), second: steps(0.2, 0.8, 0.1), apart: steps(0.2, 1.4, 0.1) },
    suits: ({ one, second, apart }) => Math.abs(apart / Math.hypot(one, second) - 1) > 0.15 && one !== second,
    stem: ({ one, second, apart }) =>
      `Two independent results differ by ${given(apart, 'dB')}; their expanded uncertainties are ${given(one, 'dB')} and ${given(second, 'dB')} (k = 2). Divide the difference by its expanded uncertainty: up to one they agree. What comes out?`,
    answer: ({ one, second, apart }) =>
      normalisedError({ result: { value: apart, expanded: one }, reference: { value: 0, expanded: second } })
        .normalisedError,
    write: digits('none', 3),
    typed: { quantity: 'number', unit: 'none', tolerance: { of: 'share', size: 0.015 } },
    wrong: ({ one, second, apart }) => [
      [apart / (one + second), 'bands-must-touch'],
      [apart / Math.max(one, second), 'larger-only'],
      [
        (2 * apart) / Math.hypot(one, second),
        'k-left-out',
        'That divides by the standard uncertainty. The expanded one is twice as large.',
      ],
    ],
    worked: ({ one, second, apart }) => {
      const both = `${sig(uncertaintyOf([expanded(one), expanded(second)]) * 2, 4)}${'\u00a0'}dB`;
      return [
        `The difference has the expanded uncertainty √(${given(one)}² + ${given(second)}²) = ${both}.`,
        `The difference over that: ${given(apart, 'dB')}/${both} =`,
      ];
    },
    right: 'The difference over the root of the sum of the squares.',
  }),
  numeric('verdicts', {
    id: 'digits-in-brackets',
    lesson: writing,
    difficulty: 2,
    given: { level: steps(20.11, 29.93, 0.17), bracket: steps(12, 48, 1) },
    stem: ({ level, bracket }) =>
      `A report says ${fixed('none', 2)(level)}(${given(bracket)})${'\u00a0'}dBm. What standard uncertainty is that?`,
    answer: ({ bracket }) => bracket / 100,
    write: fixed('dB', 2),
    typed: { quantity: 'halfWidthDb', unit: 'dB', tolerance: { of: 'value', size: 0.004 } },
    wrong: ({ bracket }) => [
      [bracket / 10, 'brackets-misread'],
      [
        bracket,
        'brackets-misread',
        'Not whole decibels: the digits in brackets belong to the last places of the number.',
      ],
      [bracket / 200, 'k-twice', 'In brackets stands the standard uncertainty. There is nothing to divide.'],
    ],
    worked: ({ bracket }) => [
      `The number ends in hundredths, so what stands in brackets are hundredths too: ${given(bracket)}/100 =`,
    ],
    right: 'In the last places of the number before them.',
  }),
];
