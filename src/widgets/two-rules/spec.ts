import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { Known, TwoRules } from '../../sheet/two-rules.ts';

/** Finest marks of both rules, by the code of the choice, in millimetres. */
const STEPS = { one: 1, half: 0.5, tenth: 0.1 } as const;
type Step = keyof typeof STEPS;

const KNOWN: Readonly<Record<Known, string>> = { nothing: 'n', promise: 'p', compared: 'c' };
const STEP_CODES: Readonly<Record<Step, string>> = { one: '1', half: '05', tenth: '01' };

const percent = { type: 'number', kind: 'percent', min: -0.15, max: 0.15, step: 0.01, decimals: 2 } as const;

const fields = {
  length: {
    type: 'number',
    key: 'le',
    label: 'Length, as both read it',
    kind: 'millimetres',
    min: 100,
    max: 2000,
    step: 10,
    decimals: 0,
    default: 600,
  },
  first: { ...percent, key: 'fi', label: 'First rule reads too much by', default: 0.04 },
  second: { ...percent, key: 'se', label: 'Second rule reads too much by', default: -0.06 },
  step: { type: 'choice', key: 'st', label: 'Finest marks', choices: STEP_CODES, default: 'one' },
  known: { type: 'choice', key: 'kn', label: 'Known of the rules', choices: KNOWN, default: 'nothing' },
} as const;

/** What an address says about the two rules. */
export const rulesSpec = { version: 1, fields } as const satisfies AddressSpec;

export type RulesFields = typeof fields;
export type RulesState = StateOf<RulesFields>;

/** The rules of a state. */
export const rulesOf = ({ length, first, second, step, known }: RulesState): TwoRules => ({
  lengthMm: length,
  firstPercent: first,
  secondPercent: second,
  stepMm: STEPS[step],
  known,
});
