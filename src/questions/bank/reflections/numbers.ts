import {
  directivityRange,
  gainDb,
  mismatchLimits,
  mismatchLossDb,
  netPower,
  ohms,
  powerW,
  reflectionOfPowers,
  reflectionOfResistance,
  reflectionOfReturnLoss,
  reflectionOfSwr,
  returnLossOfReflection,
  swrOfReflection,
} from '#compute';
import { deviationsText } from '../../../text/deviation-text.ts';
import { choices, numeric, other } from '../define.ts';
import { oneOf, steps } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { digits, fixed, given, sig } from '../write.ts';

const lesson = 'measuring/what-comes-back';
const inLine = 'measuring/in-line-meter';
const pads = 'measuring/pads-into-a-meter';
const swr2 = fixed('none', 2);
const db1 = fixed('dB', 1);
const back = (forward: number, reflected: number): number =>
  reflectionOfPowers({ forward: powerW(forward), reflected: powerW(reflected) });
const ofLoad = (load: number): number =>
  reflectionOfResistance({ resistance: ohms(load), reference: ohms(50) });

/** Reflections with drawn numbers. */
export const REFLECTION_NUMBERS: readonly BankQuestion[] = [
  numeric('reflections', {
    id: 'swr-of-powers',
    lesson,
    syllabus: ['6.3', '8.1'],
    difficulty: 2,
    given: { forward: oneOf(2, 4, 5, 8, 10, 20), tenths: steps(1, 15, 1) },
    suits: ({ forward, tenths }) => tenths / 10 / forward > 0.005 && tenths / 10 / forward < 0.2,
    stem: ({ forward, tenths }) =>
      `An in-line meter shows ${given(forward, 'W')} forward and ${given(tenths / 10, 'W')} reflected. What is the standing-wave ratio?`,
    answer: ({ forward, tenths }) => swrOfReflection(back(forward, tenths / 10)),
    write: swr2,
    typed: { quantity: 'number', unit: 'none', tolerance: { of: 'share', size: 0.015 } },
    wrong: ({ forward, tenths }) => [
      [swrOfReflection(tenths / 10 / forward), 'power-for-amplitude'],
      [(10 * forward) / tenths, 'swr-as-power-ratio'],
      [1 / swrOfReflection(back(forward, tenths / 10)), 'swr-inverted'],
    ],
    worked: ({ forward, tenths }) => {
      const coefficient = sig(back(forward, tenths / 10), 4);
      return [
        `The reflection coefficient is √(${given(tenths / 10, 'W')}/${given(forward, 'W')}) = ${coefficient}.`,
        `One plus it over one less it: (1 + ${coefficient})/(1 − ${coefficient}) =`,
      ];
    },
    right: 'The root of the ratio of powers first, then (1 + r)/(1 − r).',
  }),
  numeric('reflections', {
    id: 'swr-of-load',
    lesson,
    syllabus: ['6.3'],
    difficulty: 1,
    given: { load: oneOf(10, 12.5, 20, 25, 30, 35, 40, 62, 65, 75, 80, 85, 100, 120, 150, 200) },
    stem: ({ load }) =>
      `A ${given(50, 'ohm')} line ends in a plain resistor of ${given(load, 'ohm')}. What is the standing-wave ratio on it?`,
    answer: ({ load }) => swrOfReflection(ofLoad(load)),
    write: swr2,
    wrong: ({ load }) => [
      [Math.min(load / 50, 50 / load), 'swr-inverted'],
      [
        1 + ofLoad(load),
        'amplitude-for-power',
        'That is one plus the reflection coefficient. Below the line belongs one less it.',
      ],
      [
        Math.max(load / 50, 50 / load) ** 2,
        'swr-as-power-ratio',
        'The ratio of the resistances is the ratio of the volts already: it is not squared.',
      ],
    ],
    worked: ({ load }) => [
      `For a plain resistance it is the larger over the smaller: ${given(Math.max(load, 50), 'ohm')}/${given(Math.min(load, 50), 'ohm')} =`,
    ],
    right: 'The larger resistance over the smaller.',
  }),
  numeric('reflections', {
    id: 'reflected-share-of-swr',
    lesson,
    syllabus: ['6.3'],
    difficulty: 2,
    given: { swr: oneOf(1.3, 1.4, 1.5, 1.7, 2, 2.2, 2.5, 3, 3.5, 4, 5) },
    stem: ({ swr }) =>
      `At a load the standing-wave ratio is ${given(swr)}. What share of the power comes back from it?`,
    answer: ({ swr }) => 100 * reflectionOfSwr(swr) ** 2,
    write: digits('percent', 3),
    wrong: ({ swr }) => [
      [100 * reflectionOfSwr(swr), 'amplitude-for-power'],
      [
        100 * (1 - 1 / swr),
        'reflected-is-lost',
        'That takes the ratio as if it divided the power. It compares volts along the line.',
      ],
      [
        100 * (1 - reflectionOfSwr(swr) ** 2),
        'lost-for-left',
        'That is what the load takes. Asked is what comes back.',
      ],
    ],
    worked: ({ swr }) => [
      `The reflection coefficient is (${given(swr)} − 1)/(${given(swr)} + 1) = ${sig(reflectionOfSwr(swr), 4)}.`,
      `Its square is the share of power: ${sig(reflectionOfSwr(swr), 4)}² =`,
    ],
    right: 'The coefficient is of volts; squared it is the share of power.',
  }),
  numeric('reflections', {
    id: 'mismatch-loss-of-swr',
    lesson,
    syllabus: ['6.3'],
    difficulty: 3,
    given: { swr: oneOf(1.4, 1.5, 1.6, 1.7, 1.8, 2, 2.2, 2.5, 2.8, 3) },
    stem: ({ swr }) =>
      `How many decibels does a load of standing-wave ratio ${given(swr)} take less than a matched one, of the power that arrives at it?`,
    answer: ({ swr }) => mismatchLossDb(reflectionOfSwr(swr)),
    write: fixed('dB', 2),
    wrong: ({ swr }) => [
      [
        10 * Math.log10(swr),
        'reflected-is-lost',
        'That takes the ratio as if it divided the power. It compares volts along the line.',
      ],
      [-10 * Math.log10(1 - reflectionOfSwr(swr)), 'amplitude-for-power'],
      [2 * mismatchLossDb(reflectionOfSwr(swr)), 'twenty-for-ten'],
    ],
    worked: ({ swr }) => {
      const coefficient = reflectionOfSwr(swr);
      return [
        `The reflection coefficient is (${given(swr)} − 1)/(${given(swr)} + 1) = ${sig(coefficient, 4)}, and 1 − ${sig(coefficient, 4)}² = ${sig(1 - coefficient ** 2, 4)} of the power stays.`,
        `In decibels the loss is −10 lg ${sig(1 - coefficient ** 2, 4)} =`,
      ];
    },
    right: 'Less than most people expect.',
  }),
  numeric('reflections', {
    id: 'return-loss-to-percent',
    lesson,
    syllabus: ['6.3'],
    difficulty: 2,
    given: { loss: steps(8, 28, 1) },
    suits: ({ loss }) => loss !== 10,
    stem: ({ loss }) =>
      `An antenna has a return loss of ${given(loss, 'dB')}. What share of the power comes back?`,
    answer: ({ loss }) => 100 * reflectionOfReturnLoss(loss) ** 2,
    write: digits('percent', 3),
    wrong: ({ loss }) => [
      [
        100 * reflectionOfReturnLoss(loss),
        'amplitude-for-power',
        'That is the reflection coefficient, a ratio of volts. The share of power is its square.',
      ],
      [100 / loss, 'db-as-factor'],
      [
        100 - 100 * reflectionOfReturnLoss(loss) ** 2,
        'lost-for-left',
        'That share stays in the antenna. A large return loss means that little comes back.',
      ],
    ],
    worked: ({ loss }) => [
      `Ten to the power of −${given(loss)}/10 is ${sig(reflectionOfReturnLoss(loss) ** 2)}, or`,
    ],
    right: 'A return loss compares powers: ten in the exponent.',
  }),
  numeric('reflections', {
    id: 'return-loss-of-powers',
    lesson,
    syllabus: ['6.3', '8.1'],
    difficulty: 2,
    given: { forward: oneOf(1, 2, 2.5, 4, 5, 10, 20), milli: oneOf(5, 8, 12, 20, 30, 40, 50, 80, 120) },
    stem: ({ forward, milli }) =>
      `Forward power ${given(forward, 'W')}, reflected power ${given(milli, 'mW')}. What is the return loss?`,
    answer: ({ forward, milli }) => returnLossOfReflection(back(forward, milli / 1000)),
    write: db1,
    typed: { quantity: 'loss', unit: 'dB', tolerance: { of: 'value', size: 0.1 } },
    wrong: ({ forward, milli }) => [
      [2 * returnLossOfReflection(back(forward, milli / 1000)), 'twenty-for-ten'],
      [returnLossOfReflection(back(forward, milli / 1000)) - 30, 'prefix-slip'],
      [
        returnLossOfReflection(back(forward, milli / 1000)) / 2,
        'return-loss-ten',
        'That is ten times the logarithm of the reflection coefficient. Of the powers themselves it is ten times, without a root.',
      ],
    ],
    worked: ({ forward, milli }) => [
      `${given(forward, 'W')}/${given(milli, 'mW')} = ${sig((1000 * forward) / milli, 4)}.`,
      `10 lg ${sig((1000 * forward) / milli, 4)} =`,
    ],
    right: 'Forward over reflected, ten times the logarithm.',
  }),
  numeric('reflections', {
    id: 'swr-of-return-loss',
    lesson,
    syllabus: ['6.3'],
    difficulty: 3,
    given: { loss: steps(9, 30, 1) },
    stem: ({ loss }) => `A return loss of ${given(loss, 'dB')}: which standing-wave ratio is that?`,
    answer: ({ loss }) => swrOfReflection(reflectionOfReturnLoss(loss)),
    write: swr2,
    wrong: ({ loss }) => [
      [swrOfReflection(reflectionOfReturnLoss(loss) ** 2), 'power-for-amplitude'],
      [
        1 + reflectionOfReturnLoss(loss),
        'amplitude-for-power',
        'That leaves out what stands below the line: one less the coefficient.',
      ],
      [
        swrOfReflection(reflectionOfReturnLoss(loss / 2)),
        'return-loss-ten',
        'That makes the coefficient larger than it is: the return loss is twenty times its logarithm.',
      ],
    ],
    suits: ({ loss }) => loss < 24,
    worked: ({ loss }) => {
      const coefficient = sig(reflectionOfReturnLoss(loss), 4);
      return [
        `The reflection coefficient: ten to the power of −${given(loss)}/20 is ${coefficient}.`,
        `One plus it over one less it: (1 + ${coefficient})/(1 − ${coefficient}) =`,
      ];
    },
    right: 'Twenty in the exponent for the coefficient, then (1 + r)/(1 − r).',
  }),
  numeric('reflections', {
    id: 'net-power',
    lesson: inLine,
    syllabus: ['6.3', '8.1'],
    difficulty: 1,
    given: { forward: steps(3, 12, 0.5), reflected: steps(0.2, 1.4, 0.1) },
    stem: ({ forward, reflected }) =>
      `An in-line meter shows ${given(forward, 'W')} forward and ${given(reflected, 'W')} reflected. How much power stays beyond it?`,
    answer: ({ forward, reflected }) => netPower({ forward: powerW(forward), reflected: powerW(reflected) }),
    write: fixed('W', 2),
    wrong: ({ forward, reflected }) => [
      [forward, 'forward-is-net'],
      [forward + reflected, 'sum-for-net'],
      [
        forward - Math.sqrt(forward * reflected),
        'power-for-amplitude',
        'That mixes volts and watts. Powers are simply subtracted.',
      ],
    ],
    worked: ({ forward, reflected }) => [
      `What went forward, less what came back: ${given(forward, 'W')} − ${given(reflected, 'W')} =`,
    ],
    right: 'Forward less reflected.',
  }),
  numeric('reflections', {
    id: 'reflection-coefficient-of-load',
    lesson,
    syllabus: ['6.3'],
    difficulty: 2,
    given: { load: oneOf(20, 25, 30, 35, 40, 60, 65, 70, 75, 80, 90, 100, 120, 150, 200) },
    stem: ({ load }) =>
      `A ${given(50, 'ohm')} line ends in ${given(load, 'ohm')}. What is the magnitude of the reflection coefficient?`,
    answer: ({ load }) => ofLoad(load),
    write: fixed('none', 3),
    typed: { quantity: 'number', unit: 'none', tolerance: { of: 'share', size: 0.015 } },
    wrong: ({ load }) => [
      [
        ofLoad(load) ** 2,
        'power-for-amplitude',
        'That is the share of power. The coefficient is of volts, its root.',
      ],
      [
        Math.abs(load - 50) / 50,
        'swr-as-difference',
        'Below the line belongs the sum of the two resistances.',
      ],
      [
        swrOfReflection(ofLoad(load)),
        'swr-as-power-ratio',
        'That is the standing-wave ratio. The magnitude of the coefficient lies between nought and one.',
      ],
    ],
    worked: ({ load }) => [
      `The difference over the sum, without its sign: (${given(Math.max(load, 50), 'ohm')} − ${given(Math.min(load, 50), 'ohm')})/(${given(load, 'ohm')} + ${given(50, 'ohm')}) =`,
    ],
    right: 'Difference over sum.',
  }),
  other('reflections', 'choice', {
    id: 'mismatch-limits',
    lesson: pads,
    difficulty: 3,
    given: { source: oneOf(1.5, 1.8, 2, 2.5, 3), load: oneOf(1.15, 1.2, 1.25, 1.3, 1.4) },
    make: ({ source, load }) => {
      const [rs, rl] = [reflectionOfSwr(source), reflectionOfSwr(load)];
      const both = mismatchLimits({ source: rs, load: rl });
      const write = (lower: number, upper: number): string =>
        deviationsText('shown', { lower, upper, decimals: 2, unit: 'dB' });
      const answer = write(both.lower, both.upper);
      return {
        stem: `A transmitter of standing-wave ratio ${given(source)} feeds a meter of ${given(load)}; nobody knows the phases. Between which limits does the correction for their mismatch lie?`,
        payload: choices(
          { text: answer, reply: 'The product of the two coefficients, in volts, added or taken off.' },
          [
            [
              write(both.lower / 2, both.upper / 2),
              'return-loss-ten',
              'Twice as much: the product of two coefficients is of volts, and takes twenty times the logarithm.',
            ],
            [
              write(20 * Math.log10(1 - rs), 20 * Math.log10(1 + rs)),
              'largest-uncertainty',
              'That is the transmitter’s reflection alone. What the meter does not send back cannot be reflected again: take the product.',
            ],
            [
              write(20 * Math.log10(1 - rs - rl), 20 * Math.log10(1 + rs + rl)),
              'factors-added',
              'A wave that is reflected twice is made smaller twice: the coefficients multiply.',
            ],
          ],
        ),
        worked: [
          `The coefficients are (${given(source)} − 1)/(${given(source)} + 1) = ${sig(rs, 4)} and (${given(load)} − 1)/(${given(load)} + 1) = ${sig(rl, 4)}; their product is ${sig(rs, 4)} × ${sig(rl, 4)} = ${sig(rs * rl)}.`,
          `20 lg (1 ± ${sig(rs * rl)}) = ${answer}.`,
        ],
        right: 'The product of the two coefficients, in volts, added or taken off.',
      };
    },
  }),
  other('reflections', 'choice', {
    id: 'directivity',
    lesson: inLine,
    difficulty: 3,
    given: { swr: oneOf(1.3, 1.4, 1.5, 1.6, 1.8, 2), directivity: oneOf(18, 20, 25) },
    make: ({ swr, directivity }) => {
      const r = reflectionOfSwr(swr);
      const range = (leak: number): string => {
        const [low, high] = [Math.max(0, r - leak), r + leak];
        return `${swr2(swrOfReflection(low))} to ${swr2(swrOfReflection(high))}`;
      };
      const held = directivityRange({ reflection: r, directivityDb: gainDb(directivity) });
      const answer = `${swr2(swrOfReflection(held.lower))} to ${swr2(swrOfReflection(held.upper))}`;
      const leak = 10 ** (-directivity / 20);
      return {
        stem: `A coupler of ${given(directivity, 'dB')} directivity shows a standing-wave ratio of ${given(swr)}. Where can the true one lie?`,
        payload: choices({ text: answer, reply: 'The leak is a wave of its own, with any phase.' }, [
          [
            range(leak * leak),
            'power-for-amplitude',
            'Directivity is stated in decibels of power; the leak adds as a voltage, with twenty in the exponent.',
          ],
          [
            `1.00 to ${swr2(swrOfReflection(Math.min(0.9, r + leak)))}`,
            'mismatch-known',
            'Downwards it cannot hide more than its own size.',
          ],
          [
            `${swr2(swr)} to ${swr2(swrOfReflection(r + leak))}`,
            'mismatch-known',
            'The leak may also work against the reflection, so that less is shown than there is, or with it.',
          ],
        ]),
        worked: [
          `The leak: ten to the power of −${given(directivity)}/20 is ${sig(leak, 4)}. The coefficient shown: (${given(swr)} − 1)/(${given(swr)} + 1) = ${sig(r, 4)}.`,
          `At least ${sig(r, 4)} − ${sig(leak, 4)} = ${fixed('none', 4)(held.lower)}, at most ${sig(r, 4)} + ${sig(leak, 4)} = ${fixed('none', 4)(held.upper)}.`,
          `As standing-wave ratios: (1 + ${fixed('none', 4)(held.lower)})/(1 − ${fixed('none', 4)(held.lower)}) = ${swr2(swrOfReflection(held.lower))} and (1 + ${fixed('none', 4)(held.upper)})/(1 − ${fixed('none', 4)(held.upper)}) = ${swr2(swrOfReflection(held.upper))}, so ${answer}.`,
        ],
        right: 'The leak is a wave of its own, with any phase.',
      };
    },
    suits: ({ swr, directivity }) => reflectionOfSwr(swr) - 10 ** (-directivity / 20) > 0.02,
  }),
];
