import { powerToLevel } from '../level.ts';
import { powerW } from '../quantity.ts';
import { netPower } from '../reflection.ts';
import type { Statement } from '../statement.ts';
import { type InLineReading, inLinePower, scaleError } from './in-line.ts';
import { clearlyAbove, LARGEST_SHARE, type MethodOutcome, outOfRange, sumInDbm } from './method.ts';

/**
 * What both readings may be wrong by together, in percent of the power: the sum of two independent rectangular shapes is a
 * trapezoid whose base is the sum of theirs and whose top is their difference.
 */
function ofBoth({ ahead, back, power }: { ahead: number; back: number; power: number }): Statement {
  const both = ahead + back;
  if (back === 0) return { form: 'limits', shape: 'rectangular', halfWidth: (100 * both) / power };
  return {
    form: 'trapezoid',
    halfWidth: (100 * both) / power,
    topRatio: Math.abs(ahead - back) / both,
  };
}

/**
 * Power from an in-line directional meter as `inLinePower`, as a sum in dBm: what the scales may be wrong by is one input,
 * `scale`, in percent of the power, so that the whole distribution can be had; the limits in watts are kept end by end.
 * The estimate is the mean of the levels that the scale allows: below the level of the reading, by 0.08 dB at the edge of the range.
 * Out of range as `inLinePower`, and where both full-scale errors together are more than a third of the net power.
 * @throws RangeError as `inLinePower`.
 * Source: superposition of the two waves on a line; limit by common practice.
 */
export function inLineLevel(reading: InLineReading): MethodOutcome {
  const { forward, reflected, delivery, influences } = reading;
  const outcome = inLinePower({ ...reading, influences: [] });
  if (!outcome.inRange) return outcome;
  const net = delivery === 'net';
  const power = net ? netPower({ forward: forward.power, reflected: reflected.power }) : forward.power;
  const ahead = scaleError(forward);
  const back = net ? scaleError(reflected) : 0;
  if (clearlyAbove(ahead + back, LARGEST_SHARE * power))
    return outOfRange({ code: 'fullScaleError', error: powerW(ahead + back), reading: power });
  return sumInDbm(powerToLevel(power), [
    { id: 'scale', statement: ofBoth({ ahead, back, power }), unit: 'percentOfPower' },
    ...influences,
  ]);
}
