import { differenceModel, propagate, type Statement, stackModel } from '#compute';
import type { Check } from './check.ts';
import { figure } from './figure.ts';

const exact: Statement = { form: 'limits', shape: 'rectangular', halfWidth: 0 };
const within = (halfWidth: number): Statement => ({ form: 'limits', shape: 'rectangular', halfWidth });
/** What is stated of a quantity that both sides share. */
const shared = (halfWidth: number, cause: string) => ({ statement: within(halfWidth), cause });

/**
 * H.1 as a comparison of two blocks of 50 mm: both on one bench 0.1 degrees below 20, of one coefficient of expansion;
 * the gauge may differ from the standard by 0.05 degrees and by 1e-6 per kelvin.
 */
function contributions(own: { readonly kelvin?: number; readonly perKelvin?: number }) {
  const block = (statement: Statement) => ({ id: 'block', nominalMm: 50, deviationUm: 0, statement });
  const common = { filmUm: { value: 0, statement: exact } };
  const standard = stackModel({
    ...common,
    blocks: [block({ form: 'expanded', expanded: 0.075, coverageFactor: 3 })],
    temperatureC: { value: 19.9, ...shared(0.5, 'bench') },
    expansionPerK: { value: 11.5e-6, ...shared(2e-6, 'material') },
  });
  const gauge = stackModel({
    ...common,
    blocks: [block(exact)],
    temperatureC: { value: 19.9, ...shared(0.5, 'bench') },
    expansionPerK: { value: 11.5e-6, ...shared(2e-6, 'material') },
  });
  // What the gauge has of its own, on top of what it shares with the standard.
  const apart = stackModel({
    ...common,
    blocks: [block(exact)],
    temperatureC: { value: 19.9, statement: within(own.kelvin ?? 0) },
    expansionPerK: { value: 11.5e-6, statement: within(own.perKelvin ?? 0) },
  });
  const nm = (model: Parameters<typeof propagate>[0]['model']): number =>
    1000 * propagate({ model }).standardUncertainty;
  return { compared: nm(differenceModel({ a: gauge, b: standard })), apart: nm(apart) };
}

/** GUM H.1.3 and H.1.4 by the model of wrung blocks and of differences. */
export const blocksOfH1 = (): Check => ({
  id: 'gum-h1-blocks',
  clause: 'H.1.3, H.1.4',
  title: 'what two blocks share cancels in their difference; what they do not share contributes as printed',
  status: 'published',
  given: '50 mm, 0.1 °C below 20 °C; bench and material in common',
  figures: [
    figure('standard alone, bench and material cancel', '25', 'nm', () => contributions({}).compared),
    figure('temperature difference', '16.6', 'nm', () => contributions({ kelvin: 0.05 }).apart),
    figure('expansion difference', '2.9', 'nm', () => contributions({ perKelvin: 1e-6 }).apart),
  ],
});
