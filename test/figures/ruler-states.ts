import { defaultState } from '../../src/address/field-spec.ts';
import type { RulersProps } from '../../src/figures/rulers.types.ts';
import { bandFigure } from '../../src/widgets/band-rulers/rulers.ts';
import { bandRulersSpec } from '../../src/widgets/band-rulers/spec.ts';
import { fieldsState } from '../../src/widgets/parts/fields.ts';
import { ratioFigure } from '../../src/widgets/ratio-ruler/rulers.ts';
import { initialState, reduceRatio } from '../../src/widgets/ratio-ruler/state.ts';
import { meansFigure } from '../../src/widgets/two-means/rulers.ts';
import { meansSpec } from '../../src/widgets/two-means/spec.ts';
import { signalsFigure } from '../../src/widgets/two-signals/rulers.ts';
import { signalsSpec } from '../../src/widgets/two-signals/spec.ts';

const band = fieldsState(defaultState(bandRulersSpec.fields));
const bandOf = (values: Partial<typeof band.values>) => ({
  lanes: [],
  needles: [],
  ...bandFigure({ ...band, values: { ...band.values, ...values } }),
});
const signals = defaultState(signalsSpec.fields);

/** Named states of the figures made of rulers, each a snapshot. */
export const rulerStates: Readonly<Record<string, () => Omit<RulersProps, 'frame'>>> = {
  'two pads': () => ratioFigure(initialState(-26)),
  'seven decibels': () => ratioFigure(initialState(7)),
  'no difference': () => ratioFigure(initialState(0)),
  'with a tenth left': () => ratioFigure(initialState(13.1)),
  'ten before the logarithm of volts': () =>
    ratioFigure(reduceRatio(initialState(6.02), { type: 'slip', slip: 'tenForVolts' })),
  'a slip beyond the ruler': () =>
    ratioFigure(reduceRatio(initialState(-26), { type: 'slip', slip: 'twentyForWatts' })),
  'two equal signals': () => signalsFigure(signals),
  'two signals against each other': () => signalsFigure({ ...signals, phase: 180 }),
  'one decibel on three rulers': () => bandOf({}),
  'three decibels': () => bandOf({ halfDb: 3 }),
  'a third of the power': () => bandOf({ even: 'watts', halfPercent: 33.3 }),
  'a decibel taken for ten percent': () => bandOf({ claim: 'tenPercent' }),
  'no band': () => bandOf({ halfDb: 0 }),
  'three readings and their means': () => ({ needles: [], ...meansFigure(defaultState(meansSpec.fields)) }),
  'the sum of two dBm': () => signalsFigure({ ...signals, claim: 'sumOfDbm' }),
};
