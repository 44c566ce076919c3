import { finite, notNegative, rangeError } from './quantity.ts';

/** One term of a limit as a data sheet adds it up, in the unit of the reading. */
export type LimitTerm =
  | { readonly of: 'reading'; readonly percent: number }
  | { readonly of: 'fullScale'; readonly percent: number; readonly fullScale: number }
  /** So many steps of the last digit of the display. */
  | { readonly of: 'digits'; readonly count: number; readonly step: number }
  | { readonly of: 'floor'; readonly amount: number }
  /** `terms` once per kelvin by which the temperature lies outside its range. */
  | {
      readonly of: 'kelvin';
      readonly terms: readonly LimitTerm[];
      readonly temperature: number;
      readonly range: { readonly lower: number; readonly upper: number };
    }
  /** `terms` once per year since calibration. */
  | { readonly of: 'year'; readonly terms: readonly LimitTerm[]; readonly years: number };

const HERE = 'sumOfTerms';

/** By how many kelvin a temperature lies outside its range, 0 inside. */
function outside(temperature: number, { lower, upper }: { lower: number; upper: number }): number {
  finite(HERE, 'temperature', temperature);
  if (!(lower <= upper))
    throw rangeError({ where: HERE, wish: 'range.lower must be <= range.upper', got: [lower, upper] });
  return Math.max(0, lower - temperature, temperature - upper);
}

function amountOf(reading: number, term: LimitTerm): number {
  switch (term.of) {
    case 'reading':
      return (notNegative(HERE, 'percent', term.percent) / 100) * Math.abs(reading);
    case 'fullScale':
      return (
        (notNegative(HERE, 'percent', term.percent) / 100) * notNegative(HERE, 'fullScale', term.fullScale)
      );
    case 'digits':
      return notNegative(HERE, 'count', term.count) * notNegative(HERE, 'step', term.step);
    case 'floor':
      return notNegative(HERE, 'amount', term.amount);
    case 'kelvin':
      return outside(term.temperature, term.range) * total(reading, term.terms);
    case 'year':
      return notNegative(HERE, 'years', term.years) * total(reading, term.terms);
  }
}

function total(reading: number, terms: readonly LimitTerm[]): number {
  return terms.reduce((sum, term) => sum + amountOf(reading, term), 0);
}

/**
 * The half-width that a data sheet allows at a reading: "a % of reading + b % of full scale + n digits + a floor", with
 * terms per kelvin outside a range and per year since calibration. The terms are added, since the sheet gives one limit.
 * `amounts` are the single terms, in order; all in the unit of the reading.
 * @throws RangeError unless the reading is finite and every number of a term is >= 0 (temperatures: finite).
 * Source: GUM 4.3.7, example 2 (14e-6 of the reading and 2e-6 of the range make 15 uV).
 */
export function sumOfTerms({ reading, terms }: { reading: number; terms: readonly LimitTerm[] }): {
  halfWidth: number;
  amounts: number[];
} {
  finite(HERE, 'reading', reading);
  const amounts = terms.map((term) => amountOf(reading, term));
  return { halfWidth: amounts.reduce((sum, amount) => sum + amount, 0), amounts };
}
