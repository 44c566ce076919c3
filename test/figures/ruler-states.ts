import { defaultState } from '../../src/address/field-spec.ts';
import type { RulersProps } from '../../src/figures/rulers.types.ts';
import { ratioFigure } from '../../src/widgets/ratio-ruler/rulers.ts';
import { initialState, reduceRatio } from '../../src/widgets/ratio-ruler/state.ts';
import { signalsFigure } from '../../src/widgets/two-signals/rulers.ts';
import { signalsSpec } from '../../src/widgets/two-signals/spec.ts';

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
  'the sum of two dBm': () => signalsFigure({ ...signals, claim: 'sumOfDbm' }),
};
