import {
  componentOf,
  gainDb,
  heatInPad,
  type Input,
  mean,
  mismatchLimits,
  type PowerW,
  padByDc,
  padBySwap,
  powerW,
  reflectionOfSwr,
  standardDeviation,
} from '#compute';
import { type Found, found } from './calibration.ts';
import type { CheckedDc, CheckedSwap } from './checked.ts';
import { IDS, limits } from './inputs.ts';

/** A pad or cable with its attenuation. */
export interface PadFound extends Found {
  readonly checked: CheckedDc | CheckedSwap;
  /** Power that the direct voltage puts into the pad; none of a swap, where nobody says it. */
  readonly heat: PowerW | undefined;
}

/** Impedance of pads and of what they stand between. */
const IMPEDANCE_OHMS = 50;

/** What one reading of the meter may be off by: percent of it, and its last digit. */
function meterInputs(
  { percent, stepVolts, oneMeter }: CheckedDc,
  { volts, meter, step }: { volts: number; meter: string; step: string },
): readonly Input[] {
  const unit = 'percentOfVolts';
  const gain = componentOf({
    id: meter,
    unit,
    statement: { form: 'limits', shape: 'rectangular', halfWidth: percent },
    cause: oneMeter ? 'one meter on one range' : undefined,
  });
  const digit = componentOf({
    id: step,
    unit,
    statement: { form: 'displayStep', step: (100 * stepVolts) / volts },
  });
  return [...(percent > 0 ? [gain] : []), ...(stepVolts > 0 ? [digit] : [])];
}

/** The attenuation from two direct voltages. */
export function padFromDc(checked: CheckedDc): PadFound {
  const { voltsIn, voltsOut, loadOhms, loadPercent } = checked;
  const load = componentOf({
    id: IDS.load,
    unit: 'own',
    statement: { form: 'limits', shape: 'rectangular', halfWidth: loadPercent },
  });
  const model = padByDc({
    voltsIn,
    voltsOut,
    loadOhms,
    impedanceOhms: IMPEDANCE_OHMS,
    atInput: meterInputs(checked, { volts: voltsIn, meter: IDS.meterIn, step: IDS.stepIn }),
    atLoad: meterInputs(checked, { volts: voltsOut, meter: IDS.meterOut, step: IDS.stepOut }),
    load: loadPercent > 0 ? load : undefined,
  });
  const power = powerW(voltsIn ** 2 / IMPEDANCE_OHMS);
  const heat = heatInPad({ power, gain: gainDb(0 - model.constant) });
  return { ...found(model), checked, heat };
}

function scatterInput(
  id: string,
  values: readonly number[],
  earlier: CheckedSwap['earlier'],
): readonly Input[] {
  if (values.length > 1)
    return [
      componentOf({
        id,
        unit: 'dB',
        statement: {
          form: 'readings',
          standardDeviation: standardDeviation(values),
          count: values.length,
        },
      }),
    ];
  const { standardDeviation: s = 0, degreesOfFreedom = 1 } = earlier ?? {};
  return [
    componentOf({
      id,
      unit: 'dB',
      statement: { form: 'standard', standardUncertainty: s, degreesOfFreedom },
    }),
  ];
}

/** Half of what a mismatch of two magnitudes can do, phase unknown. */
function mismatchHalfDb(source: number, load: number): number {
  const { lower, upper } = mismatchLimits({ source, load });
  return (upper - lower) / 2;
}

/** Mismatches without the part, at both of its ends, and through it: each of a phase of its own that nobody knows. */
function mismatches(checked: CheckedSwap, attenuationDb: number): readonly Input[] {
  const [source, receiver, part] = [checked.sourceSwr, checked.receiverSwr, checked.partSwr].map(
    reflectionOfSwr,
  ) as [number, number, number];
  const through = receiver * 10 ** (-attenuationDb / 10);
  return [
    ...limits(IDS.mismatchWithout, mismatchHalfDb(source, receiver), 'arcsine'),
    ...limits(IDS.mismatchIn, mismatchHalfDb(source, part), 'arcsine'),
    ...limits(IDS.mismatchOut, mismatchHalfDb(part, receiver), 'arcsine'),
    ...limits(IDS.mismatchThrough, mismatchHalfDb(source, through), 'arcsine'),
  ];
}

/** The attenuation from a receiver's readings without and with the part. */
export function padFromSwap(checked: CheckedSwap): PadFound {
  const [withoutDb, withDb] = [mean(checked.without), mean(checked.with)];
  const model = padBySwap({
    withoutDb,
    withDb,
    parts: [
      ...scatterInput(IDS.scatterWithout, checked.without, checked.earlier),
      ...scatterInput(IDS.scatterWith, checked.with, checked.earlier),
      ...limits(IDS.straightness, checked.straightness),
      ...mismatches(checked, withoutDb - withDb),
    ],
  });
  return { ...found(model), checked, heat: undefined };
}
