import { componentOf, type Input } from '#compute';
import type { CheckedAlternation } from './checked.ts';
import { IDS, limits } from './inputs.ts';

/** The lender's uncertainty as one input: it is one and the same in every round and at every place. */
export const lenderInput = ({ form, amount, factor }: CheckedAlternation['lender']): Input =>
  componentOf({
    id: IDS.lender,
    unit: 'dB',
    statement:
      form === 'expanded'
        ? { form, expanded: amount, coverageFactor: factor }
        : { form: 'limits', shape: 'rectangular', halfWidth: amount },
  });

/** What all places have in common besides the lender's statement: neither fitting nor averaging shrinks it. */
export const sharedInputs = ({ lender, influences }: CheckedAlternation): readonly Input[] => [
  ...limits(IDS.lenderDrift, lender.drift),
  ...limits(IDS.temperature, influences.temperature),
  ...limits(IDS.mismatch, influences.mismatch, 'arcsine'),
  ...limits(IDS.other, influences.other),
];
