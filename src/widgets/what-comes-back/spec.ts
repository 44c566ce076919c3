import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import type { Line, Match } from '../../sheet/what-comes-back.ts';

const MATCH_CODES: Readonly<Record<Match, string>> = { none: 'n', tuner: 't' };

const fields = {
  level: {
    type: 'number',
    key: 'l',
    label: 'The transmitter gives into a match',
    kind: 'level',
    min: 0,
    max: 50,
    step: 0.5,
    decimals: 1,
    default: 27,
  },
  swr: {
    type: 'number',
    key: 's',
    label: 'SWR at the antenna',
    kind: 'number',
    min: 1.1,
    max: 20,
    step: 0.1,
    decimals: 1,
    default: 3,
  },
  loss: {
    type: 'number',
    key: 'a',
    label: 'Loss of the line, matched',
    kind: 'loss',
    min: 0,
    max: 10,
    step: 0.1,
    decimals: 1,
    default: 0.1,
  },
  match: { type: 'choice', key: 'm', label: 'At the transmitter', choices: MATCH_CODES, default: 'none' },
  directivity: {
    type: 'number',
    key: 'd',
    label: 'Directivity of the meter',
    kind: 'loss',
    min: 10,
    max: 40,
    step: 1,
    decimals: 0,
    default: 25,
  },
} as const;

/** What an address says about the line: level, antenna, loss, what stands at the transmitter, and the meter. */
export const backSpec = { version: 1, fields } as const satisfies AddressSpec;

export type BackFields = typeof fields;
export type BackState = StateOf<BackFields>;

/** The line of a state. */
export const lineOf = ({ level, swr, loss, match, directivity }: BackState): Line => ({
  levelDbm: level,
  antennaSwr: swr,
  lossDb: loss,
  match,
  directivityDb: directivity,
});
