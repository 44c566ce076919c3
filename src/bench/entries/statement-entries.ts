import type { LimitTerm, Statement } from '#compute';
import type { EntryForm, LinkEntries } from '../../sheet/entries.ts';
import type { Stated, TabledStatement } from '../../sheet/measurement.ts';
import { HZ_PER_MHZ } from '../read/spec.ts';
import { tidy, typed, typedMaybe } from './typed.ts';

/** Texts of a link with their form. */
export type StatedEntries = Partial<LinkEntries> & { readonly form: EntryForm };

/** What a link states, as it would have been typed. */
export function statedEntries(stated: Stated): StatedEntries {
  if (stated.form === 'terms') return termEntries(stated.terms);
  if (stated.form === 'corrections') return tabledEntries(stated);
  if (stated.form === 'swr')
    return { form: 'swr', sourceSwr: typed(stated.sourceSwr), loadSwr: typed(stated.loadSwr) };
  return statementEntries(stated);
}

/** The texts of a statement, with its form. */
export function statementEntries(statement: Statement): StatedEntries {
  switch (statement.form) {
    case 'limits':
      return { form: statement.shape, amount: typed(statement.halfWidth) };
    case 'trapezoid':
      return { form: 'trapezoid', amount: typed(statement.halfWidth), top: typed(statement.topRatio) };
    case 'uncertainLimits': {
      const { halfWidth, limitHalfWidth } = statement;
      return { form: 'uncertainLimits', amount: typed(halfWidth), doubt: typed(limitHalfWidth) };
    }
    case 'asymmetric':
      return { form: 'asymmetric', lower: typed(statement.lower), upper: typed(statement.upper) };
    case 'expanded':
      return {
        form: 'expanded',
        amount: typed(statement.expanded),
        factor: typed(statement.coverageFactor),
        freedom: typedMaybe(statement.degreesOfFreedom),
      };
    case 'coverage':
      return {
        form: 'coverage',
        amount: typed(statement.expanded),
        probability: typed(tidy(100 * statement.probability)),
        freedom: typedMaybe(statement.degreesOfFreedom),
      };
    case 'standard':
      return {
        form: 'standard',
        amount: typed(statement.standardUncertainty),
        freedom: typedMaybe(statement.degreesOfFreedom),
      };
    case 'readings':
      return { form: 'readings', amount: typed(statement.standardDeviation), count: typed(statement.count) };
    case 'displayStep':
      return { form: 'displayStep', amount: typed(statement.step) };
    case 'halfWithin':
      return { form: 'halfWithin', amount: typed(statement.halfWidth) };
  }
}

function tabledEntries({ by, points, coverageFactor, degreesOfFreedom }: TabledStatement): StatedEntries {
  const scale = by === 'frequency' ? HZ_PER_MHZ : 1;
  const table = points.map(({ at, correction, expanded }) =>
    [at / scale, correction, expanded].map((value) => typed(tidy(value))).join('; '),
  );
  return {
    form: 'corrections',
    by,
    table: table.join('\n'),
    factor: typed(coverageFactor),
    freedom: typedMaybe(degreesOfFreedom),
  };
}

const termEntries = (terms: readonly LimitTerm[]): StatedEntries =>
  Object.assign({ form: 'terms' as const }, ...terms.map(termTexts));

/** Percent of the reading within a term per kelvin or per year: no other can be typed. */
const inner = (terms: readonly LimitTerm[]): string =>
  typed(tidy(terms.reduce((sum, term) => sum + (term.of === 'reading' ? term.percent : 0), 0)));

function termTexts(term: LimitTerm): Partial<LinkEntries> {
  switch (term.of) {
    case 'reading':
      return { ofReading: typed(term.percent) };
    case 'fullScale':
      return { ofScale: typed(term.percent), fullScale: typed(term.fullScale) };
    case 'digits':
      return { digits: typed(term.count), step: typed(term.step) };
    case 'floor':
      return { floor: typed(term.amount) };
    case 'kelvin':
      return {
        perKelvin: inner(term.terms),
        coldest: typed(term.range.lower),
        warmest: typed(term.range.upper),
        temperature: typed(term.temperature),
      };
    case 'year':
      return { perYear: inner(term.terms), years: typed(term.years) };
  }
}
