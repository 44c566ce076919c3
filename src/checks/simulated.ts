import { type FunctionModel, randomFrom, type Simulated, simulateAtOnce } from '#compute';

/** Enough for the ends of an interval to settle to a hundredth of the standard uncertainty. */
const TRIALS = 1_000_000;
/** Any seed does; this one is named so that the values on the page can be had again. */
const SEED = 101;

/** A simulation of a model, made once, when first asked for. */
export function simulatedOnce(model: () => FunctionModel, coverageProbability: number): () => Simulated {
  let result: Simulated | undefined;
  return () => {
    result ??= simulateAtOnce({
      model: model(),
      coverageProbability,
      random: randomFrom(SEED),
      stop: { kind: 'trials', trials: TRIALS },
    });
    return result;
  };
}
