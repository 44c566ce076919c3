import { type BudgetRow, type Statement, standardDeviation } from '#compute';
import { amountOf, withAmount } from '../sheet/amount.ts';
import type { EntryForm } from '../sheet/entries.ts';
import type { Link, Sheet } from '../sheet/sheet.ts';
import { dbText, numberText, percentText } from '../text/quantity-text.ts';
import { statementText } from '../text/statement-text.ts';
import type { Style } from '../text/style.ts';
import { sourceWords } from '../text/words.ts';
import { statementEntries } from './entries-of.ts';
import type { BenchResult } from './result.ts';
import { resultStrings } from './result-strings.ts';

const strings = resultStrings.budget;

/** A line of the budget, as text. */
export interface BudgetLine {
  readonly id: string;
  readonly label: string;
  readonly loss: string;
  readonly stated: string;
  readonly source: string;
  readonly distribution: string;
  readonly divisor: string;
  readonly uncertainty: string;
  readonly sensitivity: string;
  readonly contribution: string;
  readonly share: string;
  readonly freedom: string;
}

/** Decimals of standard uncertainties: a budget's numbers stand under each other and so keep one place. */
const PLACES = 4;

const DIVISORS: Readonly<Partial<Record<EntryForm, string>>> = {
  rectangular: '√3',
  triangular: '√6',
  arcsine: '√2',
  asymmetric: '√3',
  standard: '1',
  displayStep: '√12',
};

/** The budget (GUM 4.1 to 5.1) line by line, in the order of the chain. */
export function budgetLines(style: Style, { chain }: BenchResult): readonly BudgetLine[] {
  return chain.result.propagation.budget.map((row) => {
    const link = chain.sheet.links.find(({ id }) => id === row.id);
    return {
      id: row.id,
      ...(link ? linkCells(style, link, row) : scatterCells(style, chain.sheet)),
      uncertainty: dbText(style, { db: row.standardUncertainty, decimals: PLACES }),
      sensitivity: numberText(style, { value: row.sensitivity, decimals: 0 }),
      contribution: dbText(style, { db: row.contribution, decimals: PLACES }),
      share: percentText(style, { percent: 100 * row.share, decimals: 1 }),
      freedom: freedomText(style, row.degreesOfFreedom),
    };
  });
}

/** Degrees of freedom with a decimal where they have one; infinite where the uncertainty is taken as known. */
export const freedomText = (style: Style, freedom: number): string =>
  Number.isFinite(freedom) && freedom < 1e6
    ? numberText(style, { value: freedom, decimals: Number.isInteger(freedom) ? 0 : 1 })
    : strings.infinite;

function linkCells(style: Style, link: Link, row: BudgetRow) {
  const { form, factor, amount } = statementEntries(link.statement);
  return {
    label: link.label,
    loss: dbText(style, { db: link.lossDb, decimals: 2 }),
    stated: statementText(style, link),
    source: sourceWords[link.source],
    distribution: strings.distributions[form],
    divisor: divisorOf(style, form, { factor, amount, count: countOf(link), row, unit: link.unit }),
  };
}

const countOf = ({ statement }: Link): number | undefined =>
  statement.form === 'readings' ? statement.count : undefined;

interface DivisorContext {
  readonly factor: string | undefined;
  readonly amount: string | undefined;
  readonly count: number | undefined;
  readonly row: BudgetRow;
  readonly unit: Link['unit'];
}

/** What the stated amount is divided by; for a form without a fixed divisor, the ratio itself. */
function divisorOf(
  style: Style,
  form: EntryForm,
  { factor, amount, count, row, unit }: DivisorContext,
): string {
  if (form === 'expanded' && factor !== undefined) return factor;
  if (count !== undefined) return `√${count}`;
  const fixed = DIVISORS[form];
  if (fixed !== undefined) return fixed;
  const ratio = Number(amount) / row.standardUncertainty;
  return unit === 'dB' && Number.isFinite(ratio) ? numberText(style, { value: ratio, decimals: 2 }) : '';
}

/** What the scatter of the readings states: their own, or that of one reading known from earlier; undefined without either. */
export function scatterStatement({ readings, repeatability }: Sheet): Statement | undefined {
  if (readings.length >= 2)
    return { form: 'readings', standardDeviation: standardDeviation(readings), count: readings.length };
  if (repeatability === undefined) return undefined;
  const { standardDeviationDb: standardUncertainty, degreesOfFreedom } = repeatability;
  return { form: 'standard', standardUncertainty, degreesOfFreedom };
}

function scatterCells(style: Style, sheet: Sheet) {
  const statement = scatterStatement(sheet);
  return {
    label: strings.scatter,
    loss: '',
    stated: statement ? statementText(style, { statement: rounded(statement), unit: 'dB' }) : '',
    source: sourceWords.measured,
    distribution: strings.distributions.readings,
    divisor: statement?.form === 'readings' ? `√${statement.count}` : '1',
  };
}

/** A computed scatter to the places of the budget; what somebody typed stays. */
const rounded = (statement: Statement): Statement =>
  withAmount(statement, Number(amountOf(statement).toFixed(PLACES)));
