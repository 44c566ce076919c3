import { evaluate, judge, normal, risksOf, roundUncertainty } from '#compute';
import { example, type FormulaTopic, known, letter } from './formula.ts';

/** Conformity with a specification, and the digits of a result. */
export const verdictFormulas = {
  judge: {
    tex: 'p_\\mathrm{c} = \\Phi \\left( \\frac{T_+ - y}{u} \\right) - \\Phi \\left( \\frac{T_- - y}{u} \\right), \\quad A_\\pm = T_\\pm \\mp r U',
    symbols: {
      result: letter('y', 'own', 'estimate, with its uncertainty'),
      specification: letter('T_\\pm', 'own', 'limits of the specification'),
      rule: letter('r', '1', 'how many expanded uncertainties the guard band is wide'),
      probabilityOfConformity: letter(
        'p_\\mathrm{c}',
        '1',
        'probability of conformity, for a normal distribution',
      ),
      acceptance: letter('A_\\pm', 'own', 'limits of acceptance'),
    },
    words: 'Inside, outside or can’t tell: with a guard band, or by the probability of conformity.',
    sources: [
      { of: 'conformity', clause: '7 and 8' },
      { of: 'decisionRules', clause: 'table 1' },
    ],
    example: example({ result: 22.85, specification: [23, 25], rule: 1 }, (given) => {
      const deviation = normal({ mean: 0, standardDeviation: 0.25 });
      const inputs = [{ id: 'all', distribution: deviation, degreesOfFreedom: Number.POSITIVE_INFINITY }];
      const model = { kind: 'sum', constant: given.result, inputs, sensitivities: [1] } as const;
      const [lower, upper] = given.specification;
      return known(
        judge({
          result: evaluate({ model }),
          specification: { lower, upper },
          rule: { kind: 'guardBand', multiplier: given.rule },
        }).probabilityOfConformity,
      );
    }),
  },
  risksOf: {
    tex: 'R_\\mathrm{C} = \\int_{\\bar T} p_0(\\eta)\\, P(A \\mid \\eta)\\, \\mathrm{d}\\eta, \\quad R_\\mathrm{P} = \\int_{T} p_0(\\eta)\\, P(\\bar A \\mid \\eta)\\, \\mathrm{d}\\eta, \\quad P(A \\mid \\eta) = \\int_A \\frac{1}{u_\\mathrm{m}} \\varphi \\left( \\frac{y - \\eta}{u_\\mathrm{m}} \\right) \\mathrm{d}y',
    symbols: {
      prior: letter('p_0(\\eta)', 'own', 'density of the values of all items'),
      measurementUncertainty: letter('u_\\mathrm{m}', 'own', 'standard uncertainty of one measurement'),
      specification: letter('T', 'own', 'values that conform'),
      acceptance: letter('A', 'own', 'results that are accepted'),
      consumer: letter('R_\\mathrm{C}', '1', 'risk of the consumer: accepted, but does not conform'),
      producer: letter('R_\\mathrm{P}', '1', 'risk of the producer: rejected, though it conforms'),
    },
    words: 'How often a rule accepts what does not conform, and rejects what does, over many items.',
    sources: [{ of: 'conformity', clause: '9.5' }],
    example: example(
      { measurementUncertainty: 0.04, specification: [-0.2, 0.2], acceptance: [-0.18, 0.18] },
      (given) => {
        const between = ([lower, upper]: readonly [number, number]) => ({ lower, upper });
        return risksOf({
          prior: normal({ mean: 0, standardDeviation: 0.12 }),
          measurementUncertainty: given.measurementUncertainty,
          specification: between(given.specification),
          acceptance: between(given.acceptance),
        }).consumer;
      },
    ),
  },
  roundUncertainty: {
    tex: '0.1 \\cdot 10^{d} \\le U \\cdot 10^{-m} < 10^{d}',
    symbols: {
      uncertainty: letter('U', 'own', 'uncertainty'),
      digits: letter('d', '1', 'significant digits, one or two'),
      place: letter('m', '1', 'decimal place of the last digit kept'),
    },
    words: 'At most two significant digits of an uncertainty; the result is cut to the same place.',
    sources: [{ of: 'gum', clause: '7.2.6' }],
    example: example({ uncertainty: 0.0996, digits: 2 }, (given) => roundUncertainty(given).value),
  },
} as const satisfies FormulaTopic;
