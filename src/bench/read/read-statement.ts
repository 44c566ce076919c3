import type { Statement } from '#compute';
import type { Stated } from '../../sheet/measurement.ts';
import type { LinkReader } from './link-reader.ts';
import { amountSpec, endSpec, LINK_SPECS } from './link-spec.ts';
import { readTabled } from './read-tabled.ts';
import { readTerms } from './read-terms.ts';

/** What a link states, by the form that was chosen; texts of other forms are not read. */
export function readStated(reader: LinkReader): Stated {
  const { entries, number } = reader;
  const amount = (): number => number('amount', amountSpec(entries.unit));
  switch (entries.form) {
    case 'corrections':
      return readTabled(reader);
    case 'terms':
      return { form: 'terms', terms: readTerms(reader) };
    case 'swr':
      return {
        form: 'swr',
        sourceSwr: number('sourceSwr', LINK_SPECS.sourceSwr),
        loadSwr: number('loadSwr', LINK_SPECS.loadSwr),
      };
    case 'asymmetric': {
      const end = (key: 'lower' | 'upper'): number => number(key, endSpec(entries.unit));
      return { form: 'asymmetric', lower: end('lower'), upper: end('upper') };
    }
    case 'expanded':
    case 'coverage':
    case 'standard':
      return uncertaintyOf(reader, amount());
    case 'readings':
      return { form: 'readings', standardDeviation: amount(), count: number('count', LINK_SPECS.count) };
    case 'displayStep':
      return { form: 'displayStep', step: amount() };
    default:
      return limitsOf(reader, amount());
  }
}

function limitsOf({ entries, number }: LinkReader, halfWidth: number): Statement {
  switch (entries.form) {
    case 'triangular':
    case 'arcsine':
      return { form: 'limits', shape: entries.form, halfWidth };
    case 'trapezoid':
      return { form: 'trapezoid', halfWidth, topRatio: number('top', LINK_SPECS.top) };
    case 'uncertainLimits': {
      const limitHalfWidth = number('doubt', amountSpec(entries.unit));
      return { form: 'uncertainLimits', halfWidth, limitHalfWidth };
    }
    case 'halfWithin':
      return { form: 'halfWithin', halfWidth };
    default:
      return { form: 'limits', shape: 'rectangular', halfWidth };
  }
}

function uncertaintyOf({ entries, number, optional }: LinkReader, amount: number): Statement {
  const degreesOfFreedom = optional('freedom', LINK_SPECS.freedom);
  const freedom = degreesOfFreedom === undefined ? {} : { degreesOfFreedom };
  switch (entries.form) {
    case 'coverage': {
      const probability = number('probability', LINK_SPECS.probability) / 100;
      return { form: 'coverage', expanded: amount, probability, ...freedom };
    }
    case 'standard':
      return { form: 'standard', standardUncertainty: amount, ...freedom };
    default: {
      const coverageFactor = number('factor', LINK_SPECS.factor);
      return { form: 'expanded', expanded: amount, coverageFactor, ...freedom };
    }
  }
}
