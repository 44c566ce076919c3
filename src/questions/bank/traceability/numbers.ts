import {
  addGain,
  chargesPerSecond,
  correctionOf,
  expansionUm,
  gainDb,
  levelDbm,
  levelDifference,
  readCorrectionTable,
} from '#compute';
import { powerOfTenText } from '../../../text/power-of-ten-text.ts';
import { expanded, limits, standard, uncertaintyOf } from '../bands/sum.ts';
import { numeric } from '../define.ts';
import { oneOf, steps } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { change, exactly, fixed, given, givenBand, sig, takenOff } from '../write.ts';

const changes = 'traceability/calibration-changes-nothing';
const chain = 'traceability/the-chain-to-the-definition';
const borrow = 'measuring/borrowing-a-calibration';
const pads = 'measuring/pads-into-a-meter';
const dbm2 = fixed('dBm', 2);
const two = (value: number): number => Number(value.toPrecision(8));
const error = (shown: number, reference: number): number =>
  levelDifference({ level: levelDbm(shown), reference: levelDbm(reference) });

/** Calibration and traceability with drawn numbers. */
export const TRACE_NUMBERS: readonly BankQuestion[] = [
  numeric('traceability', {
    id: 'error-of-meter',
    lesson: changes,
    syllabus: ['8.1'],
    difficulty: 1,
    given: { reference: steps(5, 20, 0.5), off: steps(-90, 90, 5) },
    suits: ({ off }) => Math.abs(off) > 10,
    stem: ({ reference, off }) =>
      `A reference source gives ${fixed('dBm', 2)(reference)}, your meter shows ${dbm2(reference + off / 100)}. What is the error of your meter there?`,
    answer: ({ reference, off }) => error(two(reference + off / 100), reference),
    write: change('dB', 2),
    wrong: ({ reference, off }) => [
      [
        -off / 100,
        'correction-sign',
        'That is the correction. The error is what is shown, less the reference.',
      ],
      [off / 200, 'halved-difference', 'An error is the whole difference.'],
      [
        reference + off / 100,
        'word-mixed-up',
        'That is the indication. The error is its difference from the reference.',
      ],
    ],
    worked: ({ reference, off }) => [
      `Shown less reference: ${dbm2(reference + off / 100)} − ${dbm2(reference)} =`,
    ],
    right: 'Indication less reference, with its sign.',
  }),
  numeric('traceability', {
    id: 'correction',
    lesson: borrow,
    difficulty: 2,
    given: { lent: steps(5, 20, 0.05), off: steps(-95, 95, 5) },
    suits: ({ off }) => Math.abs(off) > 10,
    stem: ({ lent, off }) =>
      `On the same stable source the lent meter shows ${dbm2(lent)} and yours ${dbm2(lent + off / 100)}. What correction belongs to your readings?`,
    answer: ({ lent, off }) =>
      correctionOf([{ before: lent, own: two(lent + off / 100), after: lent }]).correction,
    write: change('dB', 2),
    typed: { quantity: 'gain', unit: 'dB', tolerance: { of: 'value', size: 0.011 } },
    wrong: ({ off }) => [
      [off / 100, 'correction-sign'],
      [
        -off / 200,
        'halved-difference',
        'Half of it would be to meet in the middle. The lent meter is the reference.',
      ],
      [0, 'correction-ignored'],
    ],
    worked: ({ lent, off }) => [`Reference less yours: ${dbm2(lent)} − ${dbm2(lent + off / 100)} =`],
    right: 'Reference less indication, to be added to the reading.',
  }),
  numeric('traceability', {
    id: 'apply-correction',
    lesson: changes,
    difficulty: 2,
    given: { shown: steps(5, 25, 0.1), correction: steps(-0.9, 0.9, 0.1) },
    suits: ({ correction }) => Math.abs(correction) > 0.15,
    stem: ({ shown, correction }) =>
      `The certificate gives a correction of ${change('dB', 1)(correction)}. Your meter shows ${fixed('dBm', 1)(shown)}. What is the corrected level?`,
    answer: ({ shown, correction }) => addGain({ level: levelDbm(shown), gain: gainDb(correction) }),
    write: fixed('dBm', 1),
    wrong: ({ shown, correction }) => [
      [shown - correction, 'correction-sign'],
      [shown, 'correction-ignored'],
      [shown + 2 * correction, 'link-twice', 'It is added once.'],
    ],
    worked: ({ shown, correction }) => [
      `A correction is added, with its sign: ${given(shown, 'dBm')} + (${change('dB', 1)(correction)}) =`,
    ],
    right: 'Added to the reading, with its sign.',
  }),
  numeric('traceability', {
    id: 'drift-between',
    lesson: borrow,
    difficulty: 3,
    given: { before: steps(8, 14, 0.1), drift: steps(-40, 40, 4), off: steps(-60, 60, 5) },
    suits: ({ drift, off }) => Math.abs(drift) > 10 && Math.abs(off) > 10,
    stem: ({ before, drift, off }) =>
      `A source drifts a little. The lent meter shows ${dbm2(before)}, then yours ${dbm2(before + off / 100)}, then the lent one again ${dbm2(before + drift / 100)}, at equal intervals. What correction follows for yours?`,
    answer: ({ before, drift, off }) =>
      correctionOf([{ before, own: two(before + off / 100), after: two(before + drift / 100) }]).correction,
    write: change('dB', 2),
    wrong: ({ drift, off }) => [
      [
        -off / 100,
        'drift-ignored',
        'That compares with the first reading alone. When yours was read, the source had moved.',
      ],
      [
        drift / 100 - off / 100,
        'drift-ignored',
        'That compares with the last reading alone. When yours was read, the source had moved only half as far.',
      ],
      [off / 100 - drift / 200, 'correction-sign'],
    ],
    worked: ({ before, drift, off }) => [
      `In the middle the lent meter would have shown (${dbm2(before)} + ${dbm2(before + drift / 100)})/2 = ${fixed('dBm', 3)(before + drift / 200)}.`,
      `Less what yours shows: ${fixed('dBm', 3)(before + drift / 200)} − ${dbm2(before + off / 100)} =`,
    ],
    right: 'The mean of before and after, less yours.',
  }),
  numeric('traceability', {
    id: 'uncertainty-of-correction',
    lesson: borrow,
    difficulty: 3,
    given: {
      lender: steps(0.16, 0.4, 0.04),
      s: oneOf(0.04, 0.06, 0.08, 0.1),
      n: oneOf(3, 4, 5),
      drift: oneOf(0.05, 0.1, 0.15, 0.2),
    },
    stem: ({ lender, s, n, drift }) =>
      `The lent meter has U = ${given(lender, 'dB')} (k = 2). ${given(n)} rounds scatter with a standard deviation of ${given(s, 'dB')}; the drift is within ${givenBand(drift, 'dB')}. What is the expanded uncertainty (k = 2) of the mean correction?`,
    answer: ({ lender, s, n, drift }) =>
      2 *
      uncertaintyOf([expanded(lender), { form: 'readings', standardDeviation: s, count: n }, limits(drift)]),
    write: fixed('dB', 3),
    wrong: ({ lender, s, n, drift }) => {
      const own = Math.hypot(s / Math.sqrt(n), drift / Math.sqrt(3));
      return [
        [lender, 'lender-only'],
        [
          2 * own,
          'better-than-lender',
          'The lender’s uncertainty is missing. It comes along with every comparison.',
        ],
        [2 * Math.hypot(lender, own), 'k-left-out'],
        [Math.hypot(lender / 2, own), 'k-forgotten'],
      ];
    },
    worked: ({ lender, s, n, drift }) => {
      const [one, two, three] = [lender / 2, s / Math.sqrt(n), drift / Math.sqrt(3)].map(fixed('dB', 4));
      return [
        `As standard uncertainties: ${given(lender, 'dB')}/2 = ${one}, ${given(s, 'dB')}/√${given(n)} = ${two}, and ${given(drift, 'dB')}/√3 = ${three}.`,
        `Two times the root of the sum of their squares: 2 × √((${one})² + (${two})² + (${three})²) =`,
      ];
    },
    right: 'The lender’s, and what you have added yourself.',
  }),
  numeric('traceability', {
    id: 'down-the-chain',
    lesson: chain,
    difficulty: 2,
    given: {
      laboratory: oneOf(0.05, 0.06, 0.08),
      lent: oneOf(0.15, 0.2, 0.25),
      own: oneOf(0.3, 0.35, 0.4, 0.5),
    },
    stem: ({ laboratory, lent, own }) =>
      `Each comparison adds its own expanded uncertainty (k = 2, independent): the laboratory ${given(laboratory, 'dB')}, the lent meter against it ${given(lent, 'dB')}, your meter against that ${given(own, 'dB')}. What has your meter in the end?`,
    answer: ({ laboratory, lent, own }) =>
      2 * uncertaintyOf([expanded(laboratory), expanded(lent), expanded(own)]),
    write: fixed('dB', 3),
    wrong: ({ laboratory, lent, own }) => [
      [
        laboratory + lent + own,
        'worst-for-rss',
        'That is more than can be expected of independent comparisons: they combine at right angles.',
      ],
      [
        laboratory,
        'chain-gets-better',
        'That is the laboratory’s. Your meter is two comparisons further down.',
      ],
      [own, 'largest-uncertainty'],
    ],
    worked: ({ laboratory, lent, own }) => [
      `Independent, so the squares add: √(${given(laboratory)}² + ${given(lent)}² + ${given(own)}²) =`,
    ],
    right: 'It grows at every comparison, and the last one leads.',
  }),
  numeric('traceability', {
    id: 'calibrated-pad',
    lesson: pads,
    syllabus: ['1.9'],
    difficulty: 2,
    given: { nominal: oneOf(10, 20, 30), off: steps(-45, 45, 3), shown: steps(-8, 8, 0.1) },
    suits: ({ off }) => Math.abs(off) > 10,
    stem: ({ nominal, off, shown }) =>
      `On a pad is printed ${given(nominal, 'dB')}; its certificate says ${fixed('dB', 2)(nominal + off / 100)} at your frequency. Behind it the meter shows ${dbm2(shown)}. What level is before it?`,
    answer: ({ nominal, off, shown }) =>
      addGain({ level: levelDbm(shown), gain: gainDb(nominal + off / 100) }),
    write: dbm2,
    typed: { quantity: 'level', unit: 'dBm', tolerance: { of: 'value', size: 0.02 } },
    wrong: ({ nominal, off, shown }) => [
      [
        shown + nominal,
        'correction-ignored',
        'That is with the printed value. What was measured is better known.',
      ],
      [
        shown + nominal - off / 100,
        'correction-sign',
        'The certificate gives the attenuation itself: put it in the place of the printed one.',
      ],
      [shown - nominal - off / 100, 'sign-of-loss', 'Going back through the pad, its attenuation is added.'],
    ],
    worked: ({ nominal, off, shown }) => [
      `The pad takes what its certificate says: ${dbm2(shown)} + ${fixed('dB', 2)(nominal + off / 100)} =`,
    ],
    right: 'The measured attenuation, not the printed one.',
  }),
  numeric('traceability', {
    id: 'as-found',
    lesson: changes,
    difficulty: 3,
    given: { earlier: steps(15, 30, 0.1), found: steps(-0.8, 0.8, 0.1), left: steps(-0.1, 0.1, 0.1) },
    suits: ({ found, left }) => Math.abs(found) > 0.25 && Math.abs(left) > 0.05,
    stem: ({ earlier, found, left }) =>
      `As found, a meter’s error was ${change('dB', 1)(found)}; then it was adjusted, and as left its error is ${change('dB', 1)(left)}. Last week, before that, it showed ${fixed('dBm', 1)(earlier)}. What was the level, as far as can be said now?`,
    answer: ({ earlier, found }) => earlier - found,
    write: fixed('dBm', 1),
    wrong: ({ earlier, found, left }) => [
      [earlier + found, 'correction-sign', 'An error is taken off; it is the correction that is added.'],
      [
        earlier - left,
        'calibrated-is-adjusted',
        'The error as left is for readings from now on. Last week it was as found.',
      ],
      [earlier, 'correction-ignored'],
    ],
    worked: ({ earlier, found }) => [
      `The reading was taken with the error as found, which comes off: ${fixed('dBm', 1)(earlier)} − (${change('dB', 1)(found)}) =`,
    ],
    right: 'What was found belongs to the readings before the adjustment.',
  }),
  numeric('traceability', {
    id: 'between-two-lines',
    lesson: borrow,
    difficulty: 2,
    given: { low: steps(-0.6, 0.6, 0.1), high: steps(-0.6, 0.6, 0.1), at: oneOf(2, 3, 4, 6, 7, 8) },
    suits: ({ low, high }) => Math.abs(high - low) > 0.25,
    stem: ({ low, high, at }) =>
      `A certificate gives a correction of ${change('dB', 1)(low)} at ${given(0, 'dBm')} and ${change('dB', 1)(high)} at ${given(10, 'dBm')}. Which one do you take for a reading of ${given(at, 'dBm')}, on the straight line between them?`,
    answer: ({ low, high, at }) =>
      readCorrectionTable({
        points: [
          { at: 0, correction: low, expanded: 0.2 },
          { at: 10, correction: high, expanded: 0.2 },
        ],
        at,
      }).correction,
    write: change('dB', 2),
    wrong: ({ low, high, at }) => [
      [
        high + ((low - high) * at) / 10,
        'wrong-end',
        'That counts from the wrong end: nearer to nought means nearer to the first value.',
      ],
      [
        (low + high) / 2,
        'middle-taken',
        'That is the middle of the two. The reading does not lie in the middle.',
      ],
      [
        at < 5 ? low : high,
        'nearest-line',
        'That takes the nearer line. Between two lines you can do better.',
      ],
    ],
    worked: ({ low, high, at }) => [
      `${given(at)}/10 of the way: ${change('dB', 1)(low)} + ${given(at)}/10 × (${fixed('dB', 1)(high)} − ${takenOff(change('dB', 1)(low))}) =`,
    ],
    right: 'In proportion to the way between the two lines.',
  }),
  numeric('traceability', {
    id: 'steel-at-room-warmth',
    lesson: 'traceability/blocks-and-warm-hands',
    difficulty: 2,
    given: {
      length: oneOf(40, 50, 60, 75, 80, 100, 125, 150),
      room: oneOf(17, 18, 22, 23, 24, 25, 26, 27, 28),
    },
    stem: ({ length, room }) =>
      `A steel block of ${given(length, 'mm')} at ${given(20, 'degC')} grows by ${given(11.5, 'ppm')} in each kelvin. By how much does its length differ at ${given(room, 'degC')}?`,
    answer: ({ length, room }) =>
      expansionUm({ lengthMm: length, expansionPerK: 11.5e-6, temperatureC: room }),
    write: change('um', 2),
    wrong: ({ length, room }) => [
      [
        expansionUm({ lengthMm: length, expansionPerK: 11.5e-6, temperatureC: room + 20 }),
        'from-nought',
        'That takes the temperature itself. What counts is how far it lies from 20 °C, where lengths are stated.',
      ],
      [
        -expansionUm({ lengthMm: length, expansionPerK: 11.5e-6, temperatureC: room }),
        'sign-mistaken',
        'The sign is turned round: steel that is warmer is longer.',
      ],
      [
        expansionUm({ lengthMm: length, expansionPerK: 11.5e-6, temperatureC: room }) / 10,
        'one-step-short',
        'That is a tenth of it: count the powers of ten again. A part in a million of a millimetre is a nanometre.',
      ],
    ],
    worked: ({ length, room }) => [
      `Length times coefficient times difference: ${given(length, 'mm')} × ${given(11.5)} × 10⁻⁶ × (${given(room)} − 20) =`,
    ],
    right: 'Length, times growth, times how far from twenty degrees.',
  }),
  numeric('traceability', {
    id: 'charges-in-ampere',
    lesson: 'traceability/what-a-watt-is-made-of',
    syllabus: ['1.1'],
    difficulty: 3,
    given: { milliamperes: oneOf(20, 50, 80, 100, 120, 150, 200, 250, 300, 400, 500, 800) },
    stem: ({ milliamperes }) =>
      `The elementary charge is 1.602 × 10⁻¹⁹ coulombs. How many of them pass in a second, with ${given(milliamperes, 'mA')}?`,
    answer: ({ milliamperes }) => chargesPerSecond(milliamperes / 1000),
    write: (value) => powerOfTenText('shown', { value, digits: 3 }),
    wrong: ({ milliamperes }) => [
      [1000 * chargesPerSecond(milliamperes / 1000), 'prefix-slip'],
      [
        chargesPerSecond(1) / (milliamperes / 1000),
        'upside-down',
        'More current means more charges: it stands above the line.',
      ],
      [
        (milliamperes / 1000) * 1.602176634e19,
        'upside-down',
        'That multiplies by the charge, with another sign in the exponent. Divide by it.',
      ],
    ],
    suits: ({ milliamperes }) => milliamperes !== 1000,
    worked: ({ milliamperes }) => [
      `An ampere is a coulomb in a second: ${given(milliamperes, 'mA')} is ${exactly(milliamperes / 1000, 'A')}, and ${exactly(milliamperes / 1000)}/(1.602 × 10⁻¹⁹) =`,
    ],
    right: 'Current over the charge of one.',
  }),
  numeric('traceability', {
    id: 'good-enough-reference',
    lesson: borrow,
    difficulty: 3,
    given: { own: oneOf(0.24, 0.36, 0.48, 0.6, 0.72), share: oneOf(2, 3, 4) },
    stem: ({ own, share }) =>
      `All but the reference brings ${given(own, 'dB')} of standard uncertainty. The reference brings ${given(two(own / share), 'dB')}. By how much, in per cent, does the reference enlarge the whole?`,
    answer: ({ own, share }) => 100 * (uncertaintyOf([standard(own), standard(own / share)]) / own - 1),
    write: fixed('percent', 1),
    wrong: ({ share }) => [
      [
        100 / share,
        'independent-as-correlated',
        'That would be the plain sum. At right angles a small part hardly shows.',
      ],
      [
        100 / share ** 2,
        'root-of-count-only',
        'That is by how much the square grows. The root of it grows about half as much.',
      ],
      [
        100 / (2 * share),
        'independent-as-correlated',
        'Half of its share would still be far too much: its square counts.',
      ],
    ],
    worked: ({ own, share }) => {
      const whole = `${sig(uncertaintyOf([standard(own), standard(own / share)]), 4)}${'\u00a0'}dB`;
      return [
        `Both together: √(${given(own)}² + ${given(two(own / share))}²) = ${whole}.`,
        `Compared with ${given(own, 'dB')} that is more by (${whole} − ${given(own, 'dB')})/${given(own, 'dB')} =`,
      ];
    },
    right: 'Little: that is why a reference a few times better is good enough.',
  }),
];
