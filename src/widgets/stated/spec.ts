import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { Meaning, Stated, StatedSlip } from '../../sheet/stated.ts';

const MEANING_CODES: Readonly<Record<Meaning, string>> = {
  nothing: 'n',
  plateau: 'p',
  middle: 'm',
  wave: 'w',
  certificate: 'c',
};

const SLIP_CODES: Readonly<Record<StatedSlip, string>> = {
  none: '0',
  asStandard: 's',
  asExpanded: 'e',
  rootThree: 'r',
};

const fields = {
  meaning: {
    type: 'choice',
    key: 'me',
    label: 'What the paper says',
    choices: MEANING_CODES,
    default: 'nothing',
  },
  halfWidth: {
    type: 'number',
    key: 'ha',
    label: 'The number behind plus-minus',
    kind: 'halfWidthDb',
    min: 0.05,
    max: 3,
    step: 0.05,
    decimals: 2,
    default: 0.5,
  },
  slip: {
    type: 'choice',
    key: 'sl',
    label: 'What somebody takes it for',
    choices: SLIP_CODES,
    default: 'none',
  },
} as const;

/** What an address says about a stated number: what is meant by it, its size, and what it is taken for. */
export const statedSpec = { version: 1, fields } as const satisfies AddressSpec;

export type StatedFields = typeof fields;
export type StatedState = StateOf<StatedFields>;

/** The statement in a state. */
export const statedOf = ({ meaning, halfWidth, slip }: StatedState): Stated => ({
  meaning,
  halfWidthDb: halfWidth,
  slip,
});
