import type { Interval } from '../distribution/distribution.ts';
import type { FunctionModel } from '../model.ts';
import { rangeError } from '../quantity.ts';
import { centresOf, isLimited } from './input.ts';

/** Inputs that move together, and the values that each of them may be put to, setting by setting. */
interface Knob {
  readonly members: readonly number[];
  readonly settings: readonly (readonly number[])[];
}

/** Up to so many knobs every combination of lower, middle and upper is tried (729 of them); above, a search by turns. */
const TRIED_OUT = 6;
/** A search by turns that has not settled by then goes round in rounding noise. */
const MOST_TURNS = 20;

function knobsOf({ inputs }: FunctionModel, centres: readonly number[]): Knob[] {
  const byName = new Map<string, number[]>();
  inputs.forEach(({ id, cause }, i) => {
    const name = JSON.stringify(cause === undefined ? { id } : { cause });
    byName.set(name, [...(byName.get(name) ?? []), i]);
  });
  return [...byName.values()].map((members) => ({
    members,
    settings: [0, 0.5, 1].map((rank) =>
      members.map((i) => {
        const input = inputs[i];
        return input && rank !== 0.5 && isLimited(input)
          ? input.distribution.quantile(rank)
          : (centres[i] ?? 0);
      }),
    ),
  }));
}

function turned(values: readonly number[], { members }: Knob, setting: readonly number[]): number[] {
  const next = [...values];
  members.forEach((i, k) => {
    next[i] = setting[k] ?? 0;
  });
  return next;
}

/** Every combination of settings. */
function combinations(knobs: readonly Knob[], centres: readonly number[]): number[][] {
  return knobs.reduce<number[][]>(
    (all, knob) => all.flatMap((values) => knob.settings.map((setting) => turned(values, knob, setting))),
    [[...centres]],
  );
}

/** Turns one knob after the other to its best setting until nothing gets better; from where the slopes point. */
function climb(f: (values: readonly number[]) => number, knobs: readonly Knob[], start: number[]): number {
  let [values, best] = [start, f(start)];
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const before = best;
    for (const knob of knobs)
      for (const setting of knob.settings) {
        const tried = turned(values, knob, setting);
        const y = f(tried);
        if (y > best) [values, best] = [tried, y];
      }
    if (best === before) break;
  }
  return best;
}

/** The corner that the slopes at the estimate point to. */
function corner(knobs: readonly Knob[], centres: readonly number[], slopes: readonly number[]): number[] {
  return knobs.reduce<number[]>(
    (values, knob) => {
      const gain = (setting: readonly number[]) =>
        knob.members.reduce(
          (sum, i, k) => sum + (slopes[i] ?? 0) * ((setting[k] ?? 0) - (centres[i] ?? 0)),
          0,
        );
      const best = knob.settings.reduce((a, b) => (gain(b) > gain(a) ? b : a));
      return turned(values, knob, best);
    },
    [...centres],
  );
}

/**
 * Smallest and largest output with every limited input at its lower limit, centre or upper limit, inputs under one cause
 * together. See `worstCaseOf` for what that covers.
 * @throws RangeError if the function is not finite somewhere between the limits.
 */
export function extremesOf(model: FunctionModel, slopes: readonly number[]): Interval {
  const centres = centresOf(model.inputs);
  const knobs = knobsOf(model, centres);
  const f = (values: readonly number[]) => {
    const y = model.f(values);
    if (!Number.isFinite(y))
      throw rangeError({ where: 'worstCaseOf', wish: 'f must be finite between the limits', got: y });
    return y;
  };
  if (knobs.length <= TRIED_OUT) {
    const outputs = combinations(knobs, centres).map(f);
    return { lower: Math.min(...outputs), upper: Math.max(...outputs) };
  }
  const falling = slopes.map((slope) => -slope);
  return {
    lower: -climb((values) => -f(values), knobs, corner(knobs, centres, falling)),
    upper: climb(f, knobs, corner(knobs, centres, slopes)),
  };
}
