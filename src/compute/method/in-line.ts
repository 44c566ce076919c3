import { componentOf } from '../component.ts';
import { dbToPowerRatio } from '../decibel.ts';
import type { Input, Model } from '../model.ts';
import { type GainDb, gainDb, notNegative, type PowerW, positive, powerW } from '../quantity.ts';
import { directivityRange, netPower, reflectionBelowOne } from '../reflection.ts';
import {
  clearlyAbove,
  type Influence,
  LARGEST_SHARE,
  type MethodOutcome,
  type OutOfRange,
  outOfRange,
  type RelativeUnit,
  relativeInput,
} from './method.ts';

/** One reading of a directional meter, with the scale that it was read on and its limits in percent of full scale. */
export interface ScaleReading {
  readonly power: PowerW;
  readonly fullScale: PowerW;
  readonly percentOfFullScale: number;
}

/** What an in-line directional meter shows. */
export interface InLineReading {
  readonly forward: ScaleReading;
  readonly reflected: ScaleReading;
  /** The wave towards the load, or what stays in it. */
  readonly delivery: 'incident' | 'net';
  /** Directivity, frequency response, calibration and the like, relative to the power. */
  readonly influences: readonly Influence<RelativeUnit>[];
}

/** Limits of one reading in watts: a percentage of full scale, wherever on the scale the needle stands. */
export function scaleError({ fullScale, percentOfFullScale }: ScaleReading): PowerW {
  return powerW((notNegative('inLine', 'percentOfFullScale', percentOfFullScale) / 100) * fullScale);
}

/** The reason why a reading is too low on its scale, if it is. */
function tooLow(reading: ScaleReading): OutOfRange | undefined {
  const error = scaleError(reading);
  if (!clearlyAbove(error, LARGEST_SHARE * reading.power)) return undefined;
  return { code: 'fullScaleError', error, reading: reading.power };
}

function inWatts(id: string, reading: ScaleReading): Input {
  const statement = { form: 'limits', shape: 'rectangular', halfWidth: scaleError(reading) } as const;
  return componentOf({ id, statement, unit: 'own' });
}

/** Sum of deviations in watts, or their sum times the relative ones where there are any. */
function modelOf(
  power: PowerW,
  absolute: readonly { input: Input; sign: 1 | -1 }[],
  relative: readonly Influence<RelativeUnit>[],
): Model {
  const inputs = absolute.map(({ input }) => input);
  const signs = absolute.map(({ sign }) => sign);
  if (relative.length === 0) return { kind: 'sum', constant: power, inputs, sensitivities: signs };
  const signsDb = relative.map(({ sensitivity }) => sensitivity ?? 1);
  return {
    kind: 'function',
    inputs: [...inputs, ...relative.map(relativeInput)],
    f: (values) => {
      const watts = signs.reduce((sum, sign, i) => sum + sign * (values[i] ?? 0), Number(power));
      const gain = signsDb.reduce((sum, sign, i) => sum + sign * (values[signs.length + i] ?? 0), 0);
      return watts * dbToPowerRatio(gainDb(gain));
    },
  };
}

/**
 * Power from an in-line directional meter, in watts: forward, or forward less reflected. The limits in percent of full
 * scale are inputs `forward` and `reflected` in watts; relative influences multiply. Out of range where the forward
 * reading's full-scale error is more than a third of it (a third itself is not).
 * @throws RangeError if forward is not above zero or reflected above it, or a percentage is negative.
 * Source: superposition of the two waves on a line; limit by common practice.
 */
export function inLinePower({ forward, reflected, delivery, influences }: InLineReading): MethodOutcome {
  positive('inLinePower', 'forward.power', forward.power);
  const reason = tooLow(forward);
  if (reason) return outOfRange(reason);
  const ahead = { input: inWatts('forward', forward), sign: 1 } as const;
  if (delivery === 'incident')
    return { inRange: true, space: 'W', model: modelOf(forward.power, [ahead], influences) };
  const net = netPower({ forward: forward.power, reflected: reflected.power });
  const back = { input: inWatts('reflected', reflected), sign: -1 } as const;
  return { inRange: true, space: 'W', model: modelOf(net, [ahead, back], influences) };
}

/** Limits of a reflection magnitude, or the reason why there are none. */
export type ReflectionOutcome =
  | { readonly inRange: true; readonly lower: number; readonly upper: number }
  | { readonly inRange: false; readonly reason: OutOfRange };

/**
 * Limits of the reflection magnitude at an in-line meter, worst case, from the limits of both readings and from the
 * directivity. Out of range where either reading's full-scale error is more than a third of it.
 * @throws RangeError if forward is not above zero, the limits let the reflected power reach the forward one, or directivity is negative.
 * Source: sqrt(Pr/Pf); superposition of leaked and reflected wave.
 */
export function inLineReflection({
  forward,
  reflected,
  directivityDb,
}: {
  forward: ScaleReading;
  reflected: ScaleReading;
  directivityDb: GainDb;
}): ReflectionOutcome {
  positive('inLineReflection', 'forward.power', forward.power);
  const reason = tooLow(forward) ?? tooLow(reflected);
  if (reason) return { inRange: false, reason };
  const ahead = scaleError(forward);
  const back = scaleError(reflected);
  const at = (reflectedW: number, forwardW: number) => {
    const reflection = reflectionBelowOne('inLineReflection', 'reflection', Math.sqrt(reflectedW / forwardW));
    return directivityRange({ reflection, directivityDb });
  };
  return {
    inRange: true,
    lower: at(reflected.power - back, forward.power + ahead).lower,
    upper: at(reflected.power + back, forward.power - ahead).upper,
  };
}
