import { summariseReadings } from '#compute';
import type { Check, CheckSource, Figure } from './check.ts';
import { mavro, michelso, numAcc1, numAcc2, numAcc3 } from './strd-data.ts';
import { strdLine } from './strd-line.ts';

/** How near a sum of doubles must come, relative to the certified value: 13 digits and more. */
const NEAR = 1e-13;

interface DataSet {
  readonly id: string;
  readonly title: string;
  readonly readings: () => number[];
  readonly mean: string;
  readonly deviation: string;
  /** Where the readings themselves cannot be held more exactly. */
  readonly deviationWithin?: NonNullable<Figure['tolerance']>;
}

function checkOf({ id, title, readings, mean, deviation, deviationWithin }: DataSet): Check {
  const because = 'arithmetic of doubles, 13 digits';
  return {
    id: `strd-${id.toLowerCase()}`,
    clause: id,
    title,
    status: 'published',
    figures: [
      {
        what: 'mean',
        printed: mean,
        unit: '',
        compute: () => summariseReadings(readings()).mean,
        tolerance: { within: NEAR * Number(mean), because },
      },
      {
        what: 'standard deviation',
        printed: deviation,
        unit: '',
        compute: () => summariseReadings(readings()).standardDeviation ?? Number.NaN,
        tolerance: deviationWithin ?? { within: NEAR * Number(deviation), because },
      },
    ],
  };
}

const sets = (): DataSet[] => [
  {
    id: 'Mavro',
    title: '50 readings of a transmittance have the certified mean and scatter',
    readings: mavro,
    mean: '2.001856',
    deviation: '0.000429123454003053',
    deviationWithin: {
      within: 1e-15,
      because: 'five decimals about 2 are held to 2e-16 as doubles, and the scatter is small against them',
    },
  },
  {
    id: 'Michelso',
    title: '100 readings of the speed of light have the certified mean and scatter',
    readings: michelso,
    mean: '299.8524',
    deviation: '0.0790105478190518',
    deviationWithin: {
      within: 1e-14,
      because: 'two decimals about 300 are held to 3e-14 as doubles',
    },
  },
  {
    id: 'NumAcc1',
    title: 'three large numbers that differ in the last digit have scatter 1',
    readings: numAcc1,
    mean: '10000002',
    deviation: '1',
  },
  {
    id: 'NumAcc2',
    title: '1001 numbers have the certified mean and scatter',
    readings: numAcc2,
    mean: '1.2',
    deviation: '0.1',
  },
  {
    id: 'NumAcc3',
    title: '1001 large numbers have the certified mean and scatter, as far as doubles hold them',
    readings: numAcc3,
    mean: '1000000.2',
    deviation: '0.1',
    deviationWithin: {
      within: 4e-11,
      because:
        '1 000 000.1 is held to 6e-11 as a double, so that the numbers summed are not quite those printed',
    },
  },
];

/** NIST's data sets with certified results. */
export function strd(): CheckSource {
  return {
    id: 'strd',
    name: 'Data sets with certified results',
    citation:
      'NIST Statistical Reference Datasets (StRD), univariate summary statistics and linear regression',
    checks: [...sets().map(checkOf), ...strdLine()],
  };
}
