import type { Distribution } from '../distribution/distribution.ts';
import type { Input, SumModel } from '../model.ts';
import { affineOf, quartileDistance } from './comonotone.ts';
import { centreOf } from './input.ts';
import type { Part } from './together.ts';

/** One independent term of a sum: an input alone, or all inputs under one cause merged into one variable, which is known as `Of`. */
export interface MergedTerm<Of = Distribution> {
  /** Ids of the inputs that it stands for. */
  readonly ids: readonly string[];
  readonly distribution: Of;
  readonly sensitivity: number;
}

/** A sum of independent terms. */
export interface MergedSum<Of = Distribution> {
  readonly constant: number;
  readonly terms: readonly MergedTerm<Of>[];
}

interface Weighted {
  readonly input: Input;
  readonly sensitivity: number;
}

/** What cancels to less than this of its parts is taken to cancel exactly: widths come from quantiles good to 1e-10. */
const CANCELLED = 1e-9;

/** Inputs of one shape: one variable with the signed sum of sensitivities, so that a cascade adds and a ratio cancels. */
function mergeOneShape(members: readonly Weighted[], base: Distribution): MergedSum | undefined {
  let constant = 0;
  let sensitivity = 0;
  let size = 0;
  for (const member of members) {
    const affine = affineOf(base, member.input.distribution);
    if (affine === undefined) return undefined;
    constant += member.sensitivity * affine.shift;
    sensitivity += member.sensitivity * affine.scale;
    size += Math.abs(member.sensitivity * affine.scale);
  }
  const ids = members.map(({ input }) => input.id);
  if (Math.abs(sensitivity) > CANCELLED * size)
    return { constant, terms: [{ ids, distribution: base, sensitivity }] };
  return { constant: constant + sensitivity * base.quantile(0.5), terms: [] };
}

/** How inputs of several shapes that move together become one variable. */
type Join<Of> = (parts: readonly Part[]) => Of;

function mergeCause<Of>(members: readonly Weighted[], join: Join<Of>): MergedSum<Distribution | Of> {
  const [first] = members;
  if (first === undefined) return { constant: 0, terms: [] };
  const oneShape = mergeOneShape(members, first.input.distribution);
  if (oneShape !== undefined) return oneShape;
  const parts = members.map(({ input: { distribution }, sensitivity }) => ({ distribution, sensitivity }));
  const ids = members.map(({ input }) => input.id);
  return { constant: 0, terms: [{ ids, distribution: join(parts), sensitivity: 1 }] };
}

/**
 * A sum as independent terms: inputs under one cause become one variable; constants and inputs without effect join the
 * constant. Expects a model already checked; correlations are none of its business.
 * @param join makes one variable of inputs of several shapes: its whole distribution (`comonotoneSum`), or what is known without (`together`).
 */
export function mergeCauses<Of>(model: SumModel, join: Join<Of>): MergedSum<Distribution | Of> {
  let constant = model.constant;
  const byCause = new Map<string, Weighted[]>();
  const terms: MergedTerm<Distribution | Of>[] = [];
  model.inputs.forEach((input, i) => {
    const sensitivity = model.sensitivities[i] ?? 0;
    if (sensitivity === 0) return;
    if (quartileDistance(input.distribution) === 0) {
      constant += sensitivity * centreOf(input);
      return;
    }
    if (input.cause === undefined) {
      terms.push({ ids: [input.id], distribution: input.distribution, sensitivity });
      return;
    }
    byCause.set(input.cause, [...(byCause.get(input.cause) ?? []), { input, sensitivity }]);
  });
  for (const members of byCause.values()) {
    const merged = mergeCause(members, join);
    constant += merged.constant;
    terms.push(...merged.terms);
  }
  return { constant, terms };
}
