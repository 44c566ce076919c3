import { type Tried, triedOf } from '../../sheet/tried.ts';
import { clubTry, LOAD_OHMS, propagatedOf, READ_VOLTS, type TryOrder } from '../../sheet/tries.ts';
import { countText } from '../../text/count-text.ts';
import { numberText, percentText, quantityText } from '../../text/quantity-text.ts';
import type { IntervalKind } from '../../widgets/tries/spec.ts';
import { answersOf } from '../../widgets/tries/words.ts';

/** Runs that were made already, by their order: several numbers of the prose come from each. */
const runs = new Map<string, Tried>();

function runOf(change: Partial<TryOrder>): Tried {
  const order = { ...clubTry(), ...change };
  const key = JSON.stringify(order);
  const run = runs.get(key) ?? triedOf(order);
  runs.set(key, run);
  return run;
}

/** The texts of a run as the figure has them: mean, interval of the trials, interval of propagation. */
function said(change: Partial<TryOrder>, kind: IntervalKind = 'symmetric') {
  const run = runOf(change);
  const [mean, interval, propagated, verdict] = answersOf(run, kind).map(({ figure }) => figure);
  return { run, mean, interval, propagated, verdict } as Readonly<
    Record<'mean' | 'interval' | 'propagated' | 'verdict', string>
  > & { readonly run: Tried };
}

const milliwatts = (value: number, decimals: number): string =>
  quantityText('shown', { value, decimals, unit: 'mW' });
const ppm = (value: number): string => quantityText('shown', { value, decimals: 0, unit: 'ppm' });
const db = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'dB' });
const mg = (value: number): string => quantityText('shown', { value, decimals: 4, unit: 'mg' });

const wide = { voltsPercent: 20 } as const;
const loss = { model: 'loss' } as const;
const few = (seed: number): string => said({ trials: '100', seed }).interval;

/** Numbers of the lesson on trials. */
export function triesValues(): Readonly<Record<string, () => string>> {
  const nominal = propagatedOf(clubTry());
  const weightFirst = (): number => runOf({ model: 'weight' }).propagated.standardUncertainty;
  const weightTried = (): number => runOf({ model: 'weight' }).standardUncertainty;
  return {
    read: () => quantityText('shown', { value: READ_VOLTS, decimals: 1, unit: 'Vrms' }),
    load: () => quantityText('shown', { value: LOAD_OHMS, decimals: 0, unit: 'ohm' }),
    nominal: () => milliwatts(nominal.estimate, 1),
    interval: () => said({}).interval,
    propagated: () => said({}).propagated,
    uncertainty: () => milliwatts(runOf({}).standardUncertainty, 1),
    fewOne: () => few(1),
    fewTwo: () => few(2),
    settledAfter: () => countText('shown', runOf({ trials: 'settled' }).trials),
    settledTo: () => milliwatts(runOf({ trials: 'settled' }).tolerance ?? Number.NaN, 1),
    wideMean: () => milliwatts(runOf(wide).mean, 0),
    wideInterval: () => said(wide).interval,
    widePropagated: () => said(wide).propagated,
    phaseClaimed: () => db(propagatedOf({ ...clubTry(), model: 'phase' }).estimate),
    phaseU: () => db(propagatedOf({ ...clubTry(), model: 'phase' }).standardUncertainty),
    phaseInterval: () => said({ model: 'phase' }).interval,
    lossMean: () => ppm(runOf(loss).mean),
    lossInterval: () => said(loss, 'shortest').interval,
    lossFirst: () => ppm(propagatedOf({ ...clubTry(), ...loss }).standardUncertainty),
    lossSecond: () => said({ ...loss, order: 'second' }, 'shortest').propagated,
    weightFirst: () => mg(weightFirst()),
    weightTried: () => mg(weightTried()),
    weightMissed: () =>
      percentText('shown', { percent: 100 * (1 - weightFirst() / weightTried()), decimals: 0 }),
    gaugeTried: () =>
      quantityText('shown', {
        value: runOf({ model: 'gauge' }).standardUncertainty,
        decimals: 0,
        unit: 'nm',
      }),
    gaugePropagated: () =>
      numberText('shown', { value: runOf({ model: 'gauge' }).propagated.standardUncertainty, decimals: 0 }),
    ...mistakeValues(),
  };
}

/** What three ways of being certain cost. */
const mistakeValues = (): Readonly<Record<string, () => string>> => ({
  slopeOnly: () =>
    `${db(propagatedOf({ ...clubTry(), model: 'phase' }).estimate)} is claimed, and no doubt at all; the trials lie from ${said({ model: 'phase' }).interval}`,
  belowNothing: () =>
    `${said({ ...loss, order: 'second' }, 'shortest').propagated}, for a loss that cannot be less than none`,
  fewTries: () =>
    `${few(1)} by one hundred, ${few(2)} by the next; a hundred thousand say ${said({}).interval}`,
});
