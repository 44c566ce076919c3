import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { BudgetSubject, BudgetUse, CoverageChoice } from '../../sheet/stated-budget.ts';

const SUBJECT_CODES: Readonly<Record<BudgetSubject, string>> = { club: 'c', gauge: 'g' };
const COVERAGE_CODES: Readonly<Record<CoverageChoice, string>> = { two: '2', p95: '95', p99: '99' };
const DIGIT_CODES = { two: '2', one: '1' } as const;
const ROUNDING_CODES = { end: 'e', way: 'w' } as const;

const fields = {
  subject: { type: 'choice', key: 'su', label: 'Whose budget', choices: SUBJECT_CODES, default: 'club' },
  count: {
    type: 'number',
    key: 'n',
    label: 'Readings taken',
    kind: 'number',
    min: 2,
    max: 20,
    step: 1,
    decimals: 0,
    whole: true,
    default: 3,
  },
  scatter: {
    type: 'number',
    key: 's',
    label: 'Scatter of one reading (s)',
    kind: 'halfWidthDb',
    min: 0.05,
    max: 1,
    step: 0.05,
    decimals: 2,
    default: 0.2,
  },
  coverage: { type: 'choice', key: 'k', label: 'Coverage factor', choices: COVERAGE_CODES, default: 'two' },
  digits: { type: 'choice', key: 'd', label: 'Digits of U', choices: DIGIT_CODES, default: 'two' },
  rounding: { type: 'choice', key: 'r', label: 'Rounded', choices: ROUNDING_CODES, default: 'end' },
} as const;

/** What an address says about a budget and how its result is written down. */
export const budgetSpec = { version: 1, fields } as const satisfies AddressSpec;

export type BudgetFields = typeof fields;
export type BudgetState = StateOf<BudgetFields>;

/** The budget of a state. */
export const useOf = ({ subject, count, scatter, coverage, digits, rounding }: BudgetState): BudgetUse => ({
  subject,
  count,
  scatterDb: scatter,
  coverage,
  digits: digits === 'one' ? 1 : 2,
  onTheWay: rounding === 'way',
});

/** Names of the fields that a state can be set by: the Guide's readings scatter as they do. */
export const shownFields = ({ subject }: BudgetState): readonly (keyof BudgetFields)[] => [
  'subject',
  'count',
  ...(subject === 'club' ? (['scatter'] as const) : []),
  'coverage',
  'digits',
  'rounding',
];
