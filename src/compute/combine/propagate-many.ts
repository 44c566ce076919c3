import type { Correlation, FunctionModel, Input } from '../model.ts';
import { checkModel } from './check-model.ts';
import { choleskyFactor, correlationMatrix, type Matrix } from './correlation.ts';
import { estimateOf } from './estimate.ts';
import { standardUncertaintyOf } from './input.ts';
import { sensitivitiesOf } from './sensitivities.ts';

/** One of several outputs of the same inputs. */
export interface Output {
  readonly id: string;
  readonly f: FunctionModel['f'];
}

/** Several outputs with what ties them. */
export interface ManyOutputs {
  readonly outputs: readonly {
    readonly id: string;
    readonly estimate: number;
    readonly standardUncertainty: number;
  }[];
  /** Correlation coefficients in the order of the outputs; 0 beside an output without uncertainty. */
  readonly correlation: Matrix;
}

/** Each output over the independent variables behind the inputs: rows whose products are covariances. */
function rowsOf(inputs: readonly Input[], models: readonly FunctionModel[], factor: Matrix): number[][] {
  const uncertainties = inputs.map(standardUncertaintyOf);
  return models.map((model) => {
    const weights = sensitivitiesOf({ model }).map(({ value }, i) => value * (uncertainties[i] ?? 0));
    return inputs.map((_, k) => weights.reduce((sum, weight, i) => sum + weight * (factor[i]?.[k] ?? 0), 0));
  });
}

/**
 * Several outputs computed from the same inputs: their estimates, standard uncertainties and the correlation between
 * them, without which a later result from two of them would be wrong.
 * @throws RangeError as `propagate`.
 * Source: GUM H.2; JCGM 102, 6.2.
 */
export function propagateMany({
  inputs,
  correlations = [],
  outputs,
}: {
  inputs: readonly Input[];
  correlations?: readonly Correlation[] | undefined;
  outputs: readonly Output[];
}): ManyOutputs {
  const models = outputs.map(({ f }): FunctionModel => ({ kind: 'function', inputs, f, correlations }));
  for (const model of models) checkModel('propagateMany', model);
  const rows = rowsOf(inputs, models, choleskyFactor(correlationMatrix({ inputs, correlations })));
  const sizes = rows.map((row) => Math.hypot(...row));
  const between = (i: number, j: number) => {
    if (i === j) return 1;
    const size = (sizes[i] ?? 0) * (sizes[j] ?? 0);
    if (size === 0) return 0;
    const covariance = (rows[i] ?? []).reduce((sum, x, k) => sum + x * (rows[j]?.[k] ?? 0), 0);
    return Math.max(-1, Math.min(1, covariance / size));
  };
  return {
    outputs: models.map((model, i) => ({
      id: outputs[i]?.id ?? '',
      estimate: estimateOf(model),
      standardUncertainty: sizes[i] ?? 0,
    })),
    correlation: rows.map((_, i) => rows.map((__, j) => between(i, j))),
  };
}
