import { estimateOf, expansionUm, lengthAtReference, remainingDifferenceK, stackModel } from '#compute';
import { example, type FormulaTopic, letter } from './formula.ts';

const lengthMm = letter('l', 'mm', 'length as measured');
const expansionPerK = letter('\\alpha', '1/K', 'linear coefficient of expansion');
const temperatureC = letter('t', '°C', 'temperature');
const bar = { lengthMm: 500.035, expansionPerK: 11.7e-6, temperatureC: 23.7 };
const exact = { form: 'limits', shape: 'rectangular', halfWidth: 0 } as const;

/** Gauge blocks and warmth. */
export const lengthFormulas = {
  expansionUm: {
    tex: '\\Delta l = l\\, \\alpha\\, (t - 20\\,^\\circ\\mathrm{C})',
    symbols: {
      lengthMm: letter('l', 'mm', 'length at 20 °C'),
      expansionPerK,
      temperatureC,
      result: letter('\\Delta l', 'µm', 'how much longer'),
    },
    words: 'How much longer a part is than at the reference temperature.',
    sources: [{ of: 'referenceTemperature' }, { of: 'gum', clause: 'H.1' }],
    example: example({ lengthMm: 100, expansionPerK: 11.5e-6, temperatureC: 23 }, expansionUm),
  },
  lengthAtReference: {
    tex: 'l_{20} = \\frac{l}{1 + \\alpha\\, (t - 20\\,^\\circ\\mathrm{C})}',
    symbols: { lengthMm, expansionPerK, temperatureC, result: letter('l_{20}', 'mm', 'length at 20 °C') },
    words: 'The length at the reference temperature of a part that was measured warm or cold.',
    sources: [{ of: 'referenceTemperature' }],
    example: example(bar, lengthAtReference),
  },
  remainingDifferenceK: {
    tex: '\\Delta = \\Delta_0\\, e^{-t/\\tau}',
    symbols: {
      differenceK: letter('\\Delta_0', 'K', 'difference of temperature at first'),
      minutes: letter('t', 'min', 'time on the plate'),
      timeConstantMinutes: letter('\\tau', 'min', 'time constant'),
      result: letter('\\Delta', 'K', 'what is left of it'),
    },
    words: 'What is left of the warmth of hands after a time on a plate.',
    sources: [{ of: 'derived', clause: 'law of cooling' }],
    example: example({ differenceK: 3, minutes: 20, timeConstantMinutes: 10 }, remainingDifferenceK),
  },
  stackModel: {
    tex: 'l - l_\\mathrm{n} = \\sum_i d_i + (n - 1)\\, f + \\alpha\\, (t - 20\\,^\\circ\\mathrm{C}) \\sum_i l_i',
    symbols: {
      blocks: letter('d_i', 'µm', 'deviations of the blocks from their nominal lengths'),
      filmUm: letter('f', 'µm', 'thickness of one wringing film'),
      temperatureC,
      expansionPerK,
      result: letter('l - l_\\mathrm{n}', 'µm', 'length of the stack less its nominal length'),
    },
    words:
      'The length of wrung gauge blocks at their temperature, as a sum to be evaluated with its uncertainty.',
    sources: [
      { of: 'gum', clause: 'H.1' },
      { of: 'commonPractice', clause: 'films' },
    ],
    example: example(
      { blocks: [0.1, -0.05], filmUm: 0.01, temperatureC: 21, expansionPerK: 11.5e-6 },
      (given) =>
        estimateOf(
          stackModel({
            blocks: given.blocks.map((deviationUm, i) => ({
              id: `${i}`,
              nominalMm: 25,
              deviationUm,
              statement: exact,
            })),
            filmUm: { value: given.filmUm, statement: exact },
            temperatureC: { value: given.temperatureC, statement: exact },
            expansionPerK: { value: given.expansionPerK, statement: exact },
          }),
        ),
    ),
  },
} as const satisfies FormulaTopic;
