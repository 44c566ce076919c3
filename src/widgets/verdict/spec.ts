import type { Rule } from '#compute';
import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { HeldAgainst } from '../../sheet/conformity.ts';

/** What is measured: the club's transmitter, or one of the examples of JCGM 106 with its numbers filled in. */
export type Item = 'transmitter' | 'diode' | 'container' | 'resistors';

const ITEM_CODES: Readonly<Record<Item, string>> = {
  transmitter: 't',
  diode: 'd',
  container: 'c',
  resistors: 'r',
};
const RULE_CODES: Readonly<Record<Rule['kind'], string>> = {
  simple: 's',
  guardBand: 'g',
  probability: 'p',
};

const level = { type: 'number', kind: 'level', step: 0.05, decimals: 2 } as const;
const ratio = { type: 'number', kind: 'halfWidthDb', min: 0.05, max: 2, step: 0.01, decimals: 2 } as const;
const volts = { type: 'number', kind: 'volts', step: 0.01, decimals: 2 } as const;
const plain = { type: 'number', kind: 'number', decimals: 1, step: 0.1 } as const;
const ohms = { type: 'number', kind: 'ohms', step: 0.01, decimals: 2 } as const;

const fields = {
  item: { type: 'choice', key: 'it', label: 'Measured', choices: ITEM_CODES, default: 'transmitter' },
  rule: { type: 'choice', key: 'ru', label: 'Rule', choices: RULE_CODES, default: 'guardBand' },
  multiplier: {
    type: 'number',
    key: 'mu',
    label: 'Guard band, as a multiple of U',
    kind: 'number',
    min: 0.05,
    max: 2,
    step: 0.05,
    decimals: 2,
    default: 1,
  },
  required: {
    type: 'number',
    key: 'pr',
    label: 'Probability asked for',
    kind: 'percent',
    min: 55,
    max: 99.9,
    step: 0.1,
    decimals: 1,
    default: 95,
  },
  reading: { ...level, key: 're', label: 'Measured level', min: 24, max: 30, default: 28.2 },
  expanded: { ...ratio, key: 'ex', label: 'Expanded uncertainty U (k = 2)', default: 0.69 },
  lower: { ...level, key: 'lo', label: 'Lower limit', min: 24.5, max: 26.5, default: 25.5 },
  upper: { ...level, key: 'up', label: 'Upper limit', min: 27.5, max: 29.5, default: 28.5 },
  spread: { ...ratio, key: 'sp', label: 'Such transmitters spread by (one σ)', default: 0.8 },
  diode: { ...volts, key: 'dr', label: 'Measured voltage', min: -5.6, max: -5.2, default: -5.47 },
  diodeU: { ...volts, key: 'du', label: 'Standard uncertainty u', min: 0.01, max: 0.1, default: 0.05 },
  container: { ...plain, key: 'cr', label: 'Bursts at, in kPa', min: 470, max: 550, default: 509.7 },
  containerU: { ...plain, key: 'cu', label: 'Standard uncertainty u, in kPa', min: 1, max: 20, default: 8.6 },
  resistor: { ...ohms, key: 'rr', label: 'One of them, measured', min: 1499.5, max: 1500.5, default: 1500.1 },
  resistorU: { ...ohms, key: 'rm', label: 'Standard uncertainty u', min: 0.01, max: 0.15, default: 0.04 },
  resistorSpread: { ...ohms, key: 'rs', label: 'They spread by (one σ)', min: 0.02, max: 0.3, default: 0.12 },
} as const;

/** What an address says about a value held against a specification. */
export const verdictSpec = { version: 1, fields } as const satisfies AddressSpec;

export type VerdictFields = typeof fields;
export type VerdictState = StateOf<VerdictFields>;

/** The rule of a state. */
export function ruleOf({ rule, multiplier, required }: VerdictState, kind: Rule['kind'] = rule): Rule {
  if (kind === 'simple') return { kind };
  return kind === 'guardBand' ? { kind, multiplier } : { kind, required: required / 100 };
}

/** What is held against which limits, by a state. */
export function heldOf(state: VerdictState, kind?: Rule['kind']): HeldAgainst {
  const rule = ruleOf(state, kind);
  switch (state.item) {
    case 'transmitter': {
      const { lower, upper, spread } = state;
      const standardUncertainty = state.expanded / 2;
      return {
        estimate: state.reading,
        standardUncertainty,
        specification: { lower, upper },
        rule,
        spread,
      };
    }
    case 'diode':
      return {
        estimate: state.diode,
        standardUncertainty: state.diodeU,
        specification: { upper: -5.4 },
        rule,
      };
    case 'container':
      return {
        estimate: state.container,
        standardUncertainty: state.containerU,
        specification: { lower: 490 },
        rule,
      };
    case 'resistors':
      return {
        estimate: state.resistor,
        standardUncertainty: state.resistorU,
        specification: { lower: 1499.8, upper: 1500.2 },
        rule,
        spread: state.resistorSpread,
      };
  }
}
