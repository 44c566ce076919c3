import type { TwoPort } from '../mismatch-limits.ts';
import { dilogarithm } from '../special/dilogarithm.ts';
import { constant } from './constant.ts';
import type { Distribution, Interval } from './distribution.ts';
import { numeric } from './numeric.ts';
import {
  DB_PER_LOG,
  type Direction,
  halfTurnPhases,
  levelAt,
  randomCosine,
  randomDirection,
  shareOfPhases,
  slopeOfPhases,
} from './phase.ts';

/** Phases to a turn over which the two smaller reflections are averaged. */
const PHASES = 32;
/** Fewer do for the variance, a smooth function, where the rule converges faster than any power. */
const PHASES_FOR_VARIANCE = 24;

/**
 * Half the width over which the density is averaged, as a part of that between the limits: each of the phases alone has two poles,
 * which stand out between them where both ends reflect strongly.
 */
const AVERAGED = 1 / 128;

/** Magnitudes of the three waves that meet the direct one: A = Gs S11, B = Gl S22, C = S21^2 Gs Gl. */
interface Waves {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** One setting of the two smaller waves: the sum is `amplitude` x |1 - radius e^(i phase)| over the phase of the largest. */
interface Setting {
  readonly amplitude: number;
  readonly radius: number;
}

/** 1 - r e^(i phase), and products and differences of such numbers. */
type Complex = readonly [re: number, im: number];
const wave = (r: number, [cosine, sine]: Direction): Complex => [r * cosine, r * sine];
const directionAt = (phase: number): Direction => [Math.cos(phase), Math.sin(phase)];
const less = ([a, b]: Complex, [c, d]: Complex): Complex => [a - c, b - d];
const size = ([re, im]: Complex) => Math.hypot(re, im);

/**
 * (1 - A)(1 - B) - C, sorted by its largest wave: for C it is P - C with P = (1 - A)(1 - B); for A (or B, alike) it is
 * P - A Q with P = 1 - B - C and Q = 1 - B.
 */
function settingOf({ a, b, c }: Waves, first: Direction, second: Direction): Setting {
  if (c >= Math.max(a, b)) {
    const amplitude = size(less([1, 0], wave(a, first))) * size(less([1, 0], wave(b, second)));
    return { amplitude, radius: c / amplitude };
  }
  const [large, small] = [Math.max(a, b), Math.min(a, b)];
  const q = less([1, 0], wave(small, first));
  const amplitude = size(less(q, wave(c, second)));
  return { amplitude, radius: (large * size(q)) / amplitude };
}

/** All settings, equally likely: the first phase over half a turn (the other half mirrors it), the second over a whole one. */
function settingsOf(waves: Waves, count: number): Setting[] {
  const half = halfTurnPhases(count / 2).map(directionAt);
  const whole = halfTurnPhases(count).map((phase) => directionAt(2 * phase));
  return half.flatMap((first) => whole.map((second) => settingOf(waves, first, second)));
}

/**
 * Standard deviation in dB: the variances of the logarithms of the three factors 1 - A, 1 - B and 1 - C/((1 - A)(1 - B)) add, since
 * these do not correlate.
 */
function deviationOf({ a, b, c }: Waves): number {
  const phases = halfTurnPhases(PHASES_FOR_VARIANCE);
  let third = 0;
  for (const alpha of phases)
    for (const beta of phases) {
      const rest =
        size(less([1, 0], wave(a, directionAt(alpha)))) * size(less([1, 0], wave(b, directionAt(beta))));
      third += dilogarithm((c / rest) ** 2) / phases.length ** 2;
    }
  return DB_PER_LOG * Math.sqrt(2 * (dilogarithm(a * a) + dilogarithm(b * b) + third));
}

function averages(settings: readonly Setting[], level: number): { value: number; slope: number } {
  const amplitude = Math.exp(level / (2 * DB_PER_LOG));
  let value = 0;
  let slope = 0;
  for (const setting of settings) {
    value += shareOfPhases(setting.radius, amplitude / setting.amplitude);
    slope += slopeOfPhases(setting.radius, amplitude / setting.amplitude);
  }
  return { value: value / settings.length, slope: slope / settings.length };
}

/** See `mismatch`: the correction with a two-port between source and load. `limits` are those of `mismatchLimits`. */
export function mismatchThroughTwoPort({
  source,
  load,
  between,
  limits,
}: {
  source: number;
  load: number;
  between: TwoPort;
  limits: Interval;
}): Distribution {
  const waves = {
    a: source * between.input,
    b: load * between.output,
    c: 10 ** (between.gain / 10) * source * load,
  };
  if (Math.max(waves.a, waves.b, waves.c) === 0) return constant(0);
  let settings: Setting[] | undefined;
  const all = () => {
    settings ??= settingsOf(waves, PHASES);
    return settings;
  };
  const made = numeric({
    shape: 'mismatch',
    mean: 0,
    standardDeviation: deviationOf(waves),
    limits,
    middle: 0,
    at: (level) => averages(all(), level),
    sample: (random) => {
      const { amplitude, radius } = settingOf(waves, randomDirection(random), randomDirection(random));
      return 2 * DB_PER_LOG * Math.log(amplitude) + levelAt(radius, randomCosine(random));
    },
  });
  return { ...made, density: averagedDensity(made) };
}

/** The mean density about a place: what is gained in share there. Nothing outside the limits. */
function averagedDensity({ limits, shareBelow }: Pick<Distribution, 'limits' | 'shareBelow'>) {
  const { lower, upper } = limits;
  const reach = AVERAGED * (upper - lower);
  return (x: number): number => {
    if (!(x >= lower && x <= upper)) return 0;
    const [from, to] = [Math.max(lower, x - reach), Math.min(upper, x + reach)];
    return (shareBelow(to) - shareBelow(from)) / (to - from);
  };
}
