import {
  cableLossDb,
  combinedBandwidth,
  gaussianLossDb,
  riseTimeS,
  shuntCapacitanceLossDb,
  singlePoleLossDb,
} from '#compute';
import { example, type FormulaTopic, letter } from './formula.ts';

const ratio = letter('x', '1', 'frequency over bandwidth');
const lowPass = [{ of: 'derived', clause: 'low-pass of first order' }] as const;

/** What bandwidth, cable and capacitance take on the way. */
export const rollOffFormulas = {
  combinedBandwidth: {
    tex: 'B = \\frac{1}{\\sqrt{\\sum_i B_i^{-2}}}',
    symbols: {
      bandwidthsHz: letter('B_i', 'Hz', 'bandwidths of oscilloscope and probe'),
      result: letter('B', 'Hz', 'bandwidth of both together'),
    },
    words: 'The bandwidth of several parts in a row.',
    sources: [{ of: 'commonPractice', clause: 'rise times add as squares' }],
    example: example({ bandwidthsHz: [100e6, 150e6] }, (given) => combinedBandwidth(given.bandwidthsHz)),
  },
  singlePoleLossDb: {
    tex: 'a = 10 \\lg \\left( 1 + x^2 \\right)',
    symbols: { ratio, result: letter('a', 'dB', 'how much too little is shown') },
    words: 'How much a single-pole front end shows too little.',
    sources: lowPass,
    example: example({ ratio: 0.3 }, (given) => singlePoleLossDb(given.ratio)),
  },
  gaussianLossDb: {
    tex: 'a = 10 \\lg(2)\\, x^2',
    symbols: { ratio, result: letter('a', 'dB', 'how much too little is shown') },
    words: 'How much a Gaussian front end shows too little.',
    sources: [{ of: 'derived', clause: 'Gaussian amplitude response' }],
    example: example({ ratio: 0.3 }, (given) => gaussianLossDb(given.ratio)),
  },
  riseTimeS: {
    tex: 't_\\mathrm{r} = \\frac{\\ln 9}{2 \\pi B}',
    symbols: {
      bandwidthHz: letter('B', 'Hz', 'bandwidth'),
      result: letter('t_\\mathrm{r}', 's', 'rise time from 10 to 90 percent'),
    },
    words: 'The rise time of a single-pole front end.',
    sources: lowPass,
    example: example({ bandwidthHz: 100e6 }, (given) => riseTimeS(given.bandwidthHz)),
  },
  cableLossDb: {
    tex: 'a = k_1 \\sqrt f + k_2 f',
    symbols: {
      frequencyHz: letter('f', 'Hz', 'frequency'),
      result: letter('a', 'dB', 'loss of the length that the table is for'),
    },
    words: 'Loss of a cable between and beyond two entries of a table, which fix both coefficients.',
    sources: [{ of: 'derived', clause: 'skin effect and dielectric loss' }],
    example: example({ frequencyHz: 14e6 }, (given) =>
      cableLossDb({
        known: [
          { frequencyHz: 30e6, lossDb: 2.47 },
          { frequencyHz: 150e6, lossDb: 5.63 },
        ],
        ...given,
      }),
    ),
  },
  shuntCapacitanceLossDb: {
    tex: 'a = 10 \\lg \\left( 1 + \\left( 2 \\pi f C \\tfrac{R}{2} \\right)^2 \\right)',
    symbols: {
      capacitanceF: letter('C', 'F', 'capacitance across the line'),
      frequencyHz: letter('f', 'Hz', 'frequency'),
      resistanceOhm: letter('R', 'Ω', 'resistance of source and of load'),
      result: letter('a', 'dB', 'what the load gets less'),
    },
    words: 'What a capacitance across a line, such as a probe or open cable, takes from the load.',
    sources: lowPass,
    example: example({ capacitanceF: 100e-12, frequencyHz: 30e6, resistanceOhm: 50 }, shuntCapacitanceLossDb),
  },
} as const satisfies FormulaTopic;
