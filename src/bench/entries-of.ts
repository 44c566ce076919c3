import type { Rule, Specification, Statement } from '#compute';
import {
  blankLink,
  type EntryForm,
  type LinkEntries,
  type SheetEntries,
  type SpecificationForm,
} from '../sheet/entries.ts';
import type { Link, Sheet } from '../sheet/sheet.ts';
import { numberText } from '../text/quantity-text.ts';

/** Enough decimals for every value that somebody types; a reading converted from milliwatts may need them all. */
const MOST_DECIMALS = 10;

/** A value as somebody would type it, with as many decimals as it takes to read it back the same. */
export function typed(value: number): string {
  for (let decimals = 0; decimals < MOST_DECIMALS; decimals++)
    if (Number(value.toFixed(decimals)) === value) return numberText('ascii', { value, decimals });
  return numberText('ascii', { value, decimals: MOST_DECIMALS });
}

const level = (value: number): string => `${typed(value)} dBm`;
const optional = (value: number | undefined): string => (value === undefined ? '' : typed(value));

/** A sheet as it would have been typed: the inverse of `readEntries`. */
export function entriesOf(sheet: Sheet): SheetEntries {
  const { measurand, repeatability, damageLevelDbm } = sheet;
  return {
    title: sheet.title,
    power: measurand.power,
    plane: measurand.plane,
    conditions: measurand.conditions,
    ...specificationEntries(sheet.specification),
    ...ruleEntries(sheet.rule),
    readings: sheet.readings.map(level).join('\n'),
    scatter: optional(repeatability?.standardDeviationDb),
    repeats: repeatability ? typed(repeatability.degreesOfFreedom + 1) : '',
    damage: damageLevelDbm === undefined ? '' : level(damageLevelDbm),
    links: sheet.links.map(linkEntries),
  };
}

function specificationEntries({ lower, upper }: Specification) {
  const form: SpecificationForm = lower === undefined ? 'atMost' : upper === undefined ? 'atLeast' : 'around';
  const both = lower !== undefined && upper !== undefined;
  return {
    specification: form,
    nominal: both ? level(tidy((lower + upper) / 2)) : '',
    tolerance: both ? typed(tidy((upper - lower) / 2)) : '',
    lowest: lower === undefined ? '' : level(lower),
    highest: upper === undefined ? '' : level(upper),
  };
}

/** Half a sum of two typed numbers, without the last bit of noise that a double brings. */
const tidy = (value: number): number => Number(value.toFixed(MOST_DECIMALS));

const ruleEntries = (rule: Rule) => ({
  rule: rule.kind,
  multiplier: rule.kind === 'guardBand' ? typed(rule.multiplier) : '1',
  required: rule.kind === 'probability' ? typed(tidy(100 * rule.required)) : '95',
});

/** One link as it would have been typed. */
export function linkEntries(link: Link): LinkEntries {
  const { id, label, kind, unit, percentOf, source } = link;
  return {
    ...blankLink(id),
    label,
    kind,
    unit,
    percentOf,
    source,
    loss: typed(link.lossDb),
    rated: link.ratedPowerW === undefined ? '' : `${typed(link.ratedPowerW)} W`,
    cause: link.cause ?? '',
    ...statementEntries(link.statement),
  };
}

/** The texts of a statement, with its form. */
export function statementEntries(statement: Statement): Partial<LinkEntries> & { readonly form: EntryForm } {
  switch (statement.form) {
    case 'limits':
      return { form: statement.shape, amount: typed(statement.halfWidth) };
    case 'trapezoid':
      return { form: 'trapezoid', amount: typed(statement.halfWidth), top: typed(statement.topRatio) };
    case 'uncertainLimits':
      return {
        form: 'uncertainLimits',
        amount: typed(statement.halfWidth),
        doubt: typed(statement.limitHalfWidth),
      };
    case 'asymmetric':
      return { form: 'asymmetric', lower: typed(statement.lower), upper: typed(statement.upper) };
    case 'expanded':
      return {
        form: 'expanded',
        amount: typed(statement.expanded),
        factor: typed(statement.coverageFactor),
        freedom: optional(statement.degreesOfFreedom),
      };
    case 'coverage':
      return {
        form: 'coverage',
        amount: typed(statement.expanded),
        probability: typed(tidy(100 * statement.probability)),
        freedom: optional(statement.degreesOfFreedom),
      };
    case 'standard':
      return {
        form: 'standard',
        amount: typed(statement.standardUncertainty),
        freedom: optional(statement.degreesOfFreedom),
      };
    case 'readings':
      return { form: 'readings', amount: typed(statement.standardDeviation), count: typed(statement.count) };
    case 'displayStep':
      return { form: 'displayStep', amount: typed(statement.step) };
    case 'halfWithin':
      return { form: 'halfWithin', amount: typed(statement.halfWidth) };
  }
}
