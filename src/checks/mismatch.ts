import {
  arcsine,
  dbToPercentOfPower,
  type Knowledge,
  mismatchLimits,
  mismatchWithin,
  reflectionOfSwr,
  smallPercentToDb,
} from '#compute';
import type { Check, CheckSource } from './check.ts';
import { checksOfTable } from './family.ts';
import { figure } from './figure.ts';
import { printedRows } from './rows.ts';

/** Pairs of standing-wave ratios, with the most that a mismatch can add and take, in dB. */
const PAIRS = `
1.05|1.05 0.005 -0.005
1.1|1.1 0.020 -0.020
1.1|1.2 0.038 -0.038
1.1|1.5 0.082 -0.083
1.1|2.0 0.137 -0.139
1.2|1.2 0.071 -0.072
1.2|1.3 0.102 -0.104
1.2|1.5 0.157 -0.159
1.2|2.0 0.259 -0.267
1.2|3.0 0.386 -0.404
1.3|1.3 0.147 -0.149
1.3|1.5 0.224 -0.230
1.3|2.0 0.370 -0.386
1.5|1.5 0.341 -0.355
1.5|2.0 0.561 -0.599
1.5|3.0 0.828 -0.915
2.0|2.0 0.915 -1.023
2.0|3.0 1.339 -1.584
3.0|3.0 1.938 -2.499`;

/** Limits of the mismatch between two standing-wave ratios, in dB. */
function limitsOf(pair: string) {
  const [source = 1, load = 1] = pair.split('|').map(Number);
  return mismatchLimits({ source: reflectionOfSwr(source), load: reflectionOfSwr(load) });
}

const pairs = (): Check[] =>
  checksOfTable({
    id: 'mismatch-pair',
    heading: 'What a mismatch of two standing-wave ratios can add and take',
    clause: '20 lg(1 ± ρρ)',
    status: 'recomputed',
    columns: [
      { what: 'at most', unit: 'dB' },
      { what: 'at least', unit: 'dB' },
    ],
    rows: printedRows(PAIRS),
    row: (pair) => pair.replace('|', ' on '),
    title: (pair) =>
      `standing-wave ratios ${pair.replace('|', ' on ')} change the power within the exact limits`,
    compute: (pair, column) => limitsOf(pair)[column === 0 ? 'upper' : 'lower'],
  });

const rules = (): Check[] => [
  {
    id: 'mismatch-first-order',
    clause: '2ρρ',
    title: 'the rule of thumb for the limit of a mismatch leaves out a square',
    status: 'common practice',
    given: 'standing-wave ratios 1.50 and 1.20',
    figures: [
      {
        what: 'upper limit',
        printed: '3.636',
        unit: '%',
        compute: () => dbToPercentOfPower(limitsOf('1.5|1.2').upper),
        differs: {
          exact: '3.669',
          because:
            'The rule 2ρρ is the first term of (1 + ρρ)² − 1. Between good connectors the rest does not matter; between 3 and 3 it is nearly a fifth of a decibel.',
        },
      },
    ],
  },
  {
    id: 'mismatch-divisor',
    clause: 'divisor of a mismatch',
    title: 'limits of a mismatch are divided by √2 and not by √3',
    status: 'common practice',
    given: 'magnitudes known, phase unknown',
    figures: [
      {
        what: 'u over the limit',
        printed: '0.577',
        unit: '',
        compute: () => arcsine({ centre: 0, halfWidth: 1 }).standardDeviation ?? Number.NaN,
        differs: {
          exact: '0.70711',
          because:
            'A common error treats a mismatch as rectangular. The cosine of an unknown phase is U-shaped: values near the limits are the likeliest, and 1/√2 is its standard uncertainty.',
        },
      },
    ],
  },
];

/** Small enough that the decibels of a mismatch are in proportion to its share of the power. */
const SMALL = 0.01;

/** Standard uncertainty of the power ratio in units of the product of both reflections, by what is known of them. */
function spread(knowledge: Knowledge): number {
  const of = mismatchWithin({
    source: SMALL,
    load: SMALL,
    knowledge: { source: knowledge, load: knowledge },
  });
  const unit = smallPercentToDb({ percent: 100 * SMALL * SMALL, quantity: 'power' });
  return (of.standardDeviation ?? Number.NaN) / unit;
}

const knowledge = (): Check[] => [
  {
    id: 'mismatch-knowledge',
    clause: 'u of |1 − ΓΓ|² over ρρ',
    title: 'what is known of two reflections decides how much their mismatch is uncertain',
    status: 'recomputed',
    given: 'phases unknown; small reflections',
    figures: [
      figure('magnitudes known', '1.4142', '', () => spread('magnitude')),
      figure('each anywhere in a disc', '0.7071', '', () => spread('disc')),
      figure('magnitudes uniform from 0', '0.4714', '', () => spread('uniformMagnitude')),
    ],
  },
  {
    id: 'mismatch-uniform-magnitude',
    clause: 'uniform magnitude and phase',
    title: 'uniform magnitude and phase is not the same as a point anywhere in the disc',
    status: 'common practice',
    figures: [
      {
        ...figure('u over ρρ', '0.707', '', () => spread('uniformMagnitude')),
        differs: {
          exact: '0.4714',
          because:
            'Some data sheets say “uniform magnitude and uniform phase” and give ρρ/√2, which belongs to a point anywhere in the disc, every area alike. A uniform magnitude favours the middle of the disc and gives √2/3.',
        },
      },
    ],
  },
];

/** Mismatch of two reflections whose phase is unknown. */
export function mismatch(): CheckSource {
  return {
    id: 'mismatch',
    name: 'Mismatch',
    citation: 'Worked out from |1 − ΓΓ|² for reflections of known magnitude and unknown phase',
    checks: [...rules(), ...knowledge(), ...pairs()],
  };
}
